package rigside.analysis;

import java.util.List;
import java.util.Optional;
import rigside.decide.Conclusion;
import rigside.protocol.Measure.Compared.Matters;
import rigside.session.Entry;

/**
 * What one comparison owes to what was struck out or amended after a look, in words.
 *
 * @param matters the direction that matters
 */
record ChangedWords(Judged judged, Matters matters) {

    private List<Otherwise.Way> ways() {
        return judged.otherwise().unchanged();
    }

    /** What it would be as it was, where that is something else; each once. */
    List<Conclusion> others() {
        return ways().stream()
                .map(Otherwise.Way::conclusion)
                .filter(each -> !each.equals(now()))
                .distinct()
                .toList();
    }

    private Conclusion now() {
        return judged.course().conclusion();
    }

    private boolean struck() {
        return ways().stream().anyMatch(way -> way.evidence().hasStruck());
    }

    private boolean isAmended() {
        return ways().stream().anyMatch(way -> !way.evidence().unamended().isEmpty());
    }

    /** Of the three, the one that fits. */
    private String which(String ifStruck, String ifAmended, String ifBoth) {
        if (!isAmended()) {
            return ifStruck;
        }
        return struck() ? ifBoth : ifAmended;
    }

    /** "something was ...". */
    String done() {
        return which("struck out", "amended", "struck out or amended");
    }

    /** In front of "the verdict would be". */
    String asItStands() {
        return which("Without what was struck out", "As amended", "As it stands");
    }

    /** In front of the verdict it would be as it was. */
    String asItWas() {
        return which(
                ", with it taken back in ",
                ", with what was there before ",
                ", with what was struck out or amended as it was ");
    }

    /** In front of "the verdict would differ". */
    String asBefore() {
        return which(
                "With what was struck out taken back in",
                "With what was there before it was amended",
                "With what was struck out or amended as it was");
    }

    /** One of the ways that have to agree. */
    String takenBack() {
        return which(
                "what was struck out taken back in",
                "what was amended as it was",
                "what was struck out or amended as it was");
    }

    /** Why it is not settled. */
    String dependsOnIt() {
        return which(
                "Not settled: it depends on a struck entry. With and without what was struck out"
                        + " after a look, the verdict differs.",
                "Not settled: it depends on an amended entry. As amended and as the look before had"
                        + " it, the verdict differs.",
                "Not settled: it depends on a struck or an amended entry. As it is and as the look"
                        + " before had it, the verdict differs.");
    }

    /**
     * A sentence for each entry amended after a look: both values, and what the one before would
     * lead to.
     *
     * @param used the numbers of the entries the comparison rests on
     */
    List<String> amended(List<Integer> used) {
        return ways().stream()
                .filter(way -> !way.evidence().hasStruck())
                .flatMap(way -> sentence(way, used).stream())
                .toList();
    }

    private Optional<String> sentence(Otherwise.Way way, List<Integer> used) {
        List<Entry> unamended = way.evidence().unamended();
        boolean same = way.conclusion().equals(now());
        if (unamended.size() != 1 || (same && !used.contains(unamended.get(0).number()))) {
            return Optional.empty();
        }
        AmendedWords words = new AmendedWords(way.evidence().state(), unamended.get(0));
        return Optional.of(
                Phrases.sentence(words.amended())
                        + ", after a look: with "
                        + words.before()
                        + " the verdict "
                        + (same
                                ? "is the same."
                                : "would be " + VerdictWords.of(way.conclusion(), matters) + "."));
    }
}
