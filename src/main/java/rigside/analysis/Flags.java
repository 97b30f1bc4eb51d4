package rigside.analysis;

import java.util.List;
import java.util.stream.Stream;

/** Everything in the values of a measure that is worth a second look. */
final class Flags {

    private Flags() {}

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
