package rigside.archive;

/**
 * Why sessions cannot be set beside each other.
 *
 * @param what what is wrong, in one sentence without its stop
 * @param help what to do; may be empty
 */
public record Refusal(String what, String help) {}
