package stretchwright.web.things;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.Measuring;
import stretchwright.body.NextMeasure;
import stretchwright.body.Value;
import stretchwright.ground.Part;
import stretchwright.intake.WearerKeys;
import stretchwright.web.form.Trial;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.Due;
import stretchwright.workroom.Taken;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Store;

/** A wearer: what is measured, how old it is, and which measure tells most. */
final class WearerPage {
    /** Heading of the note that a wearer agreed. */
    static final String CONSENT = "consent";

    private final Held wearer;
    private final Taken taken;
    private final LocalDate today;
    private final Optional<Body> body;
    private final List<Measure> due;

    private WearerPage(Held wearer) {
        this.wearer = wearer;
        this.taken = Taken.of(wearer.bench().room(), wearer.thing());
        this.today = wearer.bench().room().today();
        this.body = Trial.body(wearer.form());
        Figure figure = WearerKeys.figure(wearer.form().value("wearer.figure")).orElse(Figure.WOMAN);
        this.due = taken.due(Due.after(figure), today);
    }

    static ThingPage of(Held wearer) {
        return new WearerPage(wearer).page();
    }

    /** "10 of 19 measured, October", or that it is time to measure again. */
    static Shelved shelved(Held wearer) {
        WearerPage page = new WearerPage(wearer);
        boolean old = !page.due.isEmpty();
        String known = old ? Days.due(page.taken.oldest().orElse(page.today), page.today) : page.sentence();
        return new Shelved(wearer.to(""), wearer.thing().name(), known, old, "", 0);
    }

    private ThingPage page() {
        return new ThingPage(
                Frame.plain("thing", wearer.thing().name()),
                says(),
                presses(),
                "",
                List.of(measures(), makes()),
                asks(),
                List.of());
    }

    private String sentence() {
        Part all = Part.count(Measure.values().length);
        return taken.oldest()
                .map(day -> wearer.say(
                        "things.measured",
                        Part.count(taken.days().size()),
                        all,
                        Part.text(Days.month(
                                taken.days().values().stream()
                                        .max(LocalDate::compareTo)
                                        .orElse(day),
                                today))))
                .orElseGet(() -> say("things.unmeasured"));
    }

    private MayCut says() {
        MayCut.Mark mark = taken.days().isEmpty()
                ? MayCut.Mark.WORKS
                : due.isEmpty() && body.isPresent() ? MayCut.Mark.HOLDS : MayCut.Mark.LOOK;
        String wrong = taken.days().isEmpty() || body.isPresent()
                ? ""
                : String.join(" ", wearer.words(Trial.wrong(wearer.form())));
        String why = next().map(n -> wearer.say("things.tells-most", n.why())).orElse(wrong);
        return new MayCut(mark, sentence(), why);
    }

    private Optional<NextMeasure> next() {
        return body.flatMap(Measuring::next);
    }

    private List<ThingPage.Press> presses() {
        List<ThingPage.Press> out = new ArrayList<>();
        Measure first = next().map(NextMeasure::measure).orElse(Measure.STATURE);
        if (next().isPresent() || taken.days().isEmpty()) {
            out.add(new ThingPage.Press(
                    wearer.to(MeasurePage.path(first)), wearer.say("things.measure-it", first.said()), true));
        } else if (!due.isEmpty()) {
            out.add(new ThingPage.Press(
                    wearer.to(MeasurePage.path(due.get(0))),
                    wearer.say("things.measure-it", due.get(0).said()),
                    true));
        }
        wearer.asker().ifPresent(m -> out.add(back(wearer, m, out.isEmpty())));
        return out;
    }

    static ThingPage.Press back(Held thing, Opened make, boolean first) {
        return new ThingPage.Press(make.address(), thing.say("things.back-to", Part.text(make.name())), first);
    }

    private ThingPage.Rows measures() {
        return new ThingPage.Rows(
                say("things.measures"),
                body.isPresent() ? say("things.pencil") : "",
                Arrays.stream(Measure.values()).map(this::row).toList());
    }

    private ThingPage.Row row(Measure measure) {
        String address = wearer.to(MeasurePage.path(measure));
        String name = wearer.say("things.title", new Part.Capital(measure.said()));
        LocalDate day = taken.days().get(measure);
        if (day != null) {
            boolean old = due.contains(measure);
            String value = body.map(b -> wearer.say(Part.length(b.mm(measure))))
                    .orElseGet(() -> wearer.form().value(SentReadings.key(measure)));
            return new ThingPage.Row(
                    address, name, value, false, old ? Days.due(day, today) : Days.month(day, today), old);
        }
        return body.map(b -> b.value(measure))
                .map(v -> new ThingPage.Row(address, name, about(v), true, "", false))
                .orElseGet(() -> ThingPage.Row.of(address, name, say("things.not-yet")));
    }

    private String about(Value v) {
        return wearer.say("things.about", Part.length(v.mm()), Part.length(v.spread()));
    }

    private ThingPage.Rows makes() {
        return new ThingPage.Rows(
                say("things.makes"),
                "",
                wearer.bench().room().store().ofWearer(wearer.thing().id(), Kind.MAKE).stream()
                        .map(m -> ThingPage.Row.of("/makes/" + m.id(), m.name(), ""))
                        .toList());
    }

    private List<ThingPage.Ask> asks() {
        String at = "/wearers/" + wearer.thing().id();
        long seen = wearer.thing().now();
        List<ThingPage.Ask> out = new ArrayList<>();
        out.add(new ThingPage.Ask(
                say("things.unit"),
                List.of(say("things.unit-how")),
                wearer.to("/unit"),
                seen,
                List.of(Blank.pick("unit", say("things.unit"), wearer.unit().symbol(), units())),
                say("things.keep"),
                false));
        if (!taken.days().isEmpty()) {
            out.add(new ThingPage.Ask(
                    say("things.all-today"),
                    List.of(say("things.all-today-how")),
                    wearer.to("/today"),
                    seen,
                    List.of(),
                    say("things.all-today-do"),
                    false));
        }
        out.add(new ThingPage.Ask(
                say("things.consent"),
                consent(),
                at + "/consent",
                seen,
                List.of(Blank.text("agreed", say("things.consent-who"), "")),
                say("things.consent-do"),
                false));
        out.add(new ThingPage.Ask(
                say("things.forget"),
                List.of(wearer.say("things.forget-how", Part.text(wearer.thing().name()))),
                at + "/forget",
                seen,
                List.of(Blank.text("name", say("things.forget-name"), "")),
                say("things.forget-do"),
                true));
        return out;
    }

    static List<Blank.Choice> units() {
        return List.of(new Blank.Choice("cm", "cm"), new Blank.Choice("in", Held.plain("ask.inches")));
    }

    private List<String> consent() {
        Store store = wearer.bench().room().store();
        List<String> out = new ArrayList<>(List.of(say("things.consent-how")));
        store.from(wearer.thing().id(), Kind.NOTE).stream()
                .filter(n -> n.name().equals(CONSENT))
                .flatMap(n -> store.now(n).stream())
                .forEach(v -> out.add(wearer.say("things.consent-is", Part.text(v.text()))));
        return out;
    }

    private String say(String key) {
        return wearer.say(Tell.said(key));
    }
}
