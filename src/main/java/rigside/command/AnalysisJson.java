package rigside.command;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import rigside.analysis.Comparison;
import rigside.analysis.InstrumentCheck;
import rigside.analysis.Shown;
import rigside.analysis.TableAnalysis;
import rigside.decide.Forecast;
import rigside.decide.Limits;
import rigside.report.Legible;
import rigside.session.Event;
import rigside.session.State;

/** Analyses as JSON. */
final class AnalysisJson {

    private AnalysisJson() {}

    static String of(TableAnalysis analysis) {
        return "{\"comparisons\":["
                + all(analysis.comparisons(), false)
                + "],\"flags\":["
                + analysis.flags().stream()
                        .map(each -> FlagJson.of(each, ""))
                        .collect(Collectors.joining(","))
                + "]}\n";
    }

    /**
     * The same of a session, each comparison with its measure, and what counting particles alone
     * leaves open of its fit factors. Of what is concealed there are no comparisons, but what that
     * is and how far the session is. Invented values are said to be.
     */
    static String of(State state, Shown shown) {
        Event.SessionOpened opened = state.opening().orElseThrow().event();
        List<Comparison> comparisons =
                shown.measures().stream().flatMap(each -> each.comparisons().stream()).toList();
        String concealed =
                shown.concealed().isEmpty()
                        ? ""
                        : ",\"concealed\":"
                                + text(shown.concealed())
                                + ",\"complete_rounds\":"
                                + shown.completeRounds()
                                + ",\"enough\":"
                                + shown.enough()
                                + ",\"plan_used_up\":"
                                + shown.planUsedUp();
        return "{\"comparisons\":["
                + all(comparisons, true)
                + "]"
                + (shown.result()
                        ? ",\"flags\":[" + flags(shown) + "],\"counting\":" + CountingJson.of(shown)
                        : "")
                + SpreadJson.of(shown)
                + InstrumentCheck.of(state).map(CheckJson::of).orElse("")
                + concealed
                + (opened.simulated() ? ",\"simulated\":true" : "")
                + opened.paper().map(AnalysisJson::paper).orElse("")
                + "}\n";
    }

    private static String paper(Event.Paper paper) {
        return ",\"from_paper\":true"
                + paper.on().map(day -> ",\"form_date\":" + text(day.toString())).orElse("");
    }

    private static String flags(Shown shown) {
        return shown.measures().stream()
                .flatMap(
                        each ->
                                each.flags().stream()
                                        .map(flag -> FlagJson.of(flag, each.measure().id())))
                .collect(Collectors.joining(","));
    }

    private static String all(List<Comparison> comparisons, boolean withMeasure) {
        return comparisons.stream()
                .map(each -> comparison(each, withMeasure))
                .collect(Collectors.joining(","));
    }

    private static String comparison(Comparison each, boolean withMeasure) {
        return "{"
                + (withMeasure ? "\"measure\":" + text(each.measure()) + "," : "")
                + "\"condition\":"
                + text(each.condition())
                + ",\"reference\":"
                + text(each.reference())
                + ",\"compare\":"
                + text(each.ratio() ? "ratio" : "difference")
                + ",\"n\":"
                + each.n()
                + ",\"estimate\":"
                + number(each.estimate())
                + ",\"interval\":"
                + each.interval().map(AnalysisJson::limits).orElse("null")
                + ",\"critical\":"
                + number(each.critical())
                + ",\"verdict\":"
                + text(each.verdict().word())
                + ",\"band\":"
                + limits(each.band())
                + ",\"sentence\":"
                + text(each.sentence())
                + ",\"next\":"
                + text(each.next())
                + ",\"plan_used_up\":"
                + each.planUsedUp()
                + ",\"forecast\":"
                + forecast(each.forecast())
                + ",\"looks\":["
                + each.looks().stream().map(AnalysisJson::look).collect(Collectors.joining(","))
                + "],\"technical\":"
                + text(each.words().technical())
                + ",\"change\":"
                + text(each.words().change())
                + ",\"settled_at\":"
                + each.settledAt().map(settled -> String.valueOf(settled.round())).orElse("null")
                + ",\"direction\":"
                + each.settledAt().map(settled -> settled.conclusion().direction()).orElse(0)
                + ",\"contradicted\":"
                + each.contradicted()
                + "}";
    }

    private static String look(Comparison.Seen look) {
        return "{\"n\":"
                + look.n()
                + ",\"estimate\":"
                + number(OptionalDouble.of(look.estimate()))
                + ",\"interval\":"
                + limits(look.interval())
                + ",\"critical\":"
                + number(OptionalDouble.of(look.critical()))
                + ",\"verdict\":"
                + text(look.verdict().word())
                + "}";
    }

    static String limits(Limits limits) {
        return "["
                + number(OptionalDouble.of(limits.low()))
                + ","
                + number(OptionalDouble.of(limits.high()))
                + "]";
    }

    private static String forecast(Forecast forecast) {
        return "{\"settles_within_plan\":"
                + number(forecast.settlesWithinPlan())
                + ",\"further_rounds\":{\"median\":"
                + number(forecast.median())
                + ",\"low\":"
                + number(forecast.low())
                + ",\"high\":"
                + number(forecast.high())
                + "}}";
    }

    private static String number(OptionalInt number) {
        return number.isPresent() ? String.valueOf(number.getAsInt()) : "null";
    }

    /** Twelve digits, more than any of the numbers is good for; what is not finite has no word. */
    static String number(OptionalDouble number) {
        if (number.isEmpty() || !Double.isFinite(number.getAsDouble())) {
            return "null";
        }
        BigDecimal rounded =
                BigDecimal.valueOf(number.getAsDouble())
                        .round(new MathContext(12))
                        .stripTrailingZeros();
        return Math.abs(rounded.scale()) < 20 ? rounded.toPlainString() : rounded.toString();
    }

    /** In double quotes; what a terminal obeys, or nobody sees, by its number. */
    static String text(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int point : text.codePoints().toArray()) {
            if (point == '"' || point == '\\') {
                quoted.append('\\').appendCodePoint(point);
            } else if (Legible.isUnseen(point)) {
                for (char each : Character.toChars(point)) {
                    quoted.append(String.format("\\u%04x", (int) each));
                }
            } else {
                quoted.appendCodePoint(point);
            }
        }
        return quoted.append('"').toString();
    }
}
