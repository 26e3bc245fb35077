package stretchwright.workroom.store;

/**
 * One thing moved by a step.
 *
 * @param was version that stood before; 0 where there was none
 */
public record Change(long step, int part, String thing, long was, long now, Place wasAt, Place nowAt) {
    Change back() {
        return new Change(step, part, thing, now, was, nowAt, wasAt);
    }
}
