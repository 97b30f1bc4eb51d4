package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The pressure over time as the instrument gave it: a panel for each inhalation or exercise, by
 * condition and round, all on the same axes.
 */
final class PressurePlot {
    private PressurePlot() {}

    /** As many as it takes; none where nothing may be shown or no readings are there. */
    static List<Figure> of(Material of, String measure) {
        return Plots.of(of.state(), of.shown(), measure)
                .map(plotting -> figures(of, plotting))
                .orElse(List.of());
    }

    /** What to say where an instrument followed the pressure and its readings are not there. */
    static Optional<String> missing(Material of, String measure) {
        List<PressureFollowed> all =
                Plots.of(of.state(), of.shown(), measure)
                        .map(plotting -> PressureFollowed.all(of, plotting))
                        .orElse(List.of());
        long without =
                all.stream()
                        .filter(each -> of.pressure().of(each.entry().number()).isEmpty())
                        .count();
        if (without == 0) {
            return Optional.empty();
        }
        return Optional.of(
                without == all.size()
                        ? "No pressure over time: its raw readings are not there."
                        : "Pressure over time: the raw readings of "
                                + without
                                + " of "
                                + all.size()
                                + " are not there.");
    }

    private static List<Figure> figures(Material of, Plotting plotting) {
        List<PressureFollowed> all =
                PressureFollowed.all(of, plotting).stream()
                        .filter(each -> of.pressure().of(each.entry().number()).isPresent())
                        .toList();
        if (all.isEmpty()) {
            return List.of();
        }
        PressureScale scale = PressureScale.of(plotting, of.pressure(), all);
        PressurePages pages = PressurePages.of(all);
        List<Figure> figures = new ArrayList<>();
        for (List<PressureFollowed> page : pages.pages()) {
            boolean last = figures.size() == pages.pages().size() - 1;
            String name = figures.isEmpty() ? "pressure" : "pressure-" + (figures.size() + 1);
            figures.add(
                    figure(
                            Plots.name(plotting, name),
                            new PressureWords(
                                    plotting,
                                    of.pressure(),
                                    page,
                                    scale,
                                    last ? pages.left() : 0)));
        }
        return figures;
    }

    private static Figure figure(String name, PressureWords words) {
        return new Figure(
                name,
                words.of().measure().title() + ": pressure over time, " + words.rounds(),
                words.sentences(),
                new PressureSheet(words, Drawing.NARROW).drawing(),
                new PressureSheet(words, Drawing.WIDE).drawing());
    }
}
