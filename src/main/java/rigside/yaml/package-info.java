/**
 * Text written by people (YAML, and JSON, which is YAML too) to typed values, with all problems
 * told at once and each at its place. The only package that knows the YAML library.
 *
 * <p>Read {@link rigside.yaml.Document} first, then {@link rigside.yaml.Fields}. It imports nothing
 * of ours.
 */
package rigside.yaml;
