/**
 * Pure statistics on plain numbers: critical values that stay valid at every look, intervals,
 * verdicts, forecasts, planning. Read {@link rigside.decide.Sequential} first; this package imports
 * nothing of the program, reads no clock and no file, and draws random numbers only from a source
 * passed in.
 */
package rigside.decide;
