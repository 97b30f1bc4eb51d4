/**
 * What a protocol file says: the model, the reader that makes it from text with all problems at
 * once, and how long a round takes at the bench.
 *
 * <p>Read {@link rigside.protocol.Protocol} first, then {@link rigside.protocol.ProtocolReader}. It
 * may import {@code measure} and {@code yaml}; it knows no file, clock or terminal.
 */
package rigside.protocol;
