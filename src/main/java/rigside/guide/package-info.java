/**
 * What a protocol file or a rig file may say, told to people (pages) and to editors (a JSON
 * Schema). It is made from the elements that the readers are held against, so it cannot tell
 * anything else than what is read.
 *
 * <p>Read {@link rigside.guide.Pages} first. May import {@code protocol}, {@code rig}, {@code
 * measure} and {@code yaml}; JSON by Jackson.
 */
package rigside.guide;
