package rigside.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CounterpartTest {

    /**
     * Measures as id, title, kind, unit, r for ratio or d for difference; the protocol's first one
     * is wanted. The rule is our own, see {@link Counterpart}.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            the same id                  | seal Fit fit-factor 1 r   | seal Fit fit-factor 1 r                                | seal
            another id and title         | seal Fit fit-factor 1 r   | ff Factor fit-factor 1 r                               | ff
            another unit                 | p Peak pressure-trace Pa d | p Peak pressure-trace mbar d                          |
            another scale                | p Peak pressure-trace Pa d | p Peak pressure-trace Pa r                            |
            another kind of the same id  | p Peak pressure-trace Pa d | p Peak typed-number Pa d                              |
            two there, one by its id     | p Peak pressure-trace Pa d | p Other pressure-trace Pa d; q Peak pressure-trace Pa d | p
            two there, one by its title  | p Peak pressure-trace Pa d | a Other pressure-trace Pa d; b PEAK pressure-trace Pa d | b
            two there, neither named     | p Peak pressure-trace Pa d | a Sit pressure-trace Pa d; b Step pressure-trace Pa d |
            two here, one there          | a Sit pressure-trace Pa d; b Step pressure-trace Pa d | p Peak pressure-trace Pa d |
            a typed number of its title  | number Mass typed-number g d | m mass typed-number g d                             | m
            a typed number of its id     | number Mass typed-number g d | number Dust typed-number g d                        |
            a calculated one of another  | c Mass calculated g d     | c Dust calculated g d                                  |
            nothing measured             | seal Fit fit-factor 1 r   | x Time timed-inhalation s r                            |
            """)
    void aMeasureIsFoundByWhatItIs(String why, String protocol, String session, String found) {
        List<Archived.Measured> own = measures(protocol);
        assertEquals(
                Optional.ofNullable(found),
                new Counterpart(own.get(0), own)
                        .in(measuring(measures(session)))
                        .map(Archived.Measured::id));
    }

    private static List<Archived.Measured> measures(String rows) {
        return Stream.of(rows.split("; ", -1)).map(CounterpartTest::measure).toList();
    }

    private static Archived.Measured measure(String row) {
        String[] words = row.split(" ", -1);
        return new Archived.Measured(
                words[0], words[1], words[2], words[3], words[4].equals("r"), Optional.empty());
    }

    private static Archived measuring(List<Archived.Measured> measures) {
        Archived bare = SomeSession.in(Path.of("s")).archived();
        return new Archived(
                bare.folder(),
                bare.journal(),
                bare.begun(),
                bare.last(),
                bare.closed(),
                bare.simulated(),
                bare.paper(),
                bare.protocol(),
                bare.facts(),
                bare.conditions(),
                measures,
                bare.completeRounds(),
                bare.findings(),
                bare.damage());
    }
}
