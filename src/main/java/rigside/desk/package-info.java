/**
 * The screens away from a session: home, the review of a session, the drafting of a protocol, and a
 * file watched beside an editor. Files are read here for what knows none.
 *
 * <p>Read {@link rigside.desk.Desk} first. May import {@code bench} and what it imports, {@code
 * archive}, {@code report}, {@code decide}, {@code yaml} for the problems of a file, and Lanterna.
 */
package rigside.desk;
