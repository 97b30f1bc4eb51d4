package rigside.analysis;

import java.util.List;
import java.util.stream.Stream;

/** Everything in the values of a measure that is worth a second look. */
final class Flags {

    private Flags() {}

    static List<Flag> of(Worn worn, WhatIfs whatIfs) {
        List<Flag> far = new FarValues(worn, whatIfs).all();
        return Stream.of(
                        far,
                        new Drifts(worn).all(),
                        new Spreads(worn, far).all(),
                        new Orders(worn).all())
                .flatMap(List::stream)
                .toList();
    }
}
