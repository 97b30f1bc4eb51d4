package rigside.report;

import java.util.Arrays;
import java.util.List;

/** One piece of a page. Texts are raw: the writers make them harmless. */
public sealed interface Block {
    <R> R match(Cases<R> cases);

    /** One case for each kind of block. */
    interface Cases<R> {
        R words(Words block);

        R caution(Caution block);

        R points(Points block);

        R table(Table block);

        R part(Part block);

        R room(Room block);

        R drawn(Drawn block);

        R stated(Stated block);

        R fold(Fold block);

        R verbatim(Verbatim block);
    }

    /** A paragraph. */
    record Words(String text) implements Block {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.words(this);
        }
    }

    /** A paragraph nobody may miss. */
    record Caution(String text) implements Block {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.caution(this);
        }
    }

    /** A list; its points have no order that matters. */
    record Points(List<String> texts) implements Block {
        public Points {
            texts = List.copyOf(texts);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.points(this);
        }
    }

    /**
     * Rows and columns.
     *
     * @param caption what it holds, above it; its first column then names its rows. Empty where the
     *     heading above says it
     * @param heads above each column; empty for a table without heads, whose first column then
     *     names what the others hold
     * @param rows of equal length, that of the heads if there are any; at least one
     */
    record Table(String caption, List<Head> heads, List<List<Cell>> rows) implements Block {
        /** Without a caption. */
        Table(List<Head> heads, List<List<Cell>> rows) {
            this("", heads, rows);
        }

        public Table {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
            int columns = rows.get(0).size();
            if (rows.stream().anyMatch(row -> row.size() != columns)
                    || (!heads.isEmpty() && heads.size() != columns)) {
                throw new IllegalArgumentException("rows of a table must be equally long");
            }
        }

        /** Two columns of texts: what it is, and what there is to say of it. */
        static Table pairs(List<List<String>> rows) {
            return pairs("", rows);
        }

        /** The same with a caption. */
        static Table pairs(String caption, List<List<String>> rows) {
            return new Table(caption, List.of(), rows.stream().map(Cell::texts).toList());
        }

        /** Whether a column holds what names the rows. */
        boolean names(int column) {
            return column == 0 && (heads.isEmpty() || !caption.isEmpty());
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.table(this);
        }
    }

    /**
     * What stands above a column.
     *
     * @param figures whether it holds numbers, which end below each other
     */
    record Head(String text, boolean figures) {
        static List<Head> of(String... texts) {
            return Arrays.stream(texts).map(text -> new Head(text, false)).toList();
        }

        static Head figures(String text) {
            return new Head(text, true);
        }
    }

    /**
     * A heading with what belongs to it.
     *
     * @param aside said beside the heading; may be empty
     * @param start where it starts
     */
    record Part(String title, String aside, Start start, List<Block> blocks) implements Block {
        public Part {
            blocks = List.copyOf(blocks);
        }

        static Part of(String title, String aside, List<Block> blocks) {
            return new Part(title, aside, Start.BELOW, blocks);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.part(this);
        }
    }

    /** Where a part starts when it is printed. */
    enum Start {
        BELOW,
        NEW_PAGE
    }

    /**
     * Lines to write on by hand.
     *
     * @param title what for
     * @param lines how many
     */
    record Room(String title, int lines) implements Block {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.room(this);
        }
    }

    /** A picture of numbers. */
    record Drawn(Figure figure) implements Block {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.drawn(this);
        }
    }

    /**
     * A paragraph that begins with what matters most in it.
     *
     * @param lead in strong letters
     */
    record Stated(String lead, String text) implements Block {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.stated(this);
        }
    }

    /**
     * Something long that not everybody wants to read: opened on a screen, below its title
     * elsewhere.
     */
    record Fold(String title, List<Block> blocks) implements Block {
        public Fold {
            blocks = List.copyOf(blocks);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.fold(this);
        }
    }

    /** Lines as they stand in a file, spaces and all. */
    record Verbatim(String text) implements Block {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.verbatim(this);
        }
    }
}
