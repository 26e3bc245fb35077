package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.BadInput;

/** Any sequence of edits, undos and redos ends where a plain list of snapshots says. */
@Tag("slow")
class UndoModelTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";
    private static final int SEQUENCES = 5;
    private static final int OPERATIONS = 20;
    private static final int NAMES = 12;

    /** What one thing is; a snapshot has those that are here or in the bin. */
    private record Is(String name, String text, Place place) {}

    @ParameterizedTest
    @MethodSource(ALL)
    void isAlwaysWhereTheModelIs(Address address) {
        try (Database database = Database.open(address)) {
            for (int i = 0; i < SEQUENCES; i++) {
                long seed = 4711 + i;
                Kind kind = Kind.values()[i % (Kind.values().length - 1)];
                new Sequence(new Store(database, Clock.systemUTC()), kind, new Random(seed), "seed " + seed).run();
            }
            database.mustBeSound();
        }
    }

    private static final class Sequence {
        private final Store store;
        private final Kind kind;
        private final Random random;
        private final String told;
        private final Deque<Map<String, Is>> before = new ArrayDeque<>();
        private final Deque<Map<String, Is>> after = new ArrayDeque<>();
        private Map<String, Is> now;

        Sequence(Store store, Kind kind, Random random, String told) {
            this.store = store;
            this.kind = kind;
            this.random = random;
            this.told = told;
            this.now = seen();
        }

        /** What the store has. */
        private Map<String, Is> seen() {
            Map<String, Is> out = new TreeMap<>();
            for (Place place : List.of(Place.HERE, Place.BIN)) {
                for (Thing t : store.list(kind, place, "", 0, 1000)) {
                    Version version = store.now(t).orElseThrow();
                    assertThat(version.name()).as(told).isEqualTo(t.name());
                    out.put(t.id(), new Is(t.name(), version.text(), place));
                }
            }
            return out;
        }

        void run() {
            for (int i = 0; i < OPERATIONS; i++) {
                String what = once();
                assertThat(seen()).as(told + ", operation " + i + ": " + what).isEqualTo(now);
            }
            while (!before.isEmpty()) {
                back();
                assertThat(seen()).as(told + ", undone at the end").isEqualTo(now);
            }
            while (!after.isEmpty()) {
                forth();
                assertThat(seen()).as(told + ", done again at the end").isEqualTo(now);
            }
        }

        private String once() {
            int what = random.nextInt(12);
            if (what < 4) {
                return edits(1);
            }
            if (what < 6) {
                return edits(2 + random.nextInt(3));
            }
            if (what < 8) {
                return moved(Place.HERE, Place.BIN);
            }
            if (what == 8) {
                return moved(Place.BIN, Place.HERE);
            }
            return what < 11 ? back() : forth();
        }

        /** New ones and changed ones in one step; the names are few, so that some are taken. */
        private String edits(int count) {
            List<String> ids = new ArrayList<>(ids(Place.HERE));
            List<Edit> edits = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                String name = told + " " + random.nextInt(NAMES);
                String text = Long.toString(random.nextLong());
                if (ids.isEmpty() || random.nextInt(3) == 0) {
                    edits.add(Edit.fresh(kind, name, text, Links.NONE));
                } else {
                    Thing seen =
                            store.thing(ids.remove(random.nextInt(ids.size()))).orElseThrow();
                    edits.add(Edit.after(seen, random.nextBoolean() ? seen.name() : name, text));
                }
            }
            Map<String, Is> next = new TreeMap<>(now);
            boolean free = edits.stream().allMatch(e -> apply(next, e));
            try {
                List<Saved> saved = store.save("save", edits);
                assertThat(free).as(told + " took a name that was taken").isTrue();
                IntStream.range(0, count)
                        .filter(i -> edits.get(i).thing().isEmpty())
                        .forEach(i -> {
                            Thing made = ((Saved.Stored) saved.get(i)).thing();
                            next.put(
                                    made.id(), next.remove("new " + edits.get(i).name()));
                        });
                stepped(next);
            } catch (BadInput e) {
                assertThat(free).as(told + " " + e.getMessage()).isFalse();
            }
            return "edits " + edits;
        }

        private static boolean apply(Map<String, Is> next, Edit edit) {
            String key = edit.thing().isEmpty() ? "new " + edit.name() : edit.thing();
            boolean free = next.entrySet().stream()
                    .filter(e -> e.getValue().place() == Place.HERE
                            && e.getValue().name().equals(edit.name()))
                    .allMatch(e -> e.getKey().equals(key) && !edit.thing().isEmpty());
            next.put(key, new Is(edit.name(), edit.text(), Place.HERE));
            return free;
        }

        private String moved(Place from, Place to) {
            List<String> all = ids(from);
            if (all.isEmpty()) {
                return "nothing to move";
            }
            List<String> ids = all.subList(0, 1 + random.nextInt(all.size()));
            Map<String, Is> next = new HashMap<>(now);
            boolean free = true;
            for (String id : ids) {
                Is is = Objects.requireNonNull(now.get(id));
                free &= to == Place.BIN
                        || next.values().stream()
                                .noneMatch(
                                        o -> o.place() == Place.HERE && o.name().equals(is.name()));
                next.put(id, new Is(is.name(), is.text(), to));
            }
            try {
                store.move("move", ids, to);
                assertThat(free).as(told).isTrue();
                stepped(next);
            } catch (BadInput e) {
                assertThat(free).as(told + " " + e.getMessage()).isFalse();
            }
            return "moved " + ids + " to " + to;
        }

        private String back() {
            if (before.isEmpty()) {
                return "nothing to undo";
            }
            assertThat(store.undo()).as(told).isPresent();
            after.push(now);
            now = before.pop();
            return "undone";
        }

        private String forth() {
            assertThat(store.redo().isPresent()).as(told).isEqualTo(!after.isEmpty());
            if (!after.isEmpty()) {
                before.push(now);
                now = after.pop();
            }
            return "done again";
        }

        private void stepped(Map<String, Is> next) {
            before.push(now);
            after.clear();
            now = new TreeMap<>(next);
        }

        private List<String> ids(Place place) {
            return now.entrySet().stream()
                    .filter(e -> e.getValue().place() == place)
                    .map(Map.Entry::getKey)
                    .toList();
        }
    }
}
