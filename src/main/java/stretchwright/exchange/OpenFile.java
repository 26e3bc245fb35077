package stretchwright.exchange;

/**
 * A finished file, not yet written.
 *
 * @param name file name, such as "pattern.dxf"
 * @param kind what it is for people
 * @param content its bytes, text or not; whoever gets them may keep them
 */
@SuppressWarnings("ArrayRecordComponent") // never compared: it is handed on and written
public record OpenFile(String name, String kind, byte[] content) {}
