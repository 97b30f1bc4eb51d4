package rigside.command;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rigside.analysis.ProtocolAdvice;
import rigside.protocol.Answers;
import rigside.protocol.BenchTime;
import rigside.protocol.Protocol;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.report.Page;
import rigside.rig.RigFile;
import rigside.yaml.Document;
import rigside.yaml.Problem;

/** One damaged file, and what is answered to it. */
final class Damaged {
    /** What was simulated already: the same plan would only take the same time again. */
    private static final Set<Object> PLAYED = new HashSet<>();

    private static final int WIDTH = 80;

    private final int number;
    private final String name;
    private final MutationStudy.Way way;
    private final byte[] file;
    private Optional<Protocol> sound = Optional.empty();

    /**
     * @param number its number in the study
     * @param name the file it was
     */
    Damaged(int number, String name, MutationStudy.Way way, byte[] file) {
        this.number = number;
        this.name = name;
        this.way = way;
        this.file = file;
    }

    MutationStudy.Way way() {
        return way;
    }

    /**
     * All that is wrong with it; empty when it was read.
     *
     * @throws AssertionError if the answer is not fit for a person
     */
    List<Problem> answer() {
        List<Problem> problems = name.endsWith(".rig.yaml") ? rig() : protocol();
        if (!problems.isEmpty()) {
            Answers.assertHelpful(file, problems);
        }
        return problems;
    }

    private List<Problem> protocol() {
        Read read = ProtocolReader.read("file.yaml", file);
        if (read instanceof Read.Good good) {
            sound = Optional.of(good.protocol());
            return List.of();
        }
        List<Problem> problems = ((Read.Bad) read).problems();
        if (problems.isEmpty()) {
            throw new AssertionError("neither read nor refused");
        }
        return problems;
    }

    private List<Problem> rig() {
        Document<RigFile> read = RigFile.read("file.rig.yaml", file, Path.of("/bench"));
        if (read.value().isPresent() != read.problems().isEmpty()) {
            throw new AssertionError("neither read nor refused");
        }
        return read.problems();
    }

    /**
     * What is said of a protocol that was read after all, before any session.
     *
     * @throws AssertionError if that makes no sense
     */
    void use() {
        sound.ifPresent(Damaged::use);
    }

    private static void use(Protocol protocol) {
        double seconds = BenchTime.round(protocol);
        if (!(seconds >= 0) || Double.isInfinite(seconds)) {
            throw new AssertionError("a round takes " + seconds + " s");
        }
        Page page = rigside.report.Outline.of(protocol);
        if (page.text(WIDTH).isBlank() || page.html().isBlank()) {
            throw new AssertionError("no outline");
        }
        List<String> advice =
                PLAYED.add(List.of(protocol.plan(), protocol.measures()))
                        ? ProtocolAdvice.of(protocol)
                        : ProtocolAdvice.withoutPlaying(protocol, Optional.empty());
        if (advice.stream().anyMatch(String::isBlank)) {
            throw new AssertionError("advice without words");
        }
    }

    @Override
    public String toString() {
        return "case " + number + ", " + way.name().toLowerCase(Locale.ROOT) + " of " + name;
    }
}
