package stretchwright.workroom.store;

/**
 * One wearer, cloth, boot, style, make or note, as it stands now.
 *
 * @param now number of the version that stands
 * @param changed when that became so, in milliseconds since 1970, never before what was stored earlier
 */
public record Thing(String id, Kind kind, String name, long now, Place place, Links links, long changed) {}
