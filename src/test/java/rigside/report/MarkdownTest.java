package rigside.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is written as Markdown, read again by a CommonMark parser that is not ours (commonmark-java
 * 0.27.0 with its tables).
 */
class MarkdownTest {
    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();

    static Node parsed(Page page) {
        return PARSER.parse(page.markdown());
    }

    /** Every kind of node, in the order they are met, but for the text in them. */
    static List<String> kinds(Node node) {
        List<String> kinds = new ArrayList<>();
        for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
            String kind = child.getClass().getSimpleName();
            if (!kind.equals("Text")) {
                kinds.add(kind);
                kinds.addAll(kinds(child));
            }
        }
        return kinds;
    }

    private static List<String> cells(Node document) {
        List<String> cells = new ArrayList<>();
        document.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(CustomNode node) {
                        if (node instanceof TableCell) {
                            cells.add(words(node));
                        }
                        visitChildren(node);
                    }
                });
        return cells;
    }

    private static String words(Node node) {
        StringBuilder words = new StringBuilder();
        node.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Text text) {
                        words.append(text.getLiteral());
                    }
                });
        return words.toString();
    }

    private static Page page(String text) {
        return new Page(
                text,
                text,
                List.of(
                        new Block.Words(text),
                        new Block.Caution(text),
                        new Block.Stated(text, text),
                        new Block.Points(List.of(text, text)),
                        new Block.Table(
                                text,
                                Block.Head.of(text, text),
                                List.of(Cell.texts(List.of(text, text)))),
                        Block.Part.of(
                                text,
                                text,
                                List.of(new Block.Fold(text, List.of(new Block.Verbatim(text)))))));
    }

    static List<String> texts() {
        return HostileTexts.ALL;
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("texts")
    void whateverIsTypedIsWordsOnly(String text) {
        assertEquals(kinds(parsed(page("words"))), kinds(parsed(page(text))));
        List<String> cells = cells(parsed(page(text)));
        assertEquals(4, cells.size());
        cells.forEach(each -> assertEquals(Legible.of(text), each));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "- no list",
                "+ no list",
                "* no list",
                "1. no list",
                "1) no list",
                "123456789. no list",
                "# no heading",
                "> no quotation",
                "===",
                "---",
                "***",
                "- - -",
                "```",
                "~~~",
                "| a | b |",
                "[no]: http://link.example",
                "-0.215",
                "=SUM(A1)"
            })
    void noWordsBeginAnythingElse(String text) {
        Node document = parsed(new Page("t", "", List.of(new Block.Words(text))));
        Node paragraph = document.getLastChild();
        assertTrue(paragraph instanceof Paragraph, () -> kinds(document).toString());
        assertEquals(text, words(paragraph));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "```",
                "a\n```\nb",
                "````\n```",
                "~~~\n    four\n\ttab",
                "<b>\n# x\n---"
            })
    void linesOfAFileStayInTheirFence(String text) {
        Node document =
                parsed(
                        new Page(
                                "t",
                                "",
                                List.of(new Block.Verbatim(text), new Block.Words("after"))));
        FencedCodeBlock fenced = (FencedCodeBlock) document.getFirstChild().getNext();
        String lines = String.join("\n", Legible.lines(text));
        assertEquals(lines + "\n", fenced.getLiteral());
        assertEquals("after", words(document.getLastChild()));
    }

    @Test
    void aTableHasItsColumnsAndItsFiguresOnTheRight() {
        Block.Table table =
                new Block.Table(
                        "Values",
                        List.of(new Block.Head("Round", false), Block.Head.figures("s")),
                        List.of(Cell.texts(List.of("1", "6.12")), Cell.texts(List.of("2", "6.2"))));
        assertEquals(
                """
                # t

                *Values*

                | Round | s |
                | --- | ---: |
                | 1 | 6.12 |
                | 2 | 6.2 |
                """,
                new Page("t", "", List.of(table)).markdown());
    }

    @Test
    void anOutlineIsReadAsTheHeadingsItHas() {
        String markdown = Outline.of(Read.shipped("/protocols/seal-and-breathing.yaml")).markdown();
        List<String> kinds = kinds(PARSER.parse(markdown));
        assertTrue(kinds.contains("Heading") && kinds.contains("TableBlock"), markdown);
        assertFalse(kinds.contains("HtmlInline") || kinds.contains("HtmlBlock"), markdown);
        assertFalse(kinds.contains("Link") || kinds.contains("Code"), markdown);
    }

    @Test
    void aFigureIsAPictureOfItsFileAndStillToldInWords() {
        Drawing none = new Drawing(1, 1, List.of());
        Figure figure = new Figure("seal-looks", "a]( *title*", "all of it", none, none);
        Page page = new Page("t", "", List.of(new Block.Drawn(figure)));
        List<Image> images = new ArrayList<>();
        Node document = PARSER.parse(page.markdown(Path.of("..", "x y")));
        document.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Image image) {
                        images.add(image);
                    }
                });
        assertEquals(1, images.size(), () -> page.markdown(Path.of("..", "x y")));
        assertEquals("../x%20y/seal-looks.svg", images.get(0).getDestination());
        assertEquals("a]( *title*", words(images.get(0)));
        assertTrue(words(document).endsWith("all of it"), () -> words(document));
        assertEquals(
                "seal-looks.svg",
                page.markdown(Path.of("")).replaceFirst("(?s).*]\\((.*?)\\).*", "$1"));
    }
}
