package rigside.decide;

/** The direction in which a change matters. */
public enum Matters {
    EITHER,
    INCREASE,
    DECREASE
}
