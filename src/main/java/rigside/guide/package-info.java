/**
 * What a protocol file or a rig file may say, told to people (pages) and to editors (a JSON
 * Schema). Read {@link rigside.guide.Pages} first. It is made from the elements that the readers
 * are held against, so it cannot tell anything else than what is read. May import protocol, rig,
 * measure and yaml.
 */
package rigside.guide;
