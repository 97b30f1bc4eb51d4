package rigside.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.rig.Feed;
import rigside.rig.RigFile;
import rigside.screen.View;
import rigside.screen.WatchView;
import rigside.yaml.Document;
import rigside.yaml.Problem;

/**
 * A file that is being written: as last saved, and the last version without problems.
 *
 * @param name the file's name as the tester knows it
 * @param text as last saved; empty when it could not be read
 * @param problems all that is wrong with it
 * @param good the last version without problems, if there was one
 */
record Watched(String name, Optional<String> text, List<String> problems, Optional<Good> good) {
    Watched {
        problems = List.copyOf(problems);
    }

    /**
     * A version without problems.
     *
     * @param text its text
     * @param protocol what it says; empty of a rig file
     * @param lines of a rig file what it declares; of a protocol what to think over and what the
     *     plan can be expected to bring, empty until it is known
     */
    record Good(String text, Optional<Protocol> protocol, List<String> lines) {
        Good {
            lines = List.copyOf(lines);
        }

        /** Whether its figures are still to be worked out. */
        boolean lacksFigures() {
            return protocol.isPresent() && lines.isEmpty();
        }
    }

    static Watched of(String name) {
        return new Watched(name, Optional.empty(), List.of(), Optional.empty());
    }

    /** As saved now; the same where nothing has changed. */
    Watched saved(String now, Path folder) {
        if (text.filter(now::equals).isPresent()) {
            return this;
        }
        if (good.filter(last -> last.text().equals(now)).isPresent()) {
            return new Watched(name, Optional.of(now), List.of(), good);
        }
        return ProtocolFile.isRigName(name) ? rig(now, folder) : protocol(now);
    }

    /** It cannot be read now: an editor may be about to put it back. */
    Watched unreadable(String why) {
        return new Watched(name, Optional.empty(), List.of(name + ": " + why), good);
    }

    /** With the figures of a version, unless that has been left behind. */
    Watched withFigures(String ofText, List<String> figures) {
        return new Watched(
                name,
                text,
                problems,
                good.map(
                        last ->
                                last.text().equals(ofText)
                                        ? new Good(last.text(), last.protocol(), figures)
                                        : last));
    }

    /** As seen in a window of some columns. */
    WatchView view(int first, View.Style style, int columns) {
        boolean working = good.filter(Good::lacksFigures).isPresent();
        return new WatchView(
                name,
                problems,
                !problems.isEmpty() && good.isPresent(),
                good.map(Good::lines).orElse(List.of()),
                good.flatMap(Good::protocol)
                        .map(protocol -> ProtocolPages.outline(protocol, columns))
                        .orElse(List.of()),
                working ? "playing the plan some 100 000 times ..." : "",
                first,
                style);
    }

    private Watched protocol(String now) {
        Read read = ProtocolReader.read(name, now);
        if (read instanceof Read.Good sound) {
            Protocol protocol = sound.protocol();
            return good(new Good(now, Optional.of(protocol), List.of()));
        }
        return broken(now, ((Read.Bad) read).problems());
    }

    private Watched rig(String now, Path folder) {
        Document<RigFile> read = RigFile.read(name, now, folder);
        return read.value()
                .map(file -> good(new Good(now, Optional.empty(), lines(file))))
                .orElseGet(() -> broken(now, read.problems()));
    }

    private Watched good(Good version) {
        return new Watched(name, Optional.of(version.text()), List.of(), Optional.of(version));
    }

    private Watched broken(String now, List<Problem> found) {
        return new Watched(
                name, Optional.of(now), found.stream().map(Problem::toString).toList(), good);
    }

    private static List<String> lines(RigFile file) {
        List<String> lines = new ArrayList<>(List.of(file.title()));
        if (file instanceof RigFile.Attached attached) {
            lines.addAll(List.of("", "Instruments"));
            for (Feed feed : attached.instruments().feeds()) {
                lines.add("  " + feed.id());
            }
            lines.addAll(List.of("", "See what they send with 'rigside feed'."));
        } else {
            lines.addAll(List.of("", "A simulated rig: every value it gives is invented."));
        }
        return lines;
    }
}
