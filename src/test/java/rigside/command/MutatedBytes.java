package rigside.command;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** A file damaged as disks, editors and transfers damage it: byte by byte. */
final class MutatedBytes {
    /** What is no UTF-8, or is and should not be there. */
    private static final List<byte[]> STRANGERS =
            List.of(
                    bytes(0),
                    bytes(0x0D),
                    bytes(0x0D, 0x0A),
                    bytes(0x1B, '[', '2', 'J'),
                    bytes(0xFF),
                    bytes(0xFE, 0xFF),
                    bytes(0xC0, 0x80),
                    bytes(0xE2, 0x82),
                    bytes(0xED, 0xA0, 0x80),
                    bytes(0xF4, 0x90, 0x80, 0x80),
                    bytes(0xEF, 0xBB, 0xBF),
                    bytes(0xE9),
                    bytes(0x93, 0x94),
                    bytes(0xC2, 0x85),
                    bytes(0xE2, 0x80, 0xA8));

    private MutatedBytes() {}

    /**
     * One more damage.
     *
     * @param other of which a part may be spliced in
     */
    static byte[] once(byte[] file, byte[] other, SplittableRandom random) {
        int at = random.nextInt(file.length + 1);
        int some = random.nextInt(1 + Math.min(200, file.length - at));
        return switch (random.nextInt(9)) {
            case 0 -> flipped(file, random);
            case 1 -> joined(file, at, bytes(random.nextInt(256)), at);
            case 2 -> joined(file, at, new byte[0], at + some);
            case 3 -> joined(file, at, new byte[0], Math.min(file.length, at + 1));
            case 4 -> joined(file, at, new byte[0], file.length);
            case 5 -> joined(file, at, part(other, random), random.nextBoolean() ? at : at + some);
            case 6 -> joined(file, at, STRANGERS.get(random.nextInt(STRANGERS.size())), at);
            case 7 -> joined(file, at, part(file, random), at);
            default -> lineEnds(file, random);
        };
    }

    private static byte[] flipped(byte[] file, SplittableRandom random) {
        byte[] changed = file.clone();
        if (changed.length > 0) {
            changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return changed;
    }

    private static byte[] part(byte[] of, SplittableRandom random) {
        int from = random.nextInt(of.length + 1);
        int to = Math.min(of.length, from + random.nextInt(400));
        return Arrays.copyOfRange(of, from, to);
    }

    /** The file until {@code from}, the middle, and the file from {@code to} on. */
    private static byte[] joined(byte[] file, int from, byte[] middle, int to) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(file, 0, from);
        out.writeBytes(middle);
        out.write(file, to, file.length - to);
        return out.toByteArray();
    }

    private static byte[] lineEnds(byte[] file, SplittableRandom random) {
        String end = random.nextBoolean() ? "\r\n" : "\r";
        // Each byte one character, so that what is no UTF-8 stays as it is.
        return new String(file, StandardCharsets.ISO_8859_1)
                .replace("\n", end)
                .getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] bytes(int... values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }
}
