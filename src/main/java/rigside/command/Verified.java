package rigside.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rigside.analysis.Analysis;
import rigside.analysis.Relooked;
import rigside.analysis.Shown;
import rigside.journal.Fingerprint;
import rigside.journal.JournalReader;
import rigside.journal.RawReadings;
import rigside.journal.Reading;
import rigside.protocol.ProtocolReader;
import rigside.protocol.Read;
import rigside.rig.Feed;
import rigside.rig.RigFile;
import rigside.session.Event;
import rigside.session.Source;
import rigside.session.State;

/**
 * What a record was found to be.
 *
 * @param reading its journal
 * @param looks every recorded look, reckoned anew
 * @param refusedNow what today's reader would refuse in its protocol, if anything
 * @param raw the instruments it was run with
 * @param shown what concealment lets out now; empty where nothing can be read
 */
record Verified(
        Reading reading,
        List<Relooked> looks,
        Optional<String> refusedNow,
        List<Raw> raw,
        Optional<Shown> shown) {
    Verified {
        looks = List.copyOf(looks);
        raw = List.copyOf(raw);
    }

    /**
     * The lines of an instrument as they came.
     *
     * @param feed its id
     * @param there whether the file that holds them is there
     */
    record Raw(String feed, boolean there) {}

    static Verified of(Path place) {
        Reading reading = JournalReader.readAsGiven(place);
        State state = reading.state();
        if (state.opening().isEmpty()) {
            return new Verified(reading, List.of(), Optional.empty(), List.of(), Optional.empty());
        }
        Event.SessionOpened opened = state.opening().get().event();
        Read now = ProtocolReader.read(opened.protocolName(), opened.protocolText());
        return new Verified(
                reading,
                Relooked.of(reading.events()),
                now instanceof Read.Bad bad
                        ? Optional.of(bad.problems().get(0).toString())
                        : Optional.empty(),
                raw(opened, reading.file().toAbsolutePath().getParent()),
                Optional.of(Shown.of(state, Analysis.of(state))));
    }

    private static List<Raw> raw(Event.SessionOpened opened, Path folder) {
        if (opened.rigText().isEmpty()) {
            return List.of();
        }
        return RigFile.read("the rig file", opened.rigText(), Path.of(opened.rigFolder()))
                .value()
                .filter(RigFile.Attached.class::isInstance)
                .map(file -> ((RigFile.Attached) file).instruments().feeds())
                .orElse(List.of())
                .stream()
                .map(Feed::id)
                .map(feed -> new Raw(feed, isThere(folder, feed)))
                .toList();
    }

    private static boolean isThere(Path folder, String feed) {
        Path file = RawReadings.file(folder, feed);
        return Files.isRegularFile(file)
                || Files.isRegularFile(file.resolveSibling(file.getFileName() + ".gz"));
    }

    /** A feed that never sent a line has no file: then no entry came from an instrument. */
    boolean isRawMissing() {
        boolean read =
                reading.state().captured().entries().stream()
                        .anyMatch(entry -> entry.source() == Source.INSTRUMENT);
        return read && !raw.isEmpty() && raw.stream().noneMatch(Raw::there);
    }

    /** Of all lines; kept back while it would tell of what is concealed to somebody who tries. */
    Optional<Fingerprint> fingerprint() {
        boolean out = shown.filter(each -> each.trialClock() && each.result()).isPresent();
        return out ? reading.hashed() : Optional.empty();
    }

    boolean isSound() {
        return reading.damage().isEmpty()
                && reading.torn().isEmpty()
                && !isRawMissing()
                && looks.stream().allMatch(look -> look.differs().isEmpty());
    }
}
