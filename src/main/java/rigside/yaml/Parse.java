package rigside.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * From text to tree. The library's events are used rather than its nodes: they come with places
 * too, and duplicate keys, anchors, tags, depth and further documents can be refused where they
 * stand, all of them, before anything is resolved.
 */
final class Parse {
    /** Levels of lists and groups inside each other. */
    static final int DEEPEST = 20;

    private final Problems problems;
    private final Parser events;
    private Event last;
    private Optional<ScalarEvent> lastText = Optional.empty();

    private Parse(String text, Problems problems) {
        this.problems = problems;
        this.events = new ParserImpl(new StreamReader(text), new LoaderOptions());
    }

    /** The tree of the text's one document; empty when it cannot be read to its end. */
    static Optional<Tree> tree(String text, Problems problems) {
        Parse parse = new Parse(text, problems);
        try {
            return parse.document();
        } catch (TooDeep e) {
            return Optional.empty();
        } catch (RuntimeException e) {
            // The library reports syntax by several exceptions, a few of them not its own.
            new SyntaxWords(text, parse.lastText).note(e, problems);
            return Optional.empty();
        }
    }

    private Optional<Tree> document() {
        next();
        if (!(next() instanceof DocumentStartEvent)) {
            problems.note(1, 1, "the file is empty", "begin with the line 'format: 1'");
            return Optional.empty();
        }
        Tree tree = node(next(), 0, false);
        next();
        if (next() instanceof DocumentStartEvent) {
            note("a second document begins here", "keep one; delete this '---' line");
            return Optional.empty();
        }
        return Optional.of(tree);
    }

    private Event next() {
        last = events.getEvent();
        if (last instanceof ScalarEvent text) {
            lastText = Optional.of(text);
        }
        return last;
    }

    /** {@code isItem}: whether it is one item of a list. */
    private Tree node(Event event, int depth, boolean isItem) {
        int line = line(event);
        int column = column(event);
        if (depth > DEEPEST) {
            note("lists and groups are nested deeper than " + DEEPEST + " levels", "flatten them");
            throw new TooDeep();
        }
        if (event instanceof AliasEvent alias) {
            note(
                    Words.quoted("*" + alias.getAnchor()) + " refers to another part of the file",
                    "write that part out again; a text that begins with * goes in quotes");
            return new Tree.Broken(line, column);
        }
        boolean labelled = refuseLabels(event);
        Tree tree;
        if (event instanceof ScalarEvent scalar) {
            boolean plain = scalar.getScalarStyle() == DumperOptions.ScalarStyle.PLAIN;
            tree = new Tree.Scalar(scalar.getValue(), plain, line, column);
        } else if (event instanceof SequenceStartEvent) {
            tree = items(line, column, depth);
        } else {
            tree = mapping(line, column, depth, isItem);
        }
        return labelled ? new Tree.Broken(line, column) : tree;
    }

    private Tree items(int line, int column, int depth) {
        List<Tree> items = new ArrayList<>();
        for (Event event = next(); !(event instanceof SequenceEndEvent); event = next()) {
            items.add(node(event, depth + 1, true));
        }
        return new Tree.Items(items, line, column);
    }

    private Tree mapping(int line, int column, int depth, boolean isItem) {
        Map<Tree.Scalar, Tree> entries = new LinkedHashMap<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        boolean dashIsMissing = false;
        for (Event event = next(); !(event instanceof MappingEndEvent); event = next()) {
            Tree key = node(event, depth + 1, false);
            Tree value = node(next(), depth + 1, false);
            if (dashIsMissing) {
                continue;
            }
            if (!(key instanceof Tree.Scalar word)) {
                if (!(key instanceof Tree.Broken)) {
                    problems.note(
                            key.line(),
                            key.column(),
                            "a key must be a word, not " + key.words(),
                            "write 'key: value'");
                }
                continue;
            }
            Integer first = lines.putIfAbsent(word.text(), word.line());
            // An item that begins anew has lost its dash: what follows belongs to the next one.
            dashIsMissing =
                    isItem && first != null && word.text().equals(lines.keySet().iterator().next());
            if (first == null) {
                entries.put(word, value);
            } else if (dashIsMissing) {
                problems.note(
                        word.line(),
                        word.column(),
                        "the item that began on line "
                                + first
                                + " begins again with "
                                + Words.quoted(word.text()),
                        "write '- ' before it to begin a new item, or delete it");
            } else {
                problems.note(
                        word.line(),
                        word.column(),
                        "the key " + Words.quoted(word.text()) + " is given twice",
                        "the first is on line " + first + "; keep one of them");
            }
        }
        return new Tree.Mapping(entries, line, column);
    }

    /** Notes an anchor or a tag; true when there was one. */
    private boolean refuseLabels(Event event) {
        String anchor = ((NodeEvent) event).getAnchor();
        if (anchor != null) {
            note(
                    Words.quoted("&" + anchor) + " names a part of the file",
                    "delete it; a text that begins with & goes in quotes");
        }
        String tag = tag(event);
        if (tag != null) {
            note(
                    Words.quoted(tag.replace("tag:yaml.org,2002:", "!!")) + " names a type",
                    "delete it; a text that begins with ! goes in quotes");
        }
        return anchor != null || tag != null;
    }

    private static String tag(Event event) {
        if (event instanceof ScalarEvent scalar) {
            return scalar.getTag();
        }
        return event instanceof SequenceStartEvent sequence
                ? sequence.getTag()
                : ((MappingStartEvent) event).getTag();
    }

    private void note(String what, String help) {
        problems.note(line(last), column(last), what, help);
    }

    private static int line(Event event) {
        return event.getStartMark().getLine() + 1;
    }

    private static int column(Event event) {
        return event.getStartMark().getColumn() + 1;
    }

    /** Ends the reading of a file nested too deep; its problem is noted already. */
    private static final class TooDeep extends RuntimeException {
        private static final long serialVersionUID = 1;
    }
}
