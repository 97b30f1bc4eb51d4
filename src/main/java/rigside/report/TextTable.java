package rigside.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

/**
 * A table in columns of text: as wide as their cells, the widest broken until all fit; within words
 * only where breaking between them is not enough.
 */
final class TextTable {
    private static final String GAP = "  ";

    /** No column is made narrower, whatever the width asked for. */
    private static final int NARROWEST = 3;

    private final Block.Table table;
    private final int[] widths;

    private TextTable(Block.Table table, int[] widths) {
        this.table = table;
        this.widths = widths;
    }

    static List<String> of(Block.Table table, int width) {
        int[] widths = widest(table, text -> Legible.width(Legible.of(text)));
        int room = width - GAP.length() * (widths.length - 1);
        // A word of two thirds of the line is broken all the same, before others suffer for it.
        int[] words = widest(table, text -> Math.min(Wrapped.longestWord(text), room * 2 / 3));
        boolean shrunk = true;
        while (shrunk && Arrays.stream(widths).sum() > room) {
            shrunk = shrink(widths, words) || shrink(widths, new int[widths.length]);
        }
        return new TextTable(table, widths).lines();
    }

    /** Of each column the most that its cells measure. */
    private static int[] widest(Block.Table table, ToIntFunction<String> measure) {
        int[] widest = new int[table.rows().get(0).size()];
        for (List<Cell> row : all(table)) {
            for (int at = 0; at < widest.length; at++) {
                widest[at] = Math.max(widest[at], measure.applyAsInt(text(row.get(at))));
            }
        }
        return widest;
    }

    /** Takes one from the widest column that may lose it; false if none may. */
    private static boolean shrink(int[] widths, int[] least) {
        int widest = -1;
        for (int at = 0; at < widths.length; at++) {
            boolean may = widths[at] > Math.max(NARROWEST, least[at]);
            widest = may && (widest < 0 || widths[at] > widths[widest]) ? at : widest;
        }
        if (widest >= 0) {
            widths[widest]--;
        }
        return widest >= 0;
    }

    private static List<List<Cell>> all(Block.Table table) {
        List<List<Cell>> all = new ArrayList<>();
        if (!table.heads().isEmpty()) {
            all.add(table.heads().stream().map(head -> Cell.of(head.text())).toList());
        }
        all.addAll(table.rows());
        return all;
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (List<Cell> row : all(table)) {
            lines.addAll(row(row));
            if (!table.heads().isEmpty() && lines.size() == row(row).size()) {
                lines.add(
                        Arrays.stream(widths)
                                .mapToObj("-"::repeat)
                                .collect(Collectors.joining(GAP)));
            }
        }
        return lines;
    }

    private List<String> row(List<Cell> row) {
        List<List<String>> cells = new ArrayList<>();
        for (int at = 0; at < row.size(); at++) {
            cells.add(Wrapped.of(text(row.get(at)), widths[at]));
        }
        int height = Math.max(1, cells.stream().mapToInt(List::size).max().orElse(1));
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < height; line++) {
            StringBuilder joined = new StringBuilder();
            for (int at = 0; at < cells.size(); at++) {
                String cell = line < cells.get(at).size() ? cells.get(at).get(line) : "";
                joined.append(at == 0 ? "" : GAP).append(padded(cell, at));
            }
            lines.add(joined.toString().stripTrailing());
        }
        return lines;
    }

    private String padded(String cell, int column) {
        String pad = " ".repeat(Math.max(0, widths[column] - Legible.width(cell)));
        boolean right = !table.heads().isEmpty() && table.heads().get(column).figures();
        return right ? pad + cell : cell + pad;
    }

    private static String text(Cell cell) {
        return cell.match(
                new Cell.Cases<String>() {
                    @Override
                    public String text(Cell.Text cell) {
                        return cell.text();
                    }

                    @Override
                    public String blank(Cell.Blank cell) {
                        return ("_".repeat(cell.characters()) + " " + cell.unit()).strip();
                    }

                    @Override
                    public String ticks(Cell.Ticks cell) {
                        return cell.texts().stream()
                                .map(text -> ("[_] " + text).strip())
                                .collect(Collectors.joining("  "));
                    }
                });
    }
}
