package rigside.command;

import java.util.ArrayList;
import java.util.List;
import rigside.analysis.Relooked;
import rigside.journal.Reading;
import rigside.report.Legible;
import rigside.session.Event;

/** What a record was found to be, in sentences. */
record VerifiedText(Verified verified) {

    static String of(Verified verified) {
        return String.join("\n", new VerifiedText(verified).lines()) + "\n";
    }

    private List<String> lines() {
        Reading reading = verified.reading();
        List<String> lines = new ArrayList<>();
        lines.add(verified.isSound() ? "This record is sound." : "This record is NOT SOUND.");
        reading.damage().forEach(damage -> lines.add("damage: " + damage));
        reading.torn().ifPresent(torn -> lines.add("torn: " + torn));
        if (verified.shown().isEmpty()) {
            lines.add("Nothing of a session can be read in it.");
            return lines;
        }
        lines.add(
                "events: "
                        + reading.events().size()
                        + (isWhole() ? ", all of them read" : ", up to there"));
        lines.add("hashes: " + hashes());
        verified.fingerprint()
                .ifPresent(
                        print ->
                                lines.add(
                                        "fingerprint: "
                                                + print.hex()
                                                + "\n    note it on paper: as long as it is the same,"
                                                + " no line was changed since"));
        opened(lines);
        lines.add(
                "A hash is no signature: whoever can write the whole file can write its hashes anew."
                        + " Of whole entries missing at the end it says nothing; "
                        + end());
        return lines;
    }

    private boolean isWhole() {
        return verified.reading().damage().isEmpty() && verified.reading().torn().isEmpty();
    }

    private String hashes() {
        return verified.reading()
                .hashed()
                .map(
                        print ->
                                print.from() == 1
                                        ? "every line carries one, and each of those read fits"
                                        : "from line "
                                                + print.from()
                                                + " on, and each of those read fits; the first"
                                                + " takes in all lines before it")
                .orElse(
                        "no line carries one, as in journals of the first versions: a value changed"
                                + " since is noticed only where a look comes out otherwise");
    }

    private String end() {
        return verified.reading().state().course().closed()
                ? "that this session is closed tells that it came to its end, not whether"
                        + " something was amended after it."
                : "this session is open, so entries may follow.";
    }

    private void opened(List<String> lines) {
        Event.SessionOpened opened = verified.reading().state().opening().orElseThrow().event();
        lines.add("begun with version " + Legible.of(opened.programVersion()));
        lines.add(
                "protocol: "
                        + Legible.of(opened.protocolName())
                        + " is read"
                        + verified.refusedNow()
                                .map(
                                        why ->
                                                " by the rules of its day; today's refuse it:\n    "
                                                        + why)
                                .orElse(""));
        long same = verified.looks().stream().filter(look -> look.differs().isEmpty()).count();
        lines.add(
                "looks: "
                        + verified.looks().size()
                        + " recorded, "
                        + same
                        + " come out the same when reckoned anew (to 1e-9)");
        verified.looks().stream()
                .filter(look -> !look.differs().isEmpty())
                .forEach(look -> differs(lines, look));
        verified.shown().orElseThrow().measures().stream()
                .flatMap(measure -> measure.comparisons().stream())
                .forEach(comparison -> lines.add("now: " + comparison.sentence()));
        verified.raw()
                .forEach(
                        raw ->
                                lines.add(
                                        "raw readings of "
                                                + raw.feed()
                                                + ": "
                                                + (raw.there() ? "there" : "not there")));
    }

    private static void differs(List<String> lines, Relooked look) {
        lines.add(
                "    line "
                        + look.event()
                        + ", written by version "
                        + look.version()
                        + ": otherwise comes out "
                        + String.join("; ", look.differs()));
    }
}
