package rigside.report;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A page as one HTML file: no script, nothing fetched, every text escaped; to be read in light and
 * dark and to be printed on A4.
 */
final class Html implements Block.Cases<String>, Cell.Cases<String> {
    /** As many columns of text at most are kept on one line. */
    private static final int SHORT = 24;

    /** A table is narrow where its columns take no more characters: they fit on paper. */
    private static final int NARROW = 84;

    /** As narrow as a column of many words can be, in characters. */
    private static final int WRAPPED = 12;

    /** Beside each column, in characters. */
    private static final int GAP = 3;

    /** More characters than these keep some room for themselves. */
    private static final int LONG = 40;

    /** What a lead ends with where its text goes on beside it. */
    private static final Pattern END = Pattern.compile("[.:]$");

    /** A number and its percent sign stay on one line. */
    private static final Pattern PERCENT = Pattern.compile("(?<=\\d) %");

    private final int level;

    private Html(int level) {
        this.level = level;
    }

    static String of(Page page) {
        return """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
        <title>%s</title>
        <style>
        %s</style>
        </head>
        <body>
        <main>
        <header>
        <h1>%s</h1>
        %s</header>
        %s</main>
        </body>
        </html>
        """
                .formatted(
                        escaped(page.title()),
                        Style.CSS,
                        text(page.title()),
                        paragraph("under", page.under()),
                        body(page));
    }

    private static String contents(Page page) {
        StringBuilder list = new StringBuilder("<nav aria-label=\"Contents\">\n<ol>\n");
        for (int at = 0; at < page.blocks().size(); at++) {
            if (page.blocks().get(at) instanceof Block.Part part) {
                list.append(
                        "<li><a href=\"#part-%d\">%s</a></li>\n".formatted(at, text(part.title())));
            }
        }
        return list.append("</ol>\n</nav>\n").toString();
    }

    /** The parts of a long page can be jumped to from before the first of them. */
    private static String body(Page page) {
        Html writer = new Html(2);
        StringBuilder body = new StringBuilder();
        boolean listed = !page.isLong();
        for (int at = 0; at < page.blocks().size(); at++) {
            if (page.isLong() && page.blocks().get(at) instanceof Block.Part part) {
                body.append(listed ? "" : contents(page));
                listed = true;
                body.append(writer.part(part, " id=\"part-" + at + "\""));
            } else {
                body.append(page.blocks().get(at).match(writer));
            }
        }
        return body.toString();
    }

    private String all(List<Block> blocks) {
        return blocks.stream().map(block -> block.match(this)).collect(Collectors.joining());
    }

    @Override
    public String words(Block.Words block) {
        return paragraph("", block.text());
    }

    @Override
    public String caution(Block.Caution block) {
        return paragraph("caution", block.text());
    }

    @Override
    public String points(Block.Points block) {
        return block.texts().stream()
                .map(text -> "<li>" + flowing(text) + "</li>\n")
                .collect(Collectors.joining("", "<ul>\n", "</ul>\n"));
    }

    @Override
    public String table(Block.Table block) {
        String heads =
                block.heads().stream()
                        .map(
                                head ->
                                        "<th scope=\"col\""
                                                + kind(head)
                                                + ">"
                                                + text(head.text())
                                                + "</th>")
                        .collect(Collectors.joining());
        String caption =
                block.caption().isEmpty()
                        ? ""
                        : "<caption>" + text(block.caption()) + "</caption>\n";
        String head = heads.isEmpty() ? "" : "<thead><tr>" + heads + "</tr></thead>\n";
        String kind =
                heads.isEmpty() ? " class=\"pairs\"" : isNarrow(block) ? " class=\"narrow\"" : "";
        return "<div class=\"wide\"><table"
                + kind
                + ">\n"
                + caption
                + head
                + "<tbody>\n"
                + block.rows().stream().map(row -> row(block, row)).collect(Collectors.joining())
                + "</tbody></table></div>\n";
    }

    private String row(Block.Table table, List<Cell> row) {
        StringBuilder cells = new StringBuilder("<tr>");
        for (int at = 0; at < row.size(); at++) {
            String cell = row.get(at).match(this);
            cells.append(
                    table.names(at)
                            ? "<th scope=\"row\"" + terse(table, cell) + ">" + cell + "</th>"
                            : "<td" + kind(table, at, cell) + ">" + cell + "</td>");
        }
        return cells.append("</tr>\n").toString();
    }

    /** A number stays on one line, many words are not squeezed where the page is narrow. */
    private static String kind(Block.Table table, int column, String cell) {
        if (table.heads().isEmpty()) {
            return "";
        }
        if (table.heads().get(column).figures()) {
            return " class=\"figures" + (Legible.width(cell) <= SHORT ? " short\"" : "\"");
        }
        return Legible.width(cell) > LONG ? " class=\"long\"" : terse(table, cell);
    }

