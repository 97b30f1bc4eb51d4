package rigside.yaml;

import java.util.List;
import java.util.Map;

/** A file as parsed, every part with its place (line and column from 1). */
sealed interface Tree {
    int line();

    int column();

    /** What it is, in words that fit "must be text, not ...". */
    String words();

    /**
     * A single text.
     *
     * @param plain whether it stands without quotes
     */
    record Scalar(String text, boolean plain, int line, int column) implements Tree {
        /** Whether nothing was written, or one of YAML's two words for nothing. */
        boolean isNothing() {
            return plain && (text.isEmpty() || text.equals("~") || text.equals("null"));
        }

        @Override
        public String words() {
            return isNothing() ? "empty" : Words.quoted(text);
        }
    }

    /** Items in order. */
    record Items(List<Tree> items, int line, int column) implements Tree {
        @Override
        public String words() {
            return "a list";
        }
    }

    /** Keys with their values, in order, each key once. */
    record Mapping(Map<Scalar, Tree> entries, int line, int column) implements Tree {
        @Override
        public String words() {
            return "a group of 'key: value' lines";
        }
    }

    /** A part whose problem is noted already, so that no second one is made of it. */
    record Broken(int line, int column) implements Tree {
        @Override
        public String words() {
            return "unreadable";
        }
    }
}
