package stretchwright.web.draft;

import java.util.Optional;
import java.util.OptionalInt;
import stretchwright.make.Session;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.Kept;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Version;

/**
 * Where a make comes from, and where it can go.
 *
 * @param earlier what undoing leads back to
 * @param later what was undone last
 * @param keptAs its number among those that its maker kept; empty where it is not kept yet
 * @param next the number that it would be kept under
 * @param before the version that was kept last, where another one stands
 */
record Past(
        Optional<Version> earlier,
        Optional<Version> later,
        OptionalInt keptAs,
        int next,
        Optional<Version> before,
        int beforeNumber) {
    private static final Past NONE =
            new Past(Optional.empty(), Optional.empty(), OptionalInt.of(1), 2, Optional.empty(), 1);

    static Past of(Bench bench, Opened make) {
        if (make.demo()) {
            return NONE;
        }
        Store store = bench.room().store();
        Kept kept = Kept.of(store, make.stored().thing());
        Optional<Version> last = Optional.of(kept.last()).filter(v -> v.number() != make.seen());
        return new Past(
                store.earlier(make.stored().thing()),
                store.later(make.stored().thing()),
                kept.number(make.seen()),
                kept.next(),
                last,
                last.map(v -> kept.number(v.number()).orElse(1)).orElse(1));
    }

    /** The pattern before, to be drawn in tacking; empty where it is the same or cannot be drafted. */
    Optional<Session> tacking(Bench bench, Opened make) {
        try {
            return before.filter(v -> !v.text().equals(make.text()))
                    .map(v -> bench.tried(make, v.text()).session())
                    .filter(s ->
                            !s.pattern().legs().equals(make.session().pattern().legs()));
        } catch (stretchwright.ground.BadInput e) {
            return Optional.empty();
        }
    }
}
