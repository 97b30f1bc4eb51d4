package rigside.report;

import java.util.ArrayList;
import java.util.List;

/** A page as lines of text, none wider than asked where words can be broken at all. */
final class PlainText implements Block.Cases<List<String>> {
    /** What stands below a heading is that much further right. */
    private static final int INDENT = 2;

    private final int width;

    /** How deep in parts the text stands. */
    private final int depth;

    private PlainText(int width, int depth) {
        this.width = width;
        this.depth = depth;
    }

    static List<String> of(Page page, int width) {
        List<String> lines = new ArrayList<>(Wrapped.of(page.title(), width));
        lines.add("=".repeat(Math.min(width, widest(lines))));
        lines.addAll(Wrapped.of(page.under(), width));
        lines.addAll(new PlainText(width, 0).all(page.blocks()));
        return List.copyOf(lines);
    }

    /** Blocks with a blank line before each, so that none begins where another ends. */
    private List<String> all(List<Block> blocks) {
        List<String> lines = new ArrayList<>();
        for (Block block : blocks) {
            List<String> more = block.match(this);
            if (!more.isEmpty()) {
                lines.add("");
                lines.addAll(more);
            }
        }
        return lines;
    }

    @Override
    public List<String> words(Block.Words block) {
        return Wrapped.of(block.text(), width);
    }

    @Override
    public List<String> caution(Block.Caution block) {
        return Wrapped.hanging("! ", block.text(), width);
    }

    @Override
    public List<String> points(Block.Points block) {
        return block.texts().stream()
                .flatMap(text -> Wrapped.hanging("- ", text, width).stream())
                .toList();
    }

    @Override
    public List<String> table(Block.Table block) {
        List<String> lines = new ArrayList<>(Wrapped.of(block.caption(), width));
        lines.addAll(TextTable.of(block, width));
        return lines;
    }

    @Override
    public List<String> stated(Block.Stated block) {
        return Wrapped.of(block.lead() + " " + block.text(), width);
    }

    @Override
    public List<String> fold(Block.Fold block) {
        return part(Block.Part.of(block.title(), "", block.blocks()));
    }

    @Override
    public List<String> verbatim(Block.Verbatim block) {
        return Legible.lines(block.text());
    }

    @Override
    public List<String> part(Block.Part block) {
        String heading =
                block.aside().isEmpty()
                        ? block.title()
                        : block.title() + " (" + block.aside() + ")";
        List<String> lines = new ArrayList<>(Wrapped.of(heading, width));
        if (depth == 0) {
            lines.add("-".repeat(Math.min(width, widest(lines))));
        }
        List<String> within =
                new PlainText(width - INDENT, depth + 1)
                        .all(block.blocks()).stream()
                                .map(line -> line.isEmpty() ? line : " ".repeat(INDENT) + line)
                                .toList();
        boolean under = !within.isEmpty() && within.get(0).isEmpty();
        lines.addAll(under ? within.subList(1, within.size()) : within);
        return lines;
    }

    @Override
    public List<String> room(Block.Room block) {
        List<String> lines = new ArrayList<>(Wrapped.of(block.title(), width));
        for (int line = 0; line < block.lines(); line++) {
            lines.add("_".repeat(width));
        }
        return lines;
    }

    /** In words: what is seen there, and what it shows. */
    @Override
    public List<String> drawn(Block.Drawn block) {
        Figure figure = block.figure();
        List<String> lines = new ArrayList<>(Wrapped.of("Figure: " + figure.title(), width));
        lines.addAll(Wrapped.of(figure.description(), width));
        return lines;
    }

    private static int widest(List<String> lines) {
        return lines.stream().mapToInt(Legible::width).max().orElse(0);
    }
}
