package rigside.desk;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rigside.archive.Archived;
import rigside.journal.Damage;
import rigside.protocol.BenchTime;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.screen.HomeView;
import rigside.screen.HomeView.ProtocolItem;
import rigside.screen.HomeView.SessionItem;

/** The lines of the home page. */
final class Items {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("d MMM uuuu HH:mm", Locale.ENGLISH);

    private Items() {}

    static ProtocolItem of(ProtocolFile file) {
        return file.protocol()
                .map(protocol -> good(file, protocol))
                .orElseGet(
                        () ->
                                new ProtocolItem(
                                        file.name(),
                                        "",
                                        file.isOwn(),
                                        file.problems().size(),
                                        "",
                                        file.problems()));
    }

    private static ProtocolItem good(ProtocolFile file, Protocol protocol) {
        List<String> detail = new ArrayList<>();
        detail.add(protocol.question());
        protocol.conditions().forEach(condition -> detail.add("- " + condition.title()));
        detail.add(planned(protocol));
        if (file.isOwn()) {
            detail.add("file " + file.name());
        }
        if (!protocol.about().isBlank()) {
            Stream.of(protocol.about().strip().split("\\n\\s*\\n", -1))
                    .map(paragraph -> paragraph.replaceAll("\\s*\\n\\s*", " "))
                    .forEach(detail::add);
        }
        return new ProtocolItem(
                file.name(), protocol.title(), file.isOwn(), 0, round(protocol), detail);
    }

    private static String planned(Protocol protocol) {
        return switch (protocol.purpose()) {
            case INSTRUMENT_CHECK -> "a check of about " + round(protocol) + "; nothing is worn";
            case REPEATABILITY ->
                    protocol.plan().most() + " donnings of about " + round(protocol) + " each";
            case COMPARISON ->
                    protocol.plan().fewest()
                            + " to "
                            + protocol.plan().most()
                            + (protocol.plan().design() == Plan.Design.ROUNDS
                                    ? " rounds of about "
                                    : " values per condition, in rounds of about ")
                            + round(protocol);
        };
    }

    /** All that a protocol says of itself. */
    static HomeView.Review about(ProtocolFile file) {
        ProtocolItem item = of(file);
        return new HomeView.Review(item.title(), item.detail());
    }

    private static String round(Protocol protocol) {
        return BenchTime.words(
                protocol.purpose() == Protocol.Purpose.INSTRUMENT_CHECK
                        ? BenchTime.before(protocol)
                        : BenchTime.round(protocol));
    }

    static SessionItem of(Archived listed) {
        List<String> detail = new ArrayList<>();
        if (!listed.question().isEmpty()) {
            detail.add(listed.question());
        }
        listed.conditions().forEach(worn -> detail.add("- " + worn.title()));
        if (listed.simulated()) {
            detail.add("simulated: every value is invented");
        }
        listed.paper().map(Archived.Paper::words).ifPresent(detail::add);
        listed.findings().stream().map(each -> found(listed, each)).forEach(detail::add);
        String whose = listed.wearer().map(code -> "wearer " + code + ", ").orElse("");
        detail.add(whose + "folder " + listed.folder().getFileName());
        listed.damage().stream().map(Damage::toString).forEach(detail::add);
        return new SessionItem(
                listed.title(),
                listed.begun().map(Items::when).orElse("unknown"),
                state(listed),
                listed.isResumable(),
                detail);
    }

    private static String found(Archived listed, Archived.Finding finding) {
        String measure =
                listed.measure(finding.measure())
                        .map(Archived.Measured::title)
                        .orElse(finding.measure());
        String condition =
                listed.condition(finding.condition())
                        .map(Archived.Worn::title)
                        .orElse(finding.condition());
        return measure
                + (listed.conditions().size() > 2 ? ", " + condition : "")
                + ": "
                + finding.words();
    }

    static String when(ZonedDateTime when) {
        return WHEN.format(when);
    }

    private static String state(Archived listed) {
        if (!listed.damage().isEmpty()) {
            return "damaged";
        }
        int rounds = listed.completeRounds();
        String done =
                switch (listed.conditions().size()) {
                    case 0 -> "";
                    case 1 -> ", " + rounds + (rounds == 1 ? " donning" : " donnings");
                    default -> ", " + rounds + (rounds == 1 ? " round" : " rounds");
                };
        return (listed.closed() ? "closed" : "open") + done;
    }
}
