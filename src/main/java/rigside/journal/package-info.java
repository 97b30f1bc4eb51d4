/**
 * A session on disk: events appended line by line and synced, and read back. The written form has a
 * version of its own and words chosen for it, so that any later build can read it.
 *
 * <p>Read {@link rigside.journal.Journal} first, then {@link rigside.journal.JournalReader}; {@code
 * EventWriter} and {@code EventReader} are the written form. May import {@code session}, {@code
 * protocol} and {@code measure}; JSON by Jackson.
 */
package rigside.journal;
