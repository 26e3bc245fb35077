package stretchwright.web.things;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.fabric.ClothKnown;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.intake.Table;
import stretchwright.pattern.Stitch;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Demo;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.workroom.Cutting;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/** A cloth: how much there is, what it does, what worked on it and what is left. */
final class ClothPage {
    /** Of more makes nobody looks for one here. */
    private static final int MOST = 500;

    private static final List<String> SETTING = List.of("stitch", "stitch length", "needle", "note");

    private final Held cloth;
    private final ClothTrial trial;
    private final Optional<Fabric> fabric;

    private ClothPage(Held cloth) {
        this.cloth = cloth;
        this.trial = ClothTrial.of(cloth, cloth.form());
        this.fabric = trial.fabric();
    }

    static ThingPage of(Held cloth) {
        return new ClothPage(cloth).page();
    }

    /** "1.3 m left, 58 % across, 30 % along", as far as it is known. */
    static Shelved shelved(Held cloth) {
        ClothPage page = new ClothPage(cloth);
        double metres = page.fabric.map(f -> f.roll().onHand().orElse(0) / 1000).orElse(0.0);
        return new Shelved(
                cloth.to(""),
                cloth.thing().name(),
                page.sentence(),
                false,
                Dye.of(cloth).orElse(""),
                metres);
    }

    private String sentence() {
        List<String> parts = new ArrayList<>();
        String left = cloth.form().value("fabric.on hand");
        if (!left.isEmpty()) {
            String told = fabric.filter(f -> f.roll().onHand().isPresent())
                    .map(f -> cloth.say(Part.cloth(f.roll().onHand().orElse(0))))
                    .orElse(left);
            parts.add(cloth.say("cloth.left", Part.text(told)));
        }
        fabric.map(f -> stretches(cloth, trial, f)).filter(s -> !s.isEmpty()).ifPresent(parts::add);
        return parts.isEmpty() ? say("cloth.unknown") : String.join(", ", parts);
    }

    /** "58 % across, 30 % along", only what was found. */
    static String stretches(Held cloth, ClothTrial trial, Fabric f) {
        List<String> parts = new ArrayList<>();
        if (trial.knows("across")) {
            parts.add(cloth.say("cloth.is-across", Part.share(f.test().stretchAcross())));
        }
        if (trial.knows("along")) {
            parts.add(cloth.say("cloth.is-along", Part.share(f.test().stretchAlong())));
        }
        return String.join(", ", parts);
    }

    private ThingPage page() {
        return new ThingPage(
                Frame.plain("thing", cloth.thing().name()),
                says(),
                presses(),
                fabric.map(f -> LoadPlot.of(f.test(), Voice.of(cloth.unit()))).orElse(""),
                lists(),
                asks(),
                List.of());
    }

    private MayCut says() {
        boolean tested = trial.knows("across") && trial.knows("along");
        String wrong = String.join(" ", cloth.words(trial.wrong()));
        String why = !wrong.isEmpty()
                ? wrong
                : tested ? fabric.map(f -> cloth.say(ClothKnown.of(f).said())).orElse("") : say("cloth.fold-first");
        MayCut.Mark mark = !wrong.isEmpty() ? MayCut.Mark.LOOK : tested ? MayCut.Mark.HOLDS : MayCut.Mark.WORKS;
        return new MayCut(mark, sentence(), why);
    }

    private List<ThingPage.Press> presses() {
        List<ThingPage.Press> out = new ArrayList<>();
        ClothTest next = !trial.knows("across")
                ? ClothTest.FOLD
                : !trial.knows("along") ? ClothTest.FOLD_ALONG : ClothTest.HANGING;
        if (!trial.whole().has("fabric.hang across") || !trial.knows("along")) {
            out.add(new ThingPage.Press(cloth.to(next.path()), cloth.say(next.title()), true));
        }
        cloth.asker().ifPresent(m -> out.add(WearerPage.back(cloth, m, out.isEmpty())));
        String make = cloth.asker().map(m -> m.id()).orElse(Demo.ID);
        out.add(new ThingPage.Press("/makes/" + make + "/file/shop-card.pdf", say("cloth.shop-card"), false));
        return out;
    }

    private List<ThingPage.Rows> lists() {
        List<ThingPage.Row> tests = new ArrayList<>();
        for (ClothTest test : ClothTest.values()) {
            boolean done = test.keys().stream().anyMatch(cloth.form()::has);
            tests.add(new ThingPage.Row(
                    cloth.to(test.path()),
                    cloth.say(test.title()),
                    done ? value(test) : say("things.not-yet"),
                    !done,
                    "",
                    false));
        }
        List<ThingPage.Rows> out = new ArrayList<>();
        out.add(new ThingPage.Rows(say("cloth.tests"), say("cloth.fold-enough"), tests));
        List<ThingPage.Row> settings = settings();
        if (!settings.isEmpty()) {
            out.add(new ThingPage.Rows(say("cloth.settings"), "", settings));
        }
        List<ThingPage.Row> cut = cut();
        if (!cut.isEmpty()) {
            out.add(new ThingPage.Rows(say("cloth.cut"), "", cut));
        }
        return out;
    }

