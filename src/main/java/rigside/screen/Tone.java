package rigside.screen;

/** How a piece of text stands out. Never the only sign of anything. */
enum Tone {
    PLAIN,
    /** Less important. */
    QUIET,
    STRONG,
    /** The strip at the top, and the selected line of a list. */
    INVERSE,
    /** Good news. */
    GOOD,
    /** To be heeded. */
    WARN,
    /** Big digits and letters. */
    BIG
}
