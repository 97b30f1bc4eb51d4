package rigside.analysis;

import java.util.List;
import java.util.stream.Stream;

/** Everything in the values of a measure that is worth a second look. */
final class Flags {

    private Flags() {}

    /** Of one condition that is compared with nothing, so that nothing would say otherwise. */
    static List<Flag> ofStudy(Watched watched) {
        WhatIfs none =
                new WhatIfs(
                        List.of(),
                        (condition, left) -> {
                            throw new IllegalStateException("nothing is compared");
                        });
        return Stream.of(new FarValues(watched, none).all(), new Drifts(watched).all())
                .flatMap(List::stream)
                .toList();
    }

    static List<Flag> of(Watched watched, WhatIfs whatIfs) {
        List<Flag> far = new FarValues(watched, whatIfs).all();
        return Stream.of(
                        far,
                        new Drifts(watched).all(),
                        new Spreads(watched, far).all(),
                        new Orders(watched).all())
                .flatMap(List::stream)
                .toList();
    }
}