    private String value(ClothTest test) {
        return test.keys().stream()
                .map(cloth.form()::value)
                .filter(v -> !v.isEmpty())
                .findFirst()
                .orElse("");
    }

    private List<ThingPage.Row> settings() {
        List<ThingPage.Row> out = new ArrayList<>();
        for (int i = 1; cloth.form().has("fabric.settings." + i); i++) {
            int number = i;
            String told = SETTING.stream()
                    .skip(1)
                    .map(k -> cloth.form().value("fabric.settings." + number + "." + k))
                    .filter(v -> !v.isEmpty())
                    .collect(Collectors.joining(", "));
            out.add(ThingPage.Row.of("", cloth.form().value("fabric.settings." + i + ".stitch"), told));
        }
        return out;
    }

    /** Remnants that came of it, and what makes took. */
    private List<ThingPage.Row> cut() {
        Store store = cloth.bench().room().store();
        List<ThingPage.Row> out = new ArrayList<>();
        for (Thing remnant : store.from(cloth.thing().id(), Kind.FABRIC)) {
            Form text = Form.of(cloth.bench().room().standing(remnant).text());
            out.add(ThingPage.Row.of(
                    "/cloths/" + remnant.id(),
                    remnant.name(),
                    cloth.say(
                            "cloth.remnant",
                            Part.text(text.value("fabric.usable width")),
                            Part.text(text.value("fabric.on hand")))));
        }
        makes().forEach(m -> out.add(ThingPage.Row.of("/makes/" + m.id(), m.name(), took(m))));
        return out;
    }

    private String took(Thing make) {
        return cuts(make)
                .flatMap(n -> cloth.bench().room().store().now(n).stream())
                .map(v -> cloth.say("cloth.took", Part.text(v.text())))
                .findFirst()
                .orElseGet(() -> say("cloth.uncut"));
    }

    private List<ThingPage.Ask> asks() {
        long seen = cloth.thing().now();
        List<ThingPage.Ask> out = new ArrayList<>(List.of(
                new ThingPage.Ask(
                        say("cloth.roll"), List.of(), cloth.to("/roll"), seen, roll(), say("things.keep"), false),
                new ThingPage.Ask(
                        say("cloth.dye"),
                        List.of(say("cloth.dye-how")),
                        cloth.to("/dye"),
                        seen,
                        List.of(Blank.dye("dye", say("cloth.dye"), Dye.of(cloth).orElse(Dye.USUAL))),
                        say("things.keep"),
                        false),
                new ThingPage.Ask(
                        say("cloth.setting"),
                        List.of(say("cloth.setting-how")),
                        cloth.to("/setting"),
                        seen,
                        setting(),
                        say("things.keep"),
                        false)));
        List<Blank.Choice> uncut = makes().filter(m -> cuts(m).findAny().isEmpty())
                .map(m -> new Blank.Choice(m.id(), m.name()))
                .toList();
        if (!uncut.isEmpty()) {
            out.add(new ThingPage.Ask(
                    say("cloth.was-cut"),
                    List.of(say("cloth.was-cut-how")),
                    cloth.to("/cut"),
                    seen,
                    List.of(Blank.pick("make", say("cloth.which-make"), "", uncut)),
                    say("cloth.was-cut"),
                    false));
        }
        return out;
    }

    /** Those that are made of it. */
    private Stream<Thing> makes() {
        return cloth.bench().room().store().list(Kind.MAKE, Place.HERE, "", 0, MOST).stream()
                .filter(m -> m.links().fabric().equals(cloth.thing().id()));
    }

    /** Notes that a make was cut. */
    private Stream<Thing> cuts(Thing make) {
        return cloth.bench().room().store().from(make.id(), Kind.NOTE).stream()
                .filter(n -> n.name().equals(Cutting.CUT));
    }

    static final List<String> ROLL = List.of("usable width", "on hand", "price", "weight");

    private List<Blank> roll() {
        return ROLL.stream()
                .map(k -> {
                    String key = "fabric." + k;
                    boolean length = k.equals("usable width");
                    String value = cloth.form().value(key);
                    return Blank.text(
                            key,
                            cloth.say(new Part.Capital(
                                            Table.keys().find(key).orElseThrow().label()))
                                    + (length ? ", " + cloth.unit().symbol() : ""),
                            length ? Held.shown(value, cloth.unit()) : value);
                })
                .toList();
    }

    private List<Blank> setting() {
        List<Blank.Choice> stitches = Arrays.stream(Stitch.values())
                .map(s -> new Blank.Choice(s.plainName(), s.plainName()))
                .toList();
        return List.of(
                Blank.pick("stitch", say("cloth.stitch"), "", stitches),
                Blank.text("stitch length", say("cloth.stitch-length"), ""),
                Blank.text("needle", say("cloth.needle"), ""),
                Blank.text("note", say("cloth.note"), ""));
    }

    private String say(String key) {
        return cloth.say(Tell.said(key));
    }
}
