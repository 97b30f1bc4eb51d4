package rigside.journal;

/**
 * What the running hash over a journal's lines came to: noted on paper, it tells later whether any
 * of these lines was changed.
 *
 * @param from the first line that carries a hash, from 1; it takes in all bytes before it
 * @param hex the hash that the last line carries, 64 hexadecimal digits
 */
public record Fingerprint(int from, String hex) {
    RunningHash hash() {
        return new RunningHash(hex);
    }
}
