package rigside.archive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import rigside.journal.Unsynced;
import rigside.protocol.Field;
import rigside.protocol.Protocol;
import rigside.protocol.Subject;
import rigside.runner.Rehearsed;
import rigside.session.Event;
import rigside.session.Recorded;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.Value;

/**
 * As many sessions as years at a bench bring, on disk: some rehearsed, each of them told again with
 * other days, wearers and masks. All of them are marked as simulated. The same seed gives the same
 * sessions.
 */
public final class ManySessions {
    private static final List<String> PROTOCOLS =
            List.of(
                    "/demo/prefilter-disc.yaml",
                    "/protocols/seal-and-breathing.yaml",
                    "/protocols/breathing-only.yaml",
                    "/protocols/several-sizes.yaml",
                    "/protocols/repeatability.yaml",
                    "/protocols/instrument-check.yaml");

    private static final int WEARERS = 12;
    private static final int DAYS = 1_800;

    /** How much later than in the morning one may begin. */
    private static final int MINUTES = 600;

    /** One in so many is open, and one in as many is damaged. */
    private static final int RARE = 50;

    private final Random random;
    private final List<Rehearsed> rehearsed = new ArrayList<>();

    private ManySessions(long seed) {
        this.random = new Random(seed);
    }

    /**
     * Writes them from a command line: the folder of sessions, how many, and how many of them are
     * rehearsed.
     */
    public static void main(String[] args) throws Exception {
        write(Path.of(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2]), 1);
    }

    /**
     * Writes them.
     *
     * @param sessions the folder of all sessions
     * @param rehearsed how many are rehearsed; the others tell these again
     * @return their folders, in the order written: the second one's session is open, the third
     *     one's damaged
     */
    public static List<Path> write(Path sessions, int count, int rehearsed, long seed)
            throws Exception {
        ManySessions many = new ManySessions(seed);
        for (int i = 0; i < rehearsed; i++) {
            String resource = PROTOCOLS.get(i % PROTOCOLS.size());
            String name = resource.substring(resource.lastIndexOf('/') + 1);
            many.rehearsed.add(Rehearsed.withoutDifference(name, text(resource), seed + i));
        }
        List<Path> folders = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            folders.add(many.write(sessions, i));
        }
        return folders;
    }

    private Path write(Path sessions, int number) throws Exception {
        Rehearsed session = rehearsed.get(number % rehearsed.size());
        Protocol protocol = session.end().protocol();
        int days = -random.nextInt(DAYS);
        int minutes = random.nextInt(MINUTES);
        String wearer = String.format("w%02d", 1 + random.nextInt(WEARERS));
        int pick = random.nextInt(1_000);
        List<Recorded> told =
                session.events().stream()
                        .map(
                                each ->
                                        new Recorded(
                                                each.number(),
                                                each.wall().plusDays(days).plusMinutes(minutes),
                                                each.at(),
                                                told(protocol, each.event(), wearer, pick)))
                        .toList();
        int end = number % RARE == 1 ? told.size() * 2 / 3 : told.size();
        String name = session.end().opening().orElseThrow().event().protocolName();
        Path folder = Unsynced.write(sessions, name, told.subList(0, end));
        if (number % RARE == 2) {
            damage(folder.resolve("journal.jsonl"));
        }
        return folder;
    }

    /** Another wearer and another mask. */
    private static Event told(Protocol protocol, Event event, String wearer, int pick) {
        if (!(event instanceof Event.EntryCaptured entry
                && entry.slot() instanceof Slot.Field slot
                && slot.place().stage() == Stage.BEFORE
                && slot.place().step() == 0)) {
            return event;
        }
        Field field =
                protocol.facts().stream()
                        .filter(each -> each.id().equals(slot.id()))
                        .findFirst()
                        .orElseThrow();
        Subject about = protocol.subject(field).orElse(Subject.ROOM);
        if (about == Subject.WEARER_CODE) {
            return new Event.EntryCaptured(
                    entry.entry(), slot, new Value.Said(wearer), entry.source());
        }
        if (about == Subject.MASK && field.answer() instanceof Field.Choice choice) {
            String size = choice.options().get(pick % choice.options().size());
            return new Event.EntryCaptured(
                    entry.entry(), slot, new Value.Said(size), entry.source());
        }
        return event;
    }

    private static void damage(Path journal) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(journal));
        lines.set(lines.size() / 2, "{}");
        Files.write(journal, lines);
    }

    private static String text(String resource) throws IOException {
        try (InputStream in = ManySessions.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
