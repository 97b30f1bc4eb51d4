package rigside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.analysis.DonningValue;
import rigside.analysis.MeasureResult;
import rigside.session.Donning;

/** What the last donning gave, as far as it may be seen: in big digits where there is room. */
final class LastResults {
    private LastResults() {}

    private record Result(String title, String value, String unit) {}

    static List<Line> of(Scene scene) {
        List<Donning> donnings = scene.state().course().donnings();
        if (donnings.isEmpty()) {
            return List.of();
        }
        Donning last = donnings.get(donnings.size() - 1);
        if (last.outcome() == Donning.Outcome.STRUCK) {
            return List.of();
        }
        List<Result> results =
                scene.view().shown().measures().stream()
                        .flatMap(measure -> result(measure, last).stream())
                        .toList();
        String whose =
                "donning " + last.number() + ", " + Header.title(scene.state(), last.condition());
        if (results.isEmpty()) {
            return List.of();
        }
        return scene.size() > Big.USUAL ? big(scene, whose, results) : small(scene, whose, results);
    }

    private static Optional<Result> result(MeasureResult measure, Donning last) {
        return measure.value(last.number())
                .filter(value -> value.value().isPresent())
                .map(
                        (DonningValue value) ->
                                new Result(
                                        measure.measure().title(),
                                        Figures.value(value.value(), value.bounded()),
                                        measure.measure().unit().symbol()));
    }

    private static List<Line> small(Scene scene, String whose, List<Result> results) {
        List<String> words =
                results.stream()
                        .map(
                                each ->
                                        (each.title() + " " + each.value() + " " + each.unit())
                                                .strip())
                        .toList();
        return Wrap.hanging(
                Line.of(whose + ": "), Tone.STRONG, String.join(", ", words), scene.columns());
    }

    private static List<Line> big(Scene scene, String whose, List<Result> results) {
        List<Line> lines = new ArrayList<>(List.of(Line.of(whose)));
        for (Result result : results) {
            lines.add(Line.BLANK);
            lines.add(Line.of(result.title()));
            lines.addAll(
                    Big.of(
                            result.value(),
                            result.unit(),
                            scene.lesser(),
                            scene.columns(),
                            scene.signs()));
        }
        return List.copyOf(lines);
    }
}
