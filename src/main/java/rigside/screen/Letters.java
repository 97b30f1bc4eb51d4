package rigside.screen;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The shapes of big digits and letters: five rows of dots each. */
final class Letters {
    private Letters() {}

    static final int ROWS = 5;

    private static final String DIGITS =
            """
            0:xxx x.x x.x x.x xxx
            1:.x. xx. .x. .x. xxx
            2:xxx ..x xxx x.. xxx
            3:xxx ..x xxx ..x xxx
            4:x.x x.x xxx ..x ..x
            5:xxx x.. xxx ..x xxx
            6:xxx x.. xxx x.x xxx
            7:xxx ..x ..x ..x ..x
            8:xxx x.x xxx x.x xxx
            9:xxx x.x xxx ..x xxx
            .:. . . . x
            ,:.. .. .. .x x.
            ::. x . x .
            -:... ... xxx ... ...
            +:... .x. xxx .x. ...
            >:x.. .x. ..x .x. x..
            %:x..x ...x .xx. x... x..x
            /:..x ..x .x. x.. x..
            ':x x . . .
            ?:xxx ..x .xx ... .x.
            !:x x x . x
            =:... xxx ... xxx ...
            (:.x x. x. x. .x
            ):x. .x .x .x x.
            [:xx x. x. x. xx
            ]:xx .x .x .x xx
            &:.x. x.x .x. x.x .xx
            """;

    private static final String CAPITALS =
            """
            A:xxx x.x xxx x.x x.x
            B:xx. x.x xx. x.x xx.
            C:xxx x.. x.. x.. xxx
            D:xx. x.x x.x x.x xx.
            E:xxx x.. xx. x.. xxx
            F:xxx x.. xx. x.. x..
            G:xxx x.. x.x x.x xxx
            H:x.x x.x xxx x.x x.x
            I:x x x x x
            J:..x ..x ..x x.x xxx
            K:x.x x.x xx. x.x x.x
            L:x.. x.. x.. x.. xxx
            M:x...x xx.xx x.x.x x...x x...x
            N:x..x xx.x x.xx x..x x..x
            O:xxx x.x x.x x.x xxx
            P:xxx x.x xxx x.. x..
            Q:xxx x.x x.x xxx ..x
            R:xxx x.x xx. x.x x.x
            S:xxx x.. xxx ..x xxx
            T:xxx .x. .x. .x. .x.
            U:x.x x.x x.x x.x xxx
            V:x.x x.x x.x x.x .x.
            W:x...x x...x x.x.x xx.xx x...x
            X:x.x x.x .x. x.x x.x
            Y:x.x x.x .x. .x. .x.
            Z:xxx ..x .x. x.. xxx
            """;

    private static final Map<Character, List<String>> SHAPES = shapes();

    /**
     * The rows of dots of one character, 'x' for a dot; empty when it has no shape. Letters with
     * accents are drawn without.
     */
    static Optional<List<String>> shape(char character) {
        String plain = Clean.ascii(String.valueOf(character)).toUpperCase(Locale.ROOT);
        boolean lost = plain.length() != 1 || (plain.equals("?") && character != '?');
        return lost ? Optional.empty() : Optional.ofNullable(SHAPES.get(plain.charAt(0)));
    }

    private static Map<Character, List<String>> shapes() {
        Map<Character, List<String>> shapes = new HashMap<>();
        (DIGITS + CAPITALS)
                .lines()
                .forEach(
                        line ->
                                shapes.put(
                                        line.charAt(0), List.of(line.substring(2).split(" ", -1))));
        shapes.put(' ', List.of("..", "..", "..", "..", ".."));
        return Map.copyOf(shapes);
    }
}
