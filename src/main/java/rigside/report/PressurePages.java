package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * How the traces of a measure are spread over figures: whole rounds together, so that conditions
 * stand side by side; what would be too many figures is only counted.
 *
 * @param pages what each figure shows, none empty
 * @param left how many are not drawn
 */
record PressurePages(List<List<PressureFollowed>> pages, int left) {
    /** In one figure: six rows of four on a wide sheet. */
    static final int PANELS = 24;

    /** Of one measure. */
    static final int FIGURES = 4;

    /** Those in the order of rounds; once one does not fit, none after it is drawn either. */
    static PressurePages of(List<PressureFollowed> all) {
        List<List<PressureFollowed>> pages = new ArrayList<>();
        int left = 0;
        for (List<PressureFollowed> each : pieces(all)) {
            int last = pages.size() - 1;
            if (left > 0 || (pages.size() == FIGURES && !fits(pages.get(last), each))) {
                left += each.size();
            } else if (last >= 0 && fits(pages.get(last), each)) {
                pages.get(last).addAll(each);
            } else {
                pages.add(new ArrayList<>(each));
            }
        }
        return new PressurePages(pages, left);
    }

    private static boolean fits(List<PressureFollowed> page, List<PressureFollowed> more) {
        return page.size() + more.size() <= PANELS;
    }

    /** Rounds; those that are too much for a figure in whole donnings, as far as these fit. */
    private static List<List<PressureFollowed>> pieces(List<PressureFollowed> all) {
        List<List<PressureFollowed>> pieces = new ArrayList<>();
        for (List<PressureFollowed> round : parted(all, each -> each.donning().round())) {
            if (round.size() <= PANELS) {
                pieces.add(round);
            } else {
                parted(round, each -> each.donning().donning())
                        .forEach(donning -> pieces.addAll(sheets(donning)));
            }
        }
        return pieces;
    }

    private static List<List<PressureFollowed>> sheets(List<PressureFollowed> donning) {
        List<List<PressureFollowed>> sheets = new ArrayList<>();
        for (int from = 0; from < donning.size(); from += PANELS) {
            sheets.add(donning.subList(from, Math.min(from + PANELS, donning.size())));
        }
        return sheets;
    }

    /** Those one after another that have a number in common. */
    private static List<List<PressureFollowed>> parted(
            List<PressureFollowed> all, ToIntFunction<PressureFollowed> number) {
        List<List<PressureFollowed>> parts = new ArrayList<>();
        int before = 0;
        for (PressureFollowed each : all) {
            int own = number.applyAsInt(each);
            if (parts.isEmpty() || own != before) {
                parts.add(new ArrayList<>());
            }
            before = own;
            parts.get(parts.size() - 1).add(each);
        }
        return parts;
    }
}
