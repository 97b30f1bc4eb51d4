package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything captured so far.
 *
 * @param entries all entries, struck out or not, by number
 * @param leftOut gaps that stay empty
 * @param looks the looks taken, in order
 * @param lookedAt the numbers of the donnings that made up the complete rounds at the last look
 * @param notes the free notes
 * @param failedChecks checklist items that were not so, without those taken back
 * @param answers what was answered to checks that let their list go on, taken back or not
 * @param amended what was amended of late
 */
public record Captured(
        List<Entry> entries,
        List<LeftOut> leftOut,
        List<Look> looks,
        List<Integer> lookedAt,
        List<Note> notes,
        List<FailedCheck> failedChecks,
        List<Answer> answers,
        Amended amended) {
    static final Captured START =
            new Captured(
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    Amended.NOTHING);

    public Captured {
        entries = List.copyOf(entries);
        leftOut = List.copyOf(leftOut);
        looks = List.copyOf(looks);
        lookedAt = List.copyOf(lookedAt);
        notes = List.copyOf(notes);
        failedChecks = List.copyOf(failedChecks);
        answers = List.copyOf(answers);
    }

    /**
     * A gap that stays empty, with the reason.
     *
     * @param afterEntry the number of the entry captured last before it was left out; 0 if none was
     */
    public record LeftOut(Slot slot, String reason, int afterEntry) {}

    /**
     * A free note.
     *
     * @param donning the donning it was written in; 0 outside donnings
     * @param at when, in nanoseconds of session time
     */
    public record Note(String text, int donning, long at) {}

    /** A checklist item that was not so. */
    public record FailedCheck(Place place, int item, String text) {}

    /**
     * What was answered to a check that lets its list go on.
     *
     * @param afterEntry the number of the entry captured last before it; 0 if none was
     * @param stands whether it was not taken back
     */
    public record Answer(Place place, int item, Checked how, int afterEntry, boolean stands) {}

    /**
     * Amendments that something may still follow from.
     *
     * @param sinceLook the numbers of the entries whose value changed since the last look
     * @param last the entry amended last, when nothing was entered or taken back after that; else 0
     * @param takenBack whether that amendment was taken back
     */
    public record Amended(List<Integer> sinceLook, int last, boolean takenBack) {
        static final Amended NOTHING = new Amended(List.of(), 0, false);

        public Amended {
            sinceLook = List.copyOf(sinceLook);
        }

        private Amended and(int entry, boolean back) {
            return new Amended(Lists.plus(sinceLook, entry), entry, back);
        }

        private Amended looked() {
            return new Amended(List.of(), last, takenBack);
        }

        /** What was entered or taken back meanwhile is what undo is about. */
        private Amended kept() {
            return new Amended(sinceLook, 0, false);
        }
    }

    /** The entry that counts for a gap, if it is filled. */
    public Optional<Entry> standing(Slot slot) {
        return entries.stream()
                .filter(entry -> entry.stands() && entry.slot().equals(slot))
                .findFirst();
    }

    /** Whether nothing more is asked for a gap. */
    public boolean isSettled(Slot slot) {
        return standing(slot).isPresent() || isLeftOut(slot);
    }

    /** Whether a gap is passed over with a reason. */
    public boolean isLeftOut(Slot slot) {
        return leftOut.stream().anyMatch(left -> left.slot().equals(slot));
    }

    public Optional<Entry> entry(int number) {
        // Numbers count up from 1, so an entry nearly always stands at its number.
        return number >= 1 && number <= entries.size() && entries.get(number - 1).number() == number
                ? Optional.of(entries.get(number - 1))
                : entries.stream().filter(entry -> entry.number() == number).findFirst();
    }

    /** The last look taken. */
    public Optional<Look> lastLook() {
        return looks.isEmpty() ? Optional.empty() : Optional.of(looks.get(looks.size() - 1));
    }

    Captured withEntries(List<Entry> changed) {
        return withEntries(changed, amended.kept());
    }

    private Captured withEntries(List<Entry> changed, Amended of) {
        return new Captured(changed, leftOut, looks, lookedAt, notes, failedChecks, answers, of);
    }

    Captured amended(int entry, List<Entry> changed) {
        return withEntries(changed, amended.and(entry, false));
    }

    Captured withdrawn(int entry, List<Entry> changed) {
        return withEntries(changed, amended.and(entry, true));
    }

    /** With amendments that undo no longer takes back. */
    Captured withAmendmentsKept() {
        return withEntries(entries, amended.kept());
    }

    Captured with(LeftOut left) {
        return new Captured(
                entries,
                Lists.plus(leftOut, left),
                looks,
                lookedAt,
                notes,
                failedChecks,
                answers,
                amended.kept());
    }

    Captured without(Slot slot) {
        List<LeftOut> kept = leftOut.stream().filter(left -> !left.slot().equals(slot)).toList();
        return new Captured(
                entries, kept, looks, lookedAt, notes, failedChecks, answers, amended.kept());
    }

    Captured with(Look look, List<Integer> donnings) {
        return new Captured(
                entries,
                leftOut,
                Lists.plus(looks, look),
                donnings,
                notes,
                failedChecks,
                answers,
                amended.looked());
    }

    Captured with(Note note) {
        return new Captured(
                entries,
                leftOut,
                looks,
                lookedAt,
                Lists.plus(notes, note),
                failedChecks,
                answers,
                amended);
    }

    Captured with(FailedCheck failed) {
        return new Captured(
                entries,
                leftOut,
                looks,
                lookedAt,
                notes,
                Lists.plus(failedChecks, failed),
                answers,
                amended);
    }

    /** The answer to a check that lets its list go on. */
    Optional<Answer> answer(Place place, int item) {
        return answers.stream()
                .filter(each -> each.stands() && each.place().equals(place) && each.item() == item)
                .reduce((first, last) -> last);
    }

    Captured answered(Place place, int item, Checked how) {
        Answer answer = new Answer(place, item, how, entries.size(), true);
        return new Captured(
                entries,
                leftOut,
                looks,
                lookedAt,
                notes,
                failedChecks,
                Lists.plus(answers, answer),
                amended.kept());
    }

    /** The last answer to a check taken back; a no among them is no failed check any more. */
    Captured without(Answer answer) {
        List<FailedCheck> kept = new ArrayList<>(failedChecks);
        if (answer.how() != Checked.SO) {
            for (int at = kept.size() - 1; at >= 0; at--) {
                if (kept.get(at).place().equals(answer.place())
                        && kept.get(at).item() == answer.item()) {
                    kept.remove(at);
                    break;
                }
            }
        }
        List<Answer> changed =
                Lists.changed(
                        answers,
                        answer::equals,
                        each ->
                                new Answer(
                                        each.place(),
                                        each.item(),
                                        each.how(),
                                        each.afterEntry(),
                                        false));
        return new Captured(
                entries, leftOut, looks, lookedAt, notes, kept, changed, amended.kept());
    }
}
