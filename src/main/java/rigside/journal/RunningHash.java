package rigside.journal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The running hash over the lines of a journal: SHA-256 (FIPS 180-4) over the hash before and the
 * line's own bytes, without its end and without the field that holds the hash. So a line that was
 * changed, taken out or moved later does not fit. It is no signature: whoever can write the whole
 * file can write the hashes anew; and of lines missing at the end it says nothing.
 *
 * @param hex 64 digits
 */
record RunningHash(String hex) {
    /** The last field of a line that carries its hash. */
    static final String FIELD = "hash";

    /** Of nothing: before the first line of a new journal. */
    static final RunningHash START = of(new byte[0], 0);

    private static final int DIGITS = 64;
    private static final String BEGINS = ",\"" + FIELD + "\":\"";
    private static final String ENDS = "\"}";
    private static final int LENGTH = BEGINS.length() + DIGITS + ENDS.length();

    /** Of the lines of a journal that were written without: all their bytes. */
    static RunningHash of(byte[] bytes, int length) {
        MessageDigest digest = sha256();
        digest.update(bytes, 0, length);
        return new RunningHash(HexFormat.of().formatHex(digest.digest()));
    }

    /** After one more line, which does not carry its hash yet. */
    RunningHash after(String line) {
        byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
        return after(bytes, 0, bytes.length - 1);
    }

    /** A line, which is one JSON object, with this hash as its last field. */
    String putOn(String line) {
        return line.substring(0, line.length() - 1) + BEGINS + hex + ENDS;
    }

    /** After a line that carries its hash; empty where it ends in none. */
    Optional<RunningHash> afterCarrying(byte[] bytes, int from, int end) {
        int field = end - LENGTH;
        boolean carries =
                field > from
                        && stands(BEGINS, bytes, field)
                        && stands(ENDS, bytes, end - ENDS.length());
        return carries ? Optional.of(after(bytes, from, field)) : Optional.empty();
    }

    /** Whether a line that carries a hash carries this one. */
    boolean isOn(byte[] bytes, int end) {
        return stands(hex, bytes, end - ENDS.length() - DIGITS);
    }

    /** The bytes and the brace that closes the object. */
    private RunningHash after(byte[] bytes, int from, int brace) {
        MessageDigest digest = sha256();
        digest.update(HexFormat.of().parseHex(hex));
        digest.update(bytes, from, brace - from);
        digest.update((byte) '}');
        return new RunningHash(HexFormat.of().formatHex(digest.digest()));
    }

    private static boolean stands(String text, byte[] bytes, int at) {
        for (int i = 0; i < text.length(); i++) {
            if (bytes[at + i] != text.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            // Every Java has it: so says the documentation of MessageDigest.
            throw new IllegalStateException(impossible);
        }
    }
}
