package rigside.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** Follows the running hash while the lines of a journal are read one after the other. */
final class HashTrail {
    /** From this format on every line carries its hash; before, none or those appended later. */
    private static final int CARRIED_FROM = 2;

    private static final String CHANGED =
            "the line was changed, moved or put in after it was written, or one before it was"
                    + " (its hash does not fit)";

    private final byte[] bytes;
    private int format;
    private Optional<Fingerprint> last = Optional.empty();

    /**
     * @param bytes the whole journal
     */
    HashTrail(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The format that the first line names. */
    void isOf(int named) {
        format = named;
    }

    /** What the lines so far come to; empty while none carried a hash. */
    Optional<Fingerprint> last() {
        return last;
    }

    /**
     * Takes the next line.
     *
     * @param line its number, from 1
     * @param object what it holds
     * @param from where its bytes begin
     * @param end where they end
     * @throws Unreadable if it carries a hash that does not fit, or none where it must
     */
    void take(int line, ObjectNode object, int from, int end) {
        if (object.has(RunningHash.FIELD)) {
            RunningHash before =
                    last.map(Fingerprint::hash).orElseGet(() -> RunningHash.of(bytes, from));
            RunningHash now =
                    before.afterCarrying(bytes, from, end)
                            .filter(hash -> hash.isOn(bytes, end))
                            .orElseThrow(() -> new Unreadable(CHANGED));
            last =
                    Optional.of(
                            new Fingerprint(last.map(Fingerprint::from).orElse(line), now.hex()));
        } else if (last.isPresent() || format >= CARRIED_FROM) {
            throw new Unreadable(
                    "the line carries no hash, though every line from "
                            + last.map(Fingerprint::from).orElse(1)
                            + " on must");
        }
    }
}
