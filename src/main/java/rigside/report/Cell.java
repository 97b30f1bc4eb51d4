package rigside.report;

import java.util.List;

/** One place in a table. */
public sealed interface Cell {
    <R> R match(Cases<R> cases);

    /** One case for each kind of cell. */
    interface Cases<R> {
        R text(Text cell);

        R blank(Blank cell);

        R ticks(Ticks cell);
    }

    static Cell of(String text) {
        return new Text(text);
    }

    static List<Cell> texts(List<String> texts) {
        return texts.stream().map(Cell::of).toList();
    }

    /** Words to read. */
    record Text(String text) implements Cell {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.text(this);
        }
    }

    /**
     * Room to write by hand.
     *
     * @param characters about how many have to fit
     * @param unit printed after it; may be empty
     */
    record Blank(int characters, String unit) implements Cell {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.blank(this);
        }
    }

    /** Words to tick. */
    record Ticks(List<String> texts) implements Cell {
        public Ticks {
            texts = List.copyOf(texts);
        }

        static Ticks of(String... texts) {
            return new Ticks(List.of(texts));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.ticks(this);
        }
    }
}
