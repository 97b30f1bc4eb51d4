package rigside.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.regex.Pattern;

/** A file damaged as people damage it: word by word, sign by sign, line by line. */
final class MutatedWords {
    private static final Pattern EDGES = Pattern.compile("(?<=\\W)|(?=\\W)");

    private static final Pattern NUMBER = Pattern.compile("[0-9.]+");

    private static final List<String> SIGNS =
            List.of(
                    ":",
                    ": ",
                    "-",
                    "- ",
                    "\n",
                    "\n\n",
                    " ",
                    "  ",
                    "\t",
                    "'",
                    "\"",
                    "[",
                    "]",
                    "{",
                    "}",
                    ",",
                    "#",
                    " #",
                    "&a ",
                    "*a",
                    "!!int ",
                    "!!java.lang.Runtime ",
                    "!x ",
                    "|",
                    "|2-",
                    ">",
                    ">+9",
                    "?",
                    "? ",
                    "%",
                    "@",
                    "`",
                    "---\n",
                    "...\n",
                    "<<: ",
                    "null",
                    "~",
                    "yes",
                    "no",
                    "true",
                    "\\",
                    "\\x",
                    "\u0000",
                    "\u001B[2J",
                    "\uFEFF",
                    "\u00A0",
                    "\u2009",
                    "\u201C",
                    "\u2019",
                    "\u2013",
                    "\u2014",
                    "\u202E",
                    "\uDBFF\uDFFF",
                    "\u0301",
                    "kind: note");

    private static final List<String> NUMBERS =
            List.of(
                    "0",
                    "-0",
                    "-1",
                    "1e9",
                    "1e-9",
                    "1e999",
                    "9".repeat(200),
                    "0.".repeat(50),
                    "010",
                    "0x10",
                    "0b1",
                    "1_000",
                    "1,5",
                    "1 000",
                    ".5",
                    "5.",
                    "+5",
                    "--5",
                    ".inf",
                    "-.inf",
                    ".nan",
                    "NaN",
                    "Infinity",
                    "190:20:30",
                    "2026-11-28",
                    "\u0665",
                    "1e15",
                    "1000001",
                    "4294967296",
                    "2147483648",
                    "0.1e-300");

    private static final List<String> UNITS =
            List.of(
                    "s", "min", "h", "ms", "Pa", "kPa", "mbar", "inH2O", "mmH2O", "/cm3", "/m3",
                    "L/min", "L", "g", "degC", "%", "times", "to", "sec", "Hz");

    private MutatedWords() {}

    static String once(String text, SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0, 1 -> words(text, random);
            case 2 -> lines(text, random);
            default -> signs(text, random);
        };
    }

    private static String words(String text, SplittableRandom random) {
        List<String> words = new ArrayList<>(List.of(EDGES.split(text)));
        int at = wordNear(words, random.nextInt(words.size()));
        int other = wordNear(words, random.nextInt(words.size()));
        String word = words.get(at);
        switch (random.nextInt(9)) {
            case 0 -> words.set(at, words.get(other));
            case 1 -> words.add(at, word + " ");
            case 2 -> words.remove(at);
            case 3 -> {
                words.set(at, words.get(other));
                words.set(other, word);
            }
            case 4 -> words.set(at, word.toUpperCase(Locale.ROOT));
            case 5 -> words.set(at, pick(UNITS, random));
            case 6 -> words.set(at, quoted(word, random));
            case 7 -> words.set(at, misspelt(word, random));
            default -> words.set(numberNear(words, at), pick(NUMBERS, random));
        }
        return String.join("", words);
    }

    private static String quoted(String word, SplittableRandom random) {
        String quote = pick(List.of("'", "\"", "\u201C", "`"), random);
        return quote + word + (random.nextInt(4) == 0 ? "" : quote);
    }

    private static String misspelt(String word, SplittableRandom random) {
        int at = random.nextInt(word.length() + 1);
        String letter = Character.toString('a' + random.nextInt(26));
        return word.substring(0, at)
                + letter
                + word.substring(Math.min(word.length(), at + random.nextInt(2)));
    }

    /** Swaps, repeats, drops, joins or indents whole lines. */
    private static String lines(String text, SplittableRandom random) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        String line = lines.get(at);
        switch (random.nextInt(7)) {
            case 0 -> {
                lines.set(at, lines.get(other));
                lines.set(other, line);
            }
            case 1 -> lines.add(other, line);
            case 2 -> lines.remove(at);
            case 3 -> lines.set(at, " ".repeat(1 + random.nextInt(4)) + line);
            case 4 -> lines.set(at, "\t" + line.stripLeading());
            case 5 -> lines.set(at, line.substring(Math.min(line.length(), random.nextInt(5))));
            default -> {
                lines.set(at, line + lines.get(other));
            }
        }
        return String.join("\n", lines);
    }

    private static String signs(String text, SplittableRandom random) {
        int from = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), from + (random.nextBoolean() ? 0 : random.nextInt(6)));
        return text.substring(0, from) + pick(SIGNS, random) + text.substring(to);
    }

    /** The next word from a place on, going round; the place itself where there is none. */
    private static int wordNear(List<String> words, int from) {
        return near(words, from, Pattern.compile("\\w.*"));
    }

    private static int numberNear(List<String> words, int from) {
        return near(words, from, NUMBER);
    }

    private static int near(List<String> words, int from, Pattern wanted) {
        for (int i = 0; i < words.size(); i++) {
            int at = (from + i) % words.size();
            if (wanted.matcher(words.get(at)).matches()) {
                return at;
            }
        }
        return from;
    }

    static String pick(List<String> of, SplittableRandom random) {
        return of.get(random.nextInt(of.size()));
    }
}
