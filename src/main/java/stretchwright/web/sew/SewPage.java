package stretchwright.web.sew;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.pattern.Stitch;
import stretchwright.print.kit.Cautions;
import stretchwright.sewing.Place;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.Opened;

/**
 * One step of the sewing, or the machine that is set up before it.
 *
 * @param at which of the stops it is, from 0
 * @param done how many stops are done
 * @param drawing of the step; empty where it has no edges to show
 */
public record SewPage(Frame frame, Opened make, List<Stop> stops, int at, int done, Optional<Drawing> drawing) {
    public SewPage {
        stops = List.copyOf(stops);
    }

    /** A drawing of its own address, and what it shows for those who do not see it. */
    public record Drawing(String address, String shows) {}

    static Frame frame(Opened make, String title) {
        Frame tape = Frame.of(make, Frame.Stop.SEW);
        return new Frame(title, tape.heading(), "sewing", tape.tabs(), tape.kept());
    }

    static SewPage of(Opened make, stretchwright.web.sew.Place place, int at) {
        List<Stop> stops = place.stops();
        Operation o = make.session().sewing().operations().get(stops.get(at).step() - 1);
        String title = make.voice()
                .say(Tell.said("sew.title", Part.count(o.step()), o.name().said()));
        return new SewPage(
                frame(make, title),
                make,
                stops,
                at,
                place.done(),
                stops.get(at).setUp() ? Optional.empty() : StepPictures.of(make, o));
    }

    private Words words() {
        return new Words(make.voice());
    }

    Stop stop() {
        return stops.get(at);
    }

    public String key() {
        return stop().key();
    }

    /** By which the step is known when the plan was changed meanwhile. */
    public String name() {
        return step().name().word();
    }

    public boolean setUp() {
        return stop().setUp();
    }

    private Operation step() {
        return operations().get(stop().step() - 1);
    }

    private List<Operation> operations() {
        return make.session().sewing().operations();
    }

    public String now() {
        Part number = Part.count(stop().step());
        Part all = Part.count(operations().size());
        return setUp()
                ? words().say(Tell.said("sew.now-machine", number, all))
                : words().say(Tell.said(
                        "sew.now",
                        number,
                        all,
                        step().name().said(),
                        step().place().said(),
                        Part.text(words().minutes(step()))));
    }

    public String action() {
        if (!setUp()) {
            return words().action(step());
        }
        Part machine = step().place().said();
        Part stitch = step().stitch().orElseThrow().said();
        if (isFirstMachine()) {
            return words().say(Tell.said("sew.set-up", machine, stitch));
        }
        return step().place() == Place.COMBINED && machineBefore() == Place.COMBINED
                ? words().say(Tell.said("sew.convert", machine, stitch))
                : words().say(Tell.said("sew.change", machine, stitch));
    }

    private boolean isFirstMachine() {
        return stops.subList(0, at).stream().noneMatch(Stop::setUp);
    }

    private Place machineBefore() {
        return stops.subList(0, at).stream()
                .filter(Stop::setUp)
                .reduce((one, next) -> next)
                .map(s -> operations().get(s.step() - 1).place())
                .orElse(Place.TABLE);
    }

    /** Long sentences stand in smaller letters. */
    public boolean isLong() {
        return action().length() > 100;
    }

    public List<String> watch() {
        return setUp() ? List.of() : words().watch(step());
    }

    public String check() {
        return setUp() ? "" : words().say(step().check());
    }

    /** The words of the needle and the knife stand at every step that a machine sews; empty at the others. */
    public String caution() {
        return step().stitch()
                .filter(s -> s != Stitch.BACKSTITCH_BY_HAND)
                .map(s -> Cautions.needleAndKnife())
                .orElse("");
    }

    /** What the machine is set to: all that there is to do where it is set up, folded at its steps. */
    public List<Words.Line> settings() {
        return setUp() ? words().settingUp(step()) : words().settings(step());
    }

    /** Of the machine that is set up, for the whole pair. */
    public List<Words.Line> threads() {
        return setUp() ? words().threads(make.session().sewing(), step()) : List.of();
    }

    /** Whether the settings are those that were kept with the cloth. */
    public boolean isKept() {
        return step().help().setting().filter(s -> s.kept()).isPresent();
    }

    public List<String> wrong() {
        return setUp() ? List.of() : words().wrong(step());
    }

    public List<String> why() {
        return setUp() ? List.of() : words().why(step());
    }

    public boolean isDone() {
        return at < done;
    }

    public boolean isLast() {
        return at == stops.size() - 1;
    }

    public String doneWords() {
        return say(isLast() ? "sew.finished" : setUp() ? "sew.ready" : "sew.done");
    }

    public String sewing() {
        return make.address() + "/sew";
    }

    /** Empty at the first one. */
    public String back() {
        return at == 0 ? "" : sewing() + "/" + stops.get(at - 1).key();
    }

    public String next() {
        return isLast() ? sewing() + "/all" : sewing() + "/" + stops.get(at + 1).key();
    }

    /** Which places the sewing is kept at; none of the demo. */
    public String keptAt() {
        return make.demo() ? "" : sewing();
    }

    public String plan() {
        return Offline.plan(make);
    }

    public String stitches() {
        return Stitches.drawn(
                stops,
                at,
                done,
                words().say(Tell.said(
                        "sew.progress", stepsDone(), Part.count(operations().size()))));
    }

    private Part stepsDone() {
        return Part.count(
                stops.subList(0, done).stream().filter(s -> !s.setUp()).count());
    }

    public String say(String key) {
        return words().say(Tell.said(key));
    }
}
