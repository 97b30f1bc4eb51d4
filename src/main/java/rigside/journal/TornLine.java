package rigside.journal;

/**
 * The last line, or the last lines written together, cut off while being written, as after a power
 * cut: nobody was told that it is captured.
 *
 * @param file the name of the file as the tester knows it
 * @param line the first line of it, from 1
 * @param offset where in the file it begins, in bytes
 * @param length how much of it is there, in bytes; at least 1
 */
public record TornLine(String file, int line, long offset, long length) {

    /** The tear in words. */
    @Override
    public String toString() {
        return told(file);
    }

    /** The same to be given away: the file without its folders. */
    public String withoutFolders() {
        return told(file.substring(file.replace('\\', '/').lastIndexOf('/') + 1));
    }

    private String told(String name) {
        return name
                + ":"
                + line
                + ": the last line was cut off while it was written ("
                + length
                + (length == 1 ? " byte" : " bytes")
                + "); everything before it is kept";
    }
}
