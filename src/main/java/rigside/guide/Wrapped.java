package rigside.guide;

/** Text broken into lines at spaces. */
final class Wrapped {
    static final int WIDTH = 79;

    private Wrapped() {}

    /** The text, each of its lines after {@code indent} spaces. */
    static String text(String text, int indent) {
        StringBuilder lines = new StringBuilder();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            if (!line.isEmpty() && indent + line.length() + 1 + word.length() > WIDTH) {
                lines.append(" ".repeat(indent)).append(line).append('\n');
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        return lines.append(" ".repeat(indent)).append(line).append('\n').toString();
    }
}
