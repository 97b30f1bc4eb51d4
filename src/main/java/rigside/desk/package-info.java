/**
 * The screens away from a session: home, and the review of a session.
 *
 * <p>Read {@link rigside.desk.Desk} first. May import {@code bench} and what it imports, {@code
 * report}, {@code decide}, {@code yaml} for the problems of a file, and Lanterna.
 */
package rigside.desk;
