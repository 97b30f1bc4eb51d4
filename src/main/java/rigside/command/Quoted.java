package rigside.command;

import java.util.List;
import java.util.stream.Collectors;

/** Words of a command line as a shell takes them. */
final class Quoted {
    private Quoted() {}

    static String words(List<String> words) {
        return words.stream().map(Quoted::word).collect(Collectors.joining(" "));
    }

    /** In single quotes where anything in it could mean something to a shell. */
    static String word(Object word) {
        String text = String.valueOf(word);
        return text.matches("[A-Za-z0-9_./:=-]+") ? text : "'" + text.replace("'", "'\\''") + "'";
    }
}
