package stretchwright.workroom.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.BadInput;

/** Any sequence of saves, steps along the history of several things and steps of the whole workroom ends where a plain model says. */
@Tag("slow")
class HistoryModelTest {
    private static final String ALL = "stretchwright.workroom.store.Databases#all";
    private static final int SEQUENCES = 6;
    private static final int OPERATIONS = 25;
    private static final int NAMES = 5;
    /** Few things, so that each has a long history. */
    private static final int FEW = 3;

    @ParameterizedTest
    @MethodSource(ALL)
    void everyVersionHasItsPlace(Address address) {
        for (int i = 0; i < SEQUENCES; i++) {
            Kind kind = Kind.values()[i % Kind.values().length];
            Sequence sequence = new Sequence(kind, 2311 + i);
            for (int session = 0; session < 2; session++) {
                try (Database database = Database.open(address)) {
                    sequence.run(new Store(database, Clock.systemUTC()));
                    database.mustBeSound();
                }
            }
        }
    }

    private static final class Sequence {
        private final Kind kind;
        private final Random random;
        private final String told;
        private final HistoryModel model = new HistoryModel();

        Sequence(Kind kind, long seed) {
            this.kind = kind;
            this.random = new Random(seed);
            this.told = kind + ", seed " + seed;
        }

        void run(Store store) {
            for (int i = 0; i < OPERATIONS; i++) {
                String what = once(store);
                mustAgree(store, told + ", operation " + i + ": " + what);
            }
        }

        private void mustAgree(Store store, String where) {
            model.now().forEach((id, stands) -> {
                HistoryModel.Past past = model.past(id);
                Thing thing = store.thing(id).orElseThrow();
                assertThat(new HistoryModel.Stands(thing.now(), thing.place()))
                        .as(where)
                        .isEqualTo(stands);
                assertThat(number(store.earlier(thing))).as(where).isEqualTo(past.earlier(thing.now()));
                assertThat(number(store.later(thing))).as(where).isEqualTo(past.later(thing.now()));
                assertThat(store.versions(id))
                        .as(where)
                        .extracting(Version::text)
                        .isEqualTo(past.texts);
                if (stands.number() > 0) {
                    assertThat(thing.name()).as(where).isEqualTo(past.name(stands.number()));
                }
            });
        }

        private static long number(Optional<Version> version) {
            return version.map(Version::number).orElse(0L);
        }

        private String once(Store store) {
            int what = random.nextInt(16);
            List<String> here = model.ids(Place.HERE);
            if (what < 2 && here.size() < FEW || here.isEmpty()) {
                return what == 1 ? adopted(store) : fresh(store);
            }
            if (what < 5) {
                return what < 2
                        ? stood(store, one(store, here))
                        : what == 2 ? moved(store) : what == 3 ? undone(store) : again(store);
            }
            Thing thing = one(store, here);
            if (what < 8) {
                return saved(store, thing);
            }
            if (what < 12) {
                return backAndForth(store, thing);
            }
            if (what == 12) {
                return store.later(thing)
                        .map(v -> stood(store, thing, v.number()))
                        .orElse("nothing later");
            }
            return what == 13 ? clashed(store, thing) : stood(store, thing);
        }

        private Thing one(Store store, List<String> here) {
            return store.thing(here.get(random.nextInt(here.size()))).orElseThrow();
        }

        private String stood(Store store, Thing thing) {
            return stood(store, thing, 1 + random.nextInt(texts(thing)));
        }

        private int texts(Thing thing) {
            return model.past(thing.id()).texts.size();
        }

        private String fresh(Store store) {
            String name = name();
            String text = text();
            boolean free = free(name, "");
            try {
                Thing made = Databases.stored(store.save(Edit.fresh(kind, name, text, Links.NONE)));
                assertThat(free).as(told).isTrue();
                model.past(made.id()).entered(name, text);
                model.stepped(made.id(), made.now(), Place.HERE);
            } catch (BadInput e) {
                assertThat(free).as(told + e.getMessage()).isFalse();
            }
            return "fresh " + name;
        }