    /** Few words stay on one line where there is room, or the table can be moved sideways. */
    private static String terse(Block.Table table, String cell) {
        return table.heads().isEmpty() || Legible.width(cell) > SHORT ? "" : " class=\"terse\"";
    }

    private static String kind(Block.Head head) {
        String kind =
                (head.figures() ? "figures " : "") + (head.text().length() > LONG ? "long" : "");
        return kind.isEmpty() ? "" : " class=\"" + kind.strip() + "\"";
    }

    /** Whether what stays on one line leaves all columns their place on paper. */
    private boolean isNarrow(Block.Table table) {
        int taken = 0;
        for (int at = 0; at < table.heads().size(); at++) {
            int column = at;
            taken +=
                    GAP
                            + table.rows().stream()
                                    .mapToInt(row -> Legible.width(row.get(column).match(this)))
                                    .map(length -> length > SHORT ? WRAPPED : length)
                                    .max()
                                    .orElse(0);
        }
        return taken <= NARROW;
    }

    @Override
    public String part(Block.Part block) {
        return part(block, "");
    }

    private String part(Block.Part block, String id) {
        String aside =
                block.aside().isEmpty()
                        ? ""
                        : " <span class=\"aside\">" + text(block.aside()) + "</span>";
        String start = block.start() == Block.Start.NEW_PAGE ? " class=\"new-page\"" : "";
        String tag = "h" + Math.min(level, 6);
        return "<section"
                + id
                + start
                + ">\n<"
                + tag
                + ">"
                + text(block.title())
                + aside
                + "</"
                + tag
                + ">\n"
                + new Html(level + 1).all(block.blocks())
                + "</section>\n";
    }

    @Override
    public String room(Block.Room block) {
        return "<div class=\"room\">"
                + paragraph("", block.title())
                + "<div class=\"line\"></div>".repeat(block.lines())
                + "</div>\n";
    }

    /** Drawn twice, for narrow and for wide windows; the style shows one of them. */
    @Override
    public String drawn(Block.Drawn block) {
        Figure figure = block.figure();
        return "<figure id=\""
                + figure.name()
                + "\">\n"
                + Svg.inline(figure, figure.wide(), "wide-figure")
                + Svg.inline(figure, figure.narrow(), "narrow-figure")
                + "<figcaption>"
                + text(figure.title())
                + "</figcaption>\n</figure>\n";
    }

    /** A heading of its own, so that one can go from verdict to verdict without reading all. */
    @Override
    public String stated(Block.Stated block) {
        String tag = "h" + Math.min(level, 6);
        return "<"
                + tag
                + " class=\"stated\">"
                + text(END.matcher(block.lead()).replaceFirst(""))
                + "</"
                + tag
                + ">\n"
                + paragraph("", block.text());
    }

    @Override
    public String fold(Block.Fold block) {
        return "<details>\n<summary>"
                + text(block.title())
                + "</summary>\n"
                + all(block.blocks())
                + "</details>\n";
    }

    @Override
    public String verbatim(Block.Verbatim block) {
        return Legible.lines(block.text()).stream()
                .map(Html::marked)
                .collect(Collectors.joining("\n", "<pre>", "\n</pre>\n"));
    }

    @Override
    public String text(Cell.Text cell) {
        return flowing(cell.text());
    }

    /** About half an em a character by hand. */
    @Override
    public String blank(Cell.Blank cell) {
        return "<span class=\"blank\" style=\"width:"
                + cell.characters()
                + "ch\"></span>"
                + (cell.unit().isEmpty() ? "" : " " + text(cell.unit()));
    }

    @Override
    public String ticks(Cell.Ticks cell) {
        return cell.texts().stream()
                .map(text -> "<span class=\"tick\"><i></i>" + text(text) + "</span>")
                .collect(Collectors.joining(" "));
    }

    private static String paragraph(String kind, String text) {
        String classes = kind.isEmpty() ? "" : " class=\"" + kind + "\"";
        return text.isEmpty() ? "" : "<p" + classes + ">" + flowing(text) + "</p>\n";
    }

    /** Safe in text and in quoted attributes. */
    static String escaped(String raw) {
        return marked(Legible.of(raw));
    }

    /** Safe in text, and names from right to left keep to themselves. */
    private static String text(String raw) {
        return Directions.isolated(Legible.of(raw), Html::marked);
    }

    /** The same where lines are broken as the window has it. */
    private static String flowing(String raw) {
        return PERCENT.matcher(text(raw)).replaceAll("\u00a0%");
    }

    static String marked(String legible) {
        return legible.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
