/**
 * All sessions together: what each one comes to, kept in an index that can always be made anew from
 * the journals; found, chosen and searched. It changes no journal.
 *
 * <p>Read {@link rigside.archive.Archived} first, then {@link rigside.archive.Archive}. May import
 * {@code journal}, {@code analysis}, {@code session}, {@code protocol}, {@code measure} and {@code
 * decide}; JSON by Jackson.
 */
package rigside.archive;
