package rigside.analysis;

import java.util.List;
import java.util.Optional;
import rigside.decide.Conclusion;

/**
 * What the values of one comparison say when they are taken in another way. A verdict needs the
 * first three to agree; the last tells what it cannot do without.
 *
 * @param halved with what the counter only bounded at half its penetration; empty where nothing is
 *     bounded
 * @param openOnBothSides whether each of the two conditions has a value of which the counter
 *     resolved nothing, so that their ratio is open
 * @param unchanged with what was struck out or amended after a look as it was then: all of it, and
 *     each piece
 * @param restsOn what it would not say the same without; looked for only where it is settled
 */
record Otherwise(
        Optional<Conclusion> halved,
        boolean openOnBothSides,
        List<Way> unchanged,
        RestsOn restsOn) {

    Otherwise {
        unchanged = List.copyOf(unchanged);
    }

    /**
     * What the session leads to when taken in another way.
     *
     * @param evidence that way
     */
    record Way(Evidence evidence, Conclusion conclusion) {}
}
