package rigside.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigside.protocol.Protocol;

/**
 * What to think over in a protocol that can be run: no errors, since there may be reasons for each.
 */
public final class ProtocolAdvice {
    private ProtocolAdvice() {}

    /**
     * The particle counter that is to be used.
     *
     * @param settlingSeconds how long its readings are left out after a switch of its tube; 0 or
     *     more
     * @param tellsSide whether its lines say which air they are of, so that it may settle before a
     *     window begins
     */
    public record Counter(double settlingSeconds, boolean tellsSide) {}

    /** The same without knowing the counter. */
    public static List<String> of(Protocol protocol) {
        return of(protocol, Optional.empty());
    }

    /** Each piece a sentence without its stop: what is so, what follows, what would be better. */
    public static List<String> of(Protocol protocol, Optional<Counter> counter) {
        List<String> all = new ArrayList<>();
        if (protocol.purpose() != Protocol.Purpose.INSTRUMENT_CHECK) {
            all.addAll(DesignAdvice.settling(protocol));
        }
        all.addAll(withoutPlaying(protocol, counter));
        return List.copyOf(all);
    }

    /** All but how often the plan can be expected to settle, which takes simulation. */
    public static List<String> withoutPlaying(Protocol protocol, Optional<Counter> counter) {
        if (protocol.purpose() == Protocol.Purpose.INSTRUMENT_CHECK) {
            return ProcedureAdvice.cautions(protocol);
        }
        List<String> all = new ArrayList<>(DesignAdvice.of(protocol));
        all.addAll(ProcedureAdvice.of(protocol));
        all.addAll(TubeAdvice.of(protocol, counter));
        return List.copyOf(all);
    }
}
