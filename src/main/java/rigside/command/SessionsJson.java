package rigside.command;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import rigside.archive.Archived;
import rigside.protocol.Subject;

/** Sessions as JSON, with all that is remembered of them but the values of their donnings. */
final class SessionsJson {
    private SessionsJson() {}

    /**
     * One line.
     *
     * @param all how many sessions there are with those that were not asked for
     */
    static String of(List<Archived> found, int all) {
        return "{\"count\":"
                + found.size()
                + ",\"of\":"
                + all
                + ",\"sessions\":["
                + found.stream().map(SessionsJson::session).collect(Collectors.joining(",\n"))
                + "]}\n";
    }

    private static String session(Archived each) {
        return "{\"name\":"
                + AnalysisJson.text(each.name())
                + ",\"begun\":"
                + time(each.begun())
                + ",\"last\":"
                + time(each.last())
                + ",\"day\":"
                + each.day().map(LocalDate::toString).map(AnalysisJson::text).orElse("null")
                + ",\"closed\":"
                + each.closed()
                + ",\"simulated\":"
                + each.simulated()
                + ",\"from_paper\":"
                + each.paper().isPresent()
                + ",\"protocol\":"
                + each.protocol().map(SessionsJson::protocol).orElse("null")
                + ",\"wearer\":"
                + each.wearer().map(AnalysisJson::text).orElse("null")
                + ",\"facts\":"
                + list(each.facts(), SessionsJson::fact)
                + ",\"conditions\":"
                + list(each.conditions(), SessionsJson::worn)
                + ",\"measures\":"
                + list(each.measures(), SessionsJson::measured)
                + ",\"complete_rounds\":"
                + each.completeRounds()
                + ",\"findings\":"
                + list(each.findings(), SessionsJson::finding)
                + ",\"damage\":"
                + list(each.damage(), damage -> AnalysisJson.text(damage.toString()))
                + "}";
    }

    private static String time(Optional<ZonedDateTime> when) {
        return when.map(DateTimeFormatter.ISO_OFFSET_DATE_TIME::format)
                .map(AnalysisJson::text)
                .orElse("null");
    }

    private static String protocol(Archived.Followed each) {
        return "{\"file\":"
                + AnalysisJson.text(each.file())
                + ",\"title\":"
                + AnalysisJson.text(each.title())
                + ",\"question\":"
                + AnalysisJson.text(each.question())
                + ",\"sha256\":"
                + AnalysisJson.text(each.hash())
                + ",\"purpose\":"
                + word(each.purpose())
                + ",\"design\":"
                + word(each.design())
                + "}";
    }

    private static String fact(Archived.Fact each) {
        return "{\"id\":"
                + AnalysisJson.text(each.id())
                + ",\"question\":"
                + AnalysisJson.text(each.question())
                + ",\"answer\":"
                + AnalysisJson.text(each.answer())
                + ",\"about\":"
                + each.about().map((Subject about) -> word(about)).orElse("null")
                + "}";
    }

    private static String worn(Archived.Worn each) {
        return "{\"id\":"
                + AnalysisJson.text(each.id())
                + ",\"title\":"
                + AnalysisJson.text(each.title())
                + ",\"piece\":"
                + AnalysisJson.text(each.piece())
                + ",\"worn_before\":"
                + each.wornBefore()
                + "}";
    }

    private static String measured(Archived.Measured each) {
        return "{\"id\":"
                + AnalysisJson.text(each.id())
                + ",\"title\":"
                + AnalysisJson.text(each.title())
                + ",\"kind\":"
                + AnalysisJson.text(each.kind())
                + ",\"unit\":"
                + AnalysisJson.text(each.unit())
                + ",\"ratio\":"
                + each.ratio()
                + ",\"meaningful\":"
                + each.compared()
                        .map(Archived.Compared::meaningful)
                        .map(AnalysisJson::text)
                        .orElse("null")
                + "}";
    }

    private static String finding(Archived.Finding each) {
        return "{\"measure\":"
                + AnalysisJson.text(each.measure())
                + ",\"condition\":"
                + AnalysisJson.text(each.condition())
                + ",\"verdict\":"
                + AnalysisJson.text(each.conclusion().verdict().word())
                + ",\"words\":"
                + AnalysisJson.text(each.words())
                + ",\"direction\":"
                + each.conclusion().direction()
                + ",\"estimate\":"
                + AnalysisJson.number(each.estimate())
                + ",\"interval\":"
                + each.interval().map(AnalysisJson::limits).orElse("null")
                + ",\"n\":"
                + each.n()
                + "}";
    }

    private static <T> String list(List<T> all, Function<T, String> each) {
        return all.stream().map(each).collect(Collectors.joining(",", "[", "]"));
    }

    private static String word(Enum<?> constant) {
        return AnalysisJson.text(constant.name().toLowerCase(Locale.ROOT));
    }
}
