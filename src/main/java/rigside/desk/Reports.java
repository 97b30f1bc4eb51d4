package rigside.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.Analysis;
import rigside.analysis.Shown;
import rigside.archive.Archive;
import rigside.archive.Archived;
import rigside.archive.Progress;
import rigside.archive.Sessions;
import rigside.journal.Damage;
import rigside.journal.JournalReader;
import rigside.journal.Reading;
import rigside.report.Material;
import rigside.report.Page;
import rigside.report.SessionReport;

/** Reports of sessions that are kept. */
public final class Reports {
    private static final String HTML = "report.html";
    private static final String MARKDOWN = "report.md";

    private Reports() {}

    /**
     * What a report of a session is made of; empty when nothing of it can be read.
     *
     * @param folder the session's folder
     * @param archive all sessions, asked for earlier plans on the same question
     * @throws IOException if they cannot be listed
     */
    public static Optional<Material> material(Path folder, Reading reading, Archive archive)
            throws IOException {
        if (reading.state().opening().isEmpty()) {
            return Optional.empty();
        }
        Archived session = Archive.of(folder, reading);
        return Optional.of(
                new Material(
                        reading.state(),
                        Shown.of(
                                reading.state(),
                                Analysis.of(reading.state(), reading.isReadOnly())),
                        reading.events(),
                        trouble(reading),
                        session.wearer().isEmpty()
                                ? Optional.empty()
                                : Optional.of(earlier(session, archive)),
                        RawPressure.of(folder, reading.state(), reading.events())));
    }

    static List<String> trouble(Reading reading) {
        List<String> trouble = new ArrayList<>();
        reading.damage().stream().map(Damage::inOneSentence).forEach(trouble::add);
        reading.torn().ifPresent(torn -> trouble.add(torn.withoutFolders()));
        return List.copyOf(trouble);
    }

    private static List<Material.Earlier> earlier(Archived session, Archive archive)
            throws IOException {
        return Sessions.earlierOn(archive.list(Progress.NONE), session).stream()
                .map(
                        each ->
                                new Material.Earlier(
                                        each.begun().orElseThrow(),
                                        each.closed(),
                                        each.completeRounds(),
                                        each.findings().stream()
                                                .map(found -> words(each, found))
                                                .toList()))
                .toList();
    }

    private static String words(Archived session, Archived.Finding found) {
        String measure =
                session.measure(found.measure())
                        .map(Archived.Measured::title)
                        .orElse(found.measure());
        String worn =
                session.conditions().size() > 2
                        ? ", "
                                + session.condition(found.condition())
                                        .map(Archived.Worn::title)
                                        .orElse(found.condition())
                        : "";
        return measure + worn + ": " + found.words();
    }

    /**
     * Writes the report of a session into its folder, over an earlier one.
     *
     * @return what to tell the tester: where it is
     * @throws IOException if it cannot be written
     */
    static String write(Path folder, Archive archive) throws IOException {
        Reading reading = JournalReader.read(folder);
        Page page =
                material(folder, reading, archive)
                        .map(SessionReport::of)
                        .orElseThrow(() -> new IOException("nothing of this session can be read"));
        write(folder.resolve(HTML), page.html());
        write(folder.resolve(MARKDOWN), page.markdown());
        return HTML + " and " + MARKDOWN + " are in " + folder;
    }

    private static void write(Path file, String text) throws IOException {
        WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8), true);
    }
}