        /** One of another workroom, with versions that have no steps here. */
        private String adopted(Store store) {
            String id = Store.freshId();
            String name = told + " brought " + id;
            HistoryModel.Past past = model.past(id);
            List<Version> versions = new ArrayList<>();
            for (int i = 1; i <= 3; i++) {
                String text = text();
                past.entered(name, text);
                versions.add(new Version(id, i, name, text, Links.NONE, Optional.empty(), "", i));
            }
            long stands = 2 + random.nextInt(2);
            Thing thing = new Thing(id, kind, name, stands, Place.HERE, Links.NONE, 3);
            store.adopt("import", List.of(new Adopted(thing, versions)), List.of());
            assertThat(store.earlier(thing)).as(told).isEmpty();
            assertThat(store.later(thing)).as(told).isEmpty();
            model.stepped(id, stands, Place.HERE);
            return "adopted " + id;
        }

        private String saved(Store store, Thing thing) {
            String name = random.nextInt(4) == 0 ? name() : thing.name();
            String text = text();
            boolean free = free(name, thing.id());
            try {
                Thing then = Databases.stored(store.save(Edit.after(thing, name, text)));
                assertThat(free).as(told).isTrue();
                assertThat(then.now()).as(told).isEqualTo(model.past(thing.id()).entered(name, text));
                model.stepped(thing.id(), then.now(), Place.HERE);
            } catch (BadInput e) {
                assertThat(free).as(told + e.getMessage()).isFalse();
            }
            return "saved " + name;
        }

        /** It stays beside what stands, and has no place in the history. */
        private String clashed(Store store, Thing thing) {
            Thing stale = new Thing(
                    thing.id(), kind, thing.name(), thing.now() + 1, Place.HERE, thing.links(), thing.changed());
            String text = text();
            assertThat(store.save(Edit.after(stale, thing.name(), text)))
                    .as(told)
                    .isInstanceOf(Saved.Clash.class);
            model.past(thing.id()).entered(thing.name(), text);
            int steps = store.steps(1000).size();
            mustRefuse(store, stale, thing.now());
            mustRefuse(store, thing, texts(thing) + 1);
            assertThat(store.steps(1000)).as(told).hasSize(steps);
            return "clashed";
        }

        private void mustRefuse(Store store, Thing seen, long number) {
            try {
                store.stand("back", seen, number);
            } catch (BadInput e) {
                return;
            }
            throw new AssertionError(told + " let version " + number + " stand");
        }

        private String backAndForth(Store store, Thing thing) {
            Optional<Version> back = store.earlier(thing);
            if (back.isEmpty()) {
                return "nothing earlier";
            }
            String what = stood(store, thing, back.get().number());
            Thing then = store.thing(thing.id()).orElseThrow();
            if (then.now() != thing.now()) {
                assertThat(number(store.later(then))).as(told).isEqualTo(thing.now());
            }
            return what;
        }

        private String stood(Store store, Thing thing, long number) {
            String name = model.past(thing.id()).name(number);
            boolean free = free(name, thing.id());
            try {
                Thing then = store.stand("back", thing, number);
                assertThat(free).as(told).isTrue();
                assertThat(store.thing(thing.id())).as(told).contains(then);
                if (number != thing.now()) {
                    model.stepped(thing.id(), number, Place.HERE);
                }
            } catch (BadInput e) {
                assertThat(free).as(told + e.getMessage()).isFalse();
            }
            return "stood " + number;
        }

        private String moved(Store store) {
            boolean out = random.nextBoolean();
            List<String> ids = model.ids(out ? Place.BIN : Place.HERE);
            if (ids.isEmpty()) {
                return "nothing to move";
            }
            Thing thing = store.thing(ids.get(random.nextInt(ids.size()))).orElseThrow();
            Place to = out ? Place.HERE : Place.BIN;
            boolean free = !out || free(thing.name(), thing.id());
            try {
                store.move("move", List.of(thing.id()), to);
                assertThat(free).as(told).isTrue();
                model.stepped(thing.id(), thing.now(), to);
            } catch (BadInput e) {
                assertThat(free).as(told + e.getMessage()).isFalse();
            }
            if (to == Place.BIN) {
                mustRefuse(store, thing, thing.now());
            }
            return "moved to " + to;
        }

        private String undone(Store store) {
            if (model.undone()) {
                store.undo();
            }
            return "undone";
        }

        private String again(Store store) {
            assertThat(store.redo().isPresent()).as(told).isEqualTo(model.again());
            return "done again";
        }

        private boolean free(String name, String but) {
            return !kind.named() || model.isFree(name, but);
        }

        private String name() {
            return told + " " + random.nextInt(NAMES);
        }

        private String text() {
            return Long.toString(random.nextLong());
        }
    }
}
