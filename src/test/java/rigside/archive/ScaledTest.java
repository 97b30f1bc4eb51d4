package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ScaledTest {
    private static final Scaled RATIO = new Scaled(true, "s");
    private static final Scaled DIFFERENCE = new Scaled(false, "Pa");

    @Test
    void changesAreReadOnTheirOwnScale() {
        assertEquals("1.25 times", RATIO.change(Math.log(1.25)));
        assertEquals("12.5 Pa more", DIFFERENCE.change(12.5));
        assertEquals("3.00 Pa less", DIFFERENCE.change(-3));
        assertEquals("no difference", DIFFERENCE.change(0));
        assertEquals("-3.00 to 12.0 Pa", DIFFERENCE.changes(-3, 12));
        assertEquals("6.10 s", RATIO.value(Math.log(6.1)));
    }

    /** A limit beside no change must not be taken for it. */
    @Test
    void limitsAreToldFromNoChange() {
        assertEquals("0.8552 to 0.9996", RATIO.changes(Math.log(0.8552), Math.log(0.9996)));
        assertEquals("0.855 to 1.10", RATIO.changes(Math.log(0.8552), Math.log(1.1)));
    }

    @Test
    void limitsFarOutSayNoMoreThanThat() {
        assertEquals("below 0.001 to above 1000", RATIO.changes(-900, 900));
        assertEquals("0.500 to above 1000", RATIO.changes(Math.log(0.5), 900));
    }
}
