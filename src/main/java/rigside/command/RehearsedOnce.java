package rigside.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.desk.Openings;
import rigside.journal.Journal;
import rigside.journal.NotOpened;
import rigside.protocol.Protocol;
import rigside.runner.Faults;
import rigside.runner.JournalLedger;
import rigside.runner.Rehearsal;
import rigside.runner.Rigs;
import rigside.runner.Tester;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * One rehearsal that is kept.
 *
 * @param into the folder its own is made in; a temporary one if empty
 * @param start the wall clock at the opening
 */
record RehearsedOnce(
        Optional<Path> into,
        Protocol protocol,
        Openings.Rehearsed opened,
        Faults faults,
        ZonedDateTime start) {

    /** How a rehearsal is played; until it is over, or somebody stopped it. */
    interface Way {
        /**
         * Plays it.
         *
         * @throws IOException if an event cannot be kept
         */
        void play(Rehearsal rehearsal) throws IOException;
    }

    /**
     * What came of it.
     *
     * @param events all of it, in order
     * @param folder where its journal is
     */
    record Played(State state, List<Recorded> events, Path folder) {
        boolean isWhole() {
            return state.course().closed();
        }
    }

    Played play(Way way) throws IOException, NotOpened {
        Path folder = into.isPresent() ? into.get() : Files.createTempDirectory("rehearsed-");
        try (Journal journal = Journal.create(folder, opened.opening().protocolName(), start)) {
            Tester tester = new Tester(Rigs.of(opened.opening(), protocol), faults);
            Rehearsal rehearsal =
                    Rehearsal.begin(new JournalLedger(journal), tester, start, opened.opening());
            way.play(rehearsal);
            return new Played(rehearsal.runner().state(), journal.events(), journal.folder());
        }
    }

    /** What was rehearsed, and where it is. */
    List<String> told(Played played) {
        List<String> told = new ArrayList<>();
        String seed = String.valueOf(opened.opening().seed());
        told.add("A rehearsal with seed " + seed + ", kept in " + played.folder());
        if (!played.isWhole()) {
            told.add(
                    "It was stopped, and is open: 'rigside resume "
                            + played.folder()
                            + "' goes on with it by hand. What is concealed until later stays so.");
        }
        told.addAll(RehearsedText.truths(protocol, opened.wearer()));
        told.addAll(RehearsedText.faults(faults));
        return told;
    }
}
