/**
 * What a protocol or a session says, written down: the outline of a protocol and its paper form; a
 * session's report and its figures; the session as tables for other programs; a copy of it for
 * others.
 *
 * <p>Read {@link rigside.report.Page} first, which all writers are given, then {@link
 * rigside.report.Outline} and {@link rigside.report.SessionReport}; {@link
 * rigside.report.DataPackage} is where the tables begin. It may import {@code analysis}, {@code
 * session}, {@code protocol}, {@code measure} and {@code decide}; JSON and CSV by Jackson. It knows
 * no clock and no terminal.
 */
package rigside.report;
