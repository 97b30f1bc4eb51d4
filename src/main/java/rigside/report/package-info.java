/**
 * What a protocol or a session says, written down for reading and printing: the outline of a
 * protocol and its paper form, as text and as one HTML page each; a session's report and its
 * figures.
 *
 * <p>Read {@link rigside.report.Outline} first, then {@link rigside.report.Page}, which both
 * writers are given. It may import {@code analysis}, {@code session}, {@code protocol}, {@code
 * measure} and {@code decide}; it knows no file, clock or terminal.
 */
package rigside.report;
