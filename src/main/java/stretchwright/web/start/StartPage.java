package stretchwright.web.start;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.ground.Box;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.pattern.Piece;
import stretchwright.web.draw.Outline;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;
import stretchwright.web.things.Shelved;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/**
 * What hangs and lies in the workroom.
 *
 * @param makes newest first
 * @param begun where a new make was left; empty where none was
 */
public record StartPage(Frame frame, List<Hung> makes, List<Shelf> shelves, Optional<String> begun) {
    /** So many hang on the rail. */
    static final int MOST = 11;

    /** px of a mm on the rail. */
    private static final double SCALE = 0.2;

    private static final double MIDDLE = 90;
    private static final double TOP = 44;

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

    /**
     * Things of one kind.
     *
     * @param fresh where a new one begins
     */
    public record Shelf(String title, String fresh, List<Shelved> things) {
        public Shelf {
            things = List.copyOf(things);
        }

        /** px of a bolt: as thick as there is cloth left. */
        public int thick(Shelved cloth) {
            return (int) Math.round(Math.max(6, Math.min(34, 8 + 10 * cloth.metres())));
        }
    }

    static StartPage of(Bench bench) {
        List<Hung> makes = bench.room().store().list(Kind.MAKE, Place.HERE, "", 0, MOST).stream()
                .map(t -> hung(bench, t))
                .toList();
        List<Shelf> shelves = List.of(
                shelf(bench, Kind.WEARER, "start.wearers"),
                shelf(bench, Kind.FABRIC, "start.cloths"),
                shelf(bench, Kind.BOOT, "start.boots"));
        return new StartPage(Frame.plain("start", "Stretchwright"), makes, shelves, Optional.empty());
    }

    private static Shelf shelf(Bench bench, Kind kind, String title) {
        return new Shelf(
                title,
                Shelved.fresh(kind),
                bench.room().store().list(kind, Place.HERE, "", 0, MOST).stream()
                        .map(t -> Shelved.of(bench, t))
                        .toList());
    }

    private static Hung hung(Bench bench, Thing thing) {
        Workroom.Stored stored = new Workroom.Stored(thing, bench.room().standing(thing));
        try {
            Opened make = bench.opened(stored);
            MayCut may = MayCut.of(make.session().fit(), make.voice());
            return new Hung(
                    make.address(),
                    make.name(),
                    make.session().make().wearer(),
                    outline(make),
                    may.mark().word(),
                    may.sentence());
        } catch (BadInput e) {
            return new Hung(
                    "/makes/" + thing.id(), thing.name(), "", "", MayCut.Mark.STOP.word(), said("start.unreadable"));
        }
    }

    private static String outline(Opened make) {
        Piece leg = make.session().pattern().legs().get(0);
        Box box = leg.cutLine().box();
        Outline drawn = new Outline(SCALE, MIDDLE - SCALE * box.centre().x(), TOP + SCALE * box.maxY());
        return drawn.path(leg.cutLine().points(), true);
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
