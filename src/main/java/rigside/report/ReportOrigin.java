package rigside.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigside.measure.Numbers;
import rigside.session.Event;
import rigside.session.Recorded;

/** Protocol, versions, seed, order and times: what anybody needs to reckon all of it again. */
record ReportOrigin(Material of) {

    static List<Block> of(Material of) {
        return List.of(
                Block.Table.pairs("Where each part comes from", new ReportOrigin(of).rows()));
    }

    private List<List<String>> rows() {
        Recorded end = Recorded.end(of.events());
        Recorded last = of.events().get(of.events().size() - 1);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Protocol", of.opened().protocolFile()));
        rows.add(List.of("SHA-256 of its text", hash(of.opened().protocolText())));
        rows.add(List.of("Rigside", versions()));
        rows.add(List.of("Opened", Clock.whole(of.events().get(0).wall())));
        if (of.hasTimes()) {
            rows.add(List.of(of.isClosed() ? "Closed" : "Last entry", Clock.whole(end.wall())));
            rows.add(
                    List.of(
                            of.hasTimesWorn() ? "Session time" : "Time at the keyboard",
                            Clock.length(0, end.at())));
            if (!last.equals(end)) {
                rows.add(List.of("Put right after its close, last", Clock.whole(last.wall())));
            }
        }
        if (of.opened().simulated() && of.opened().speed() != 1) {
            rows.add(
                    List.of(
                            "Speed",
                            "session time ran "
                                    + Numbers.plain(of.opened().speed())
                                    + " times as fast as the clock"));
        }
        if (!of.protocol().conditions().isEmpty()) {
            rows.add(List.of("Seed of the order", seed()));
        }
        rows.add(List.of("Events in the journal", String.valueOf(of.events().size())));
        return rows;
    }

    /** The seed tells the order to come, so it waits for the close. */
    private String seed() {
        return of.isClosed()
                ? String.valueOf(of.opened().seed())
                : "told once the session is closed, since it tells the order to come";
    }

    /** The one that opened it, and those that took it up again. */
    private String versions() {
        Set<String> versions = new LinkedHashSet<>(List.of(of.opened().programVersion()));
        of.events().stream()
                .map(Recorded::event)
                .filter(Event.SessionReopened.class::isInstance)
                .map(each -> ((Event.SessionReopened) each).programVersion())
                .forEach(versions::add);
        return String.join(", then ", versions);
    }

    static String hash(String text) {
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256")
                            .digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** The texts themselves; that of a rig is told at the close, since it may say what is true. */
    static List<Block> texts(Material of) {
        List<Block> blocks = new ArrayList<>();
        String text = of.opened().protocolText();
        blocks.add(
                new Block.Fold(
                        "Its whole text, " + text.lines().count() + " lines",
                        List.of(new Block.Verbatim(text))));
        String rig = of.opened().rigText();
        if (of.isClosed() && !rig.isEmpty()) {
            blocks.add(
                    new Block.Fold(
                            "The rig file, " + rig.lines().count() + " lines",
                            List.of(new Block.Verbatim(rig))));
        }
        return blocks;
    }
}
