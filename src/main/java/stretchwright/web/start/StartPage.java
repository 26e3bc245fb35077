package stretchwright.web.start;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.ground.Box;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.pattern.Piece;
import stretchwright.web.ask.Begun;
import stretchwright.web.draw.Outline;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;
import stretchwright.web.things.Shelved;
import stretchwright.workroom.Remembered;
import stretchwright.workroom.SewingPlace;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/**
 * What hangs and lies in the workroom.
 *
 * @param makes newest first
 * @param allMakes where the others are too; empty where all hang here
 * @param begun a new make that was left in the middle of its questions; empty where something else was done since
 * @param sewing what was sewn at last; empty where something else was done since
 */
public record StartPage(
        Frame frame,
        List<Hung> makes,
        String allMakes,
        List<Shelf> shelves,
        Optional<Begun> begun,
        Optional<OnMachine> sewing) {
    /** So many hang on the rail. */
    static final int MOST = 11;

    /** px of a mm on the rail, less where the longest or widest of them would be cut off. */
    private static final double SCALE = 0.2;

    private static final double MIDDLE = 90;
    private static final double TOP = 44;

    /** px that a leg has on its hook. */
    private static final double WIDE = 172;

    private static final double HIGH = 214;

    public StartPage {
        makes = List.copyOf(makes);
        shelves = List.copyOf(shelves);
    }

    /**
     * A make on the rail.
     *
     * @param outline of its leg; empty where it cannot be drafted
     * @param mark word of it
     */
    public record Hung(String address, String name, String about, String outline, String mark, String sentence) {}

    /** A make that is being sewn. */
    public record OnMachine(String address, String sentence, String left) {}

    /**
     * Things of one kind.
     *
     * @param fresh where a new one begins
     * @param all where the others are too; empty where all lie here
     */
    public record Shelf(String title, String fresh, List<Shelved> things, String all) {
        public Shelf {
            things = List.copyOf(things);
        }

        /** px of a bolt: as thick as there is cloth left. */
        public int thick(Shelved cloth) {
            return (int) Math.round(Math.max(6, Math.min(34, 8 + 10 * cloth.metres())));
        }
    }

    static StartPage of(Bench bench) {
        List<Thing> things = bench.room().store().list(Kind.MAKE, Place.HERE, "", 0, MOST);
        double scale = scale(bench, things);
        List<Hung> makes = things.stream().map(t -> hung(bench, t, scale)).toList();
        List<Shelf> shelves = List.of(
                shelf(bench, Kind.WEARER, "start.wearers"),
                shelf(bench, Kind.FABRIC, "start.cloths"),
                shelf(bench, Kind.BOOT, "start.boots"));
        return new StartPage(
                Frame.plain("start", "Stretchwright"),
                makes,
                all(bench, Kind.MAKE),
                shelves,
                begun(bench, things),
                sewing(bench, things));
    }

    /** When a make was last changed or sewn. */
    private static long worked(Store store, Thing make) {
        return Math.max(make.changed(), Remembered.at(store, make, Remembered.SEWING));
    }

    private static Optional<Begun> begun(Bench bench, List<Thing> makes) {
        Store store = bench.room().store();
        return Begun.of(bench).filter(b -> makes.stream().allMatch(t -> worked(store, t) < b.at()));
    }

    /** The make that was worked at last, if it is being sewn. */
    private static Optional<OnMachine> sewing(Bench bench, List<Thing> makes) {
        Store store = bench.room().store();
        return makes.stream()
                .max(Comparator.comparingLong(t -> worked(store, t)))
                .flatMap(t ->
                        SewingPlace.of(store, t).filter(SewingPlace::isUnderWay).map(p -> onMachine(t, p)));
    }

    private static OnMachine onMachine(Thing make, SewingPlace place) {
        return new OnMachine(
                "/makes/" + make.id() + "/sew",
                said("start.sewing", Part.text(make.name()), Part.count(place.next()), Part.count(place.steps())),
                said("start.sewing-left", new Part.Minutes(place.minutes(), 0)));
    }

    private static Shelf shelf(Bench bench, Kind kind, String title) {
        return new Shelf(
                title,
                Shelved.fresh(kind),
                bench.room().store().list(kind, Place.HERE, "", 0, MOST).stream()
                        .map(t -> Shelved.of(bench, t))
                        .toList(),
                all(bench, kind));
    }

    /** Where everything of a kind is found, if there is more than is shown here. */
    private static String all(Bench bench, Kind kind) {
        return bench.room().store().count(kind, Place.HERE) > MOST ? ListPage.shelf(kind) : "";
    }

    private static Opened opened(Bench bench, Thing thing) {
        return bench.opened(new Workroom.Stored(thing, bench.room().standing(thing)));
    }

    private static Hung hung(Bench bench, Thing thing, double scale) {
        try {
            Opened make = opened(bench, thing);
            Optional<SewingPlace> sewing =
                    SewingPlace.of(bench.room().store(), thing).filter(SewingPlace::isUnderWay);
            MayCut may = sewing.map(StartPage::sewn).orElseGet(() -> MayCut.of(make.session(), make.voice()));
            return new Hung(
                    make.address(),
                    make.name(),
                    make.session().make().wearer(),
                    outline(make, scale),
                    may.mark().word(),
                    may.sentence());
        } catch (BadInput e) {
            return new Hung(
                    "/makes/" + thing.id(), thing.name(), "", "", MayCut.Mark.STOP.word(), said("start.unreadable"));
        }
    }

    private static MayCut sewn(SewingPlace place) {
        String at = said("start.sewing-at", Part.count(place.next()), Part.count(place.steps()));
        return new MayCut(MayCut.Mark.WORKS, at, "");
    }

    /** One for all that hang there. */
    private static double scale(Bench bench, List<Thing> things) {
        return things.stream()
                .flatMap(t -> box(bench, t).stream())
                .mapToDouble(b -> Math.min(HIGH / b.height(), WIDE / b.width()))
                .reduce(SCALE, Math::min);
    }

    private static Optional<Box> box(Bench bench, Thing thing) {
        try {
            return Optional.of(leg(opened(bench, thing)).cutLine().box());
        } catch (BadInput e) {
            return Optional.empty();
        }
    }

    private static Piece leg(Opened make) {
        return make.session().pattern().legs().get(0);
    }

    private static String outline(Opened make, double scale) {
        Piece leg = leg(make);
        Box box = leg.cutLine().box();
        Outline drawn = new Outline(scale, MIDDLE - scale * box.centre().x(), TOP + scale * box.maxY());
        return drawn.path(leg.cutLine().points(), true);
    }

    /** Where a new make was left. */
    public String left() {
        return begun.map(b -> Voice.plain().say(b.said())).orElse("");
    }

    public String say(String key) {
        return said(key);
    }

    /** The newest one, which is probably the one that is worked at. */
    public Optional<Hung> last() {
        return makes.stream().findFirst();
    }

    private static String said(String key, Part... parts) {
        return Voice.plain().say(Tell.said(key, parts));
    }
}
