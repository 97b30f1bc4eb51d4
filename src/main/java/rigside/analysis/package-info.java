/**
 * From a session to what it says: values per donning, summaries per condition, comparisons with
 * their intervals, verdicts and forecasts, and the plain sentences that go with them. Pure: the
 * same session gives the same analysis, to the last digit.
 *
 * <p>Read {@link rigside.analysis.Analysis} first, then {@link rigside.analysis.Comparison} and
 * {@link rigside.analysis.Shown}, the part of an analysis that concealment lets out. May import
 * {@code session}, {@code protocol}, {@code measure} and {@code decide}.
 */
package rigside.analysis;
