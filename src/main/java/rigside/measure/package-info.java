/**
 * What the bench's readings mean: quantities with units, fit factors from particle concentrations,
 * breathing resistance from timed inhalations and mask pressures. Pure functions on plain numbers,
 * SI inside.
 *
 * <p>Read first: {@link rigside.measure.Penetration}, the interval every fit factor is carried as.
 *
 * <p>May import nothing of ours.
 */
package rigside.measure;
