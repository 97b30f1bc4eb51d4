package rigside.report;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * A page as Markdown: CommonMark with pipe tables. Every text is escaped, so that nothing a person
 * typed becomes a heading, a link, HTML, or a cell of its own.
 */
final class Markdown implements Block.Cases<String>, Cell.Cases<String> {
    /** What means something anywhere in a line. */
    private static final Pattern MEANING = Pattern.compile("[\\\\`*_\\[\\]<>#&|~$]");

    /** What some readers make a link of without being told to. */
    private static final Pattern LINK = Pattern.compile("(?i)(:)(?=//)|(?<=www)(\\.)");

    /** What means something where a line begins: a list, a rule, a line under a heading. */
    private static final Pattern BEGINNING = Pattern.compile("^(?=[-+=])|^(\\d{1,9})(?=[.)])");

    private static final int DEEPEST = 6;

    /** No fence is shorter. */
    private static final int FENCE = 3;

    private static final Pattern TICKS = Pattern.compile("`+");

    private final int level;
    private final Optional<Path> pictures;

    private Markdown(int level, Optional<Path> pictures) {
        this.level = level;
        this.pictures = pictures;
    }

    /**
     * A page.
     *
     * @param pictures the folder of its figures, seen from the one the page is written to; empty
     *     where they are told in words alone
     */
    static String of(Page page, Optional<Path> pictures) {
        return "# "
                + escaped(page.title())
                + "\n\n"
                + paragraph(page.under())
                + new Markdown(2, pictures).all(page.blocks()).stripTrailing()
                + "\n";
    }

    private String all(List<Block> blocks) {
        return blocks.stream().map(block -> block.match(this)).collect(Collectors.joining());
    }

    @Override
    public String words(Block.Words block) {
        return paragraph(block.text());
    }

    @Override
    public String caution(Block.Caution block) {
        return block.text().isBlank() ? "" : "> **" + escaped(block.text()) + "**\n\n";
    }

    @Override
    public String stated(Block.Stated block) {
        return "**" + escaped(block.lead()) + "** " + escaped(block.text()) + "\n\n";
    }

    @Override
    public String points(Block.Points block) {
        return block.texts().stream()
                .map(text -> "- " + begun(escaped(text)) + "\n")
                .collect(Collectors.joining("", "", "\n"));
    }

    @Override
    public String table(Block.Table block) {
        int columns = block.rows().get(0).size();
        List<String> heads =
                block.heads().isEmpty()
                        ? Collections.nCopies(columns, "")
                        : block.heads().stream().map(head -> escaped(head.text())).toList();
        StringBuilder table = new StringBuilder();
        if (!block.caption().isEmpty()) {
            table.append("*").append(escaped(block.caption())).append("*\n\n");
        }
        table.append(row(heads));
        table.append("|");
        for (int at = 0; at < columns; at++) {
            boolean figures = !block.heads().isEmpty() && block.heads().get(at).figures();
            table.append(figures ? " ---: |" : " --- |");
        }
        table.append("\n");
        block.rows()
                .forEach(
                        row ->
                                table.append(
                                        row(row.stream().map(cell -> cell.match(this)).toList())));
        return table.append("\n").toString();
    }

    private static String row(List<String> cells) {
        return "| " + String.join(" | ", cells) + " |\n";
    }

    @Override
    public String part(Block.Part block) {
        String aside = block.aside().isEmpty() ? "" : " (" + escaped(block.aside()) + ")";
        return "#".repeat(Math.min(level, DEEPEST))
                + " "
                + escaped(block.title())
                + aside
                + "\n\n"
                + new Markdown(level + 1, pictures).all(block.blocks());
    }

    @Override
    public String room(Block.Room block) {
        return paragraph(block.title()) + paragraph("_".repeat(40)).repeat(block.lines());
    }

    @Override
    public String drawn(Block.Drawn block) {
        Figure figure = block.figure();
        return pictures.map(folder -> picture(figure, folder)).orElse("")
                + "**"
                + escaped(figure.title())
                + ".** "
                + escaped(figure.description())
                + "\n\n";
    }

    /** What the picture shows stands below it in words. */
    private static String picture(Figure figure, Path folder) {
        return "!["
                + escaped(figure.title())
                + "]("
                + Stream.concat(
                                StreamSupport.stream(folder.spliterator(), false)
                                        .map(Path::toString)
                                        .filter(each -> !each.isEmpty()),
                                Stream.of(figure.name() + ".svg"))
                        .map(Markdown::inAddress)
                        .collect(Collectors.joining("/"))
                + ")\n\n";
    }

    /** A name of a file or folder as part of an address: what is not plain becomes %20 and such. */
    private static String inAddress(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }

    @Override
    public String fold(Block.Fold block) {
        return "**" + escaped(block.title()) + "**\n\n" + all(block.blocks());
    }

    /** The fence is longer than any row of its marks in the text. */
    @Override
    public String verbatim(Block.Verbatim block) {
        String text = String.join("\n", Legible.lines(block.text()));
        int longest =
                TICKS.matcher(text)
                        .results()
                        .mapToInt(run -> run.end() - run.start())
                        .max()
                        .orElse(0);
        String fence = "`".repeat(Math.max(FENCE, longest + 1));
        return fence + "\n" + text + "\n" + fence + "\n\n";
    }

    @Override
    public String text(Cell.Text cell) {
        return escaped(cell.text());
    }

    @Override
    public String blank(Cell.Blank cell) {
        return escaped(("_".repeat(cell.characters()) + " " + cell.unit()).strip());
    }

    @Override
    public String ticks(Cell.Ticks cell) {
        return cell.texts().stream()
                .map(text -> escaped("[ ] " + text))
                .collect(Collectors.joining("  "));
    }

    private static String paragraph(String text) {
        return Legible.of(text).isEmpty() ? "" : begun(escaped(text)) + "\n\n";
    }

    /** Escaped where it begins a line, too. */
    private static String begun(String escaped) {
        return BEGINNING.matcher(escaped).replaceFirst("$1\\\\");
    }

    /** Harmless within a line, in a heading and in a cell. */
    static String escaped(String raw) {
        String escaped = MEANING.matcher(Legible.of(raw)).replaceAll("\\\\$0");
        return LINK.matcher(escaped).replaceAll("\\\\$0");
    }
}
