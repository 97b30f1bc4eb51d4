/**
 * The command line: one class a command, which parses, wires and prints. No logic here.
 *
 * <p>Read {@link rigside.command.Rigside} first. May import every other package, and picocli.
 */
package rigside.command;
