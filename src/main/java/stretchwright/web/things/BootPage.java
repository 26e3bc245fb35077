package stretchwright.web.things;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Voice;
import stretchwright.intake.BootGuide;
import stretchwright.intake.Key;
import stretchwright.intake.Table;
import stretchwright.web.draw.BootKind;
import stretchwright.web.draw.BootMeasure;
import stretchwright.web.draw.Boots;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;

/** A laced boot: each measure at its place, and one of them at a time. */
final class BootPage {
    private final Held boot;

    private BootPage(Held boot) {
        this.boot = boot;
    }

    static ThingPage of(Held boot) {
        return new BootPage(boot).page();
    }

    /** What stands on the shelf beside the name. */
    static String known(Held boot) {
        return new BootPage(boot).sentence();
    }

    static String path(BootMeasure measure) {
        return "/" + measure.path().substring("boot.".length()).replace(' ', '-');
    }

    static Optional<BootMeasure> at(String path) {
        return List.of(BootMeasure.values()).stream()
                .filter(m -> path(m).equals("/" + path))
                .findFirst();
    }

    private static Key<?> key(BootMeasure measure) {
        return Table.keys().find(measure.path()).orElseThrow();
    }

    private BootKind kind() {
        return BootKind.of(boot.form().value("boot.kind"));
    }

    private Voice voice() {
        return Voice.of(boot.unit());
    }

    private static List<BootMeasure> needed() {
        return List.of(BootMeasure.values()).stream()
                .filter(m -> key(m).need().always())
                .toList();
    }

    private String sentence() {
        long there = needed().stream().filter(m -> boot.form().has(m.path())).count();
        if (there == needed().size()) {
            return boot.say("boots.all", Part.count(there));
        }
        return boot.say("boots.measured", Part.count(there), Part.count(needed().size()));
    }

    private ThingPage page() {
        Optional<BootMeasure> lacking =
                needed().stream().filter(m -> !boot.form().has(m.path())).findFirst();
        List<ThingPage.Press> presses = new ArrayList<>();
        lacking.ifPresent(m -> presses.add(new ThingPage.Press(boot.to(path(m)), boot.say(title(m)), true)));
        boot.asker().ifPresent(m -> presses.add(WearerPage.back(boot, m, presses.isEmpty())));
        MayCut says = new MayCut(
                lacking.isPresent() ? MayCut.Mark.WORKS : MayCut.Mark.HOLDS,
                sentence(),
                lacking.isPresent() ? say("boots.never") : "");
        return new ThingPage(
                Frame.plain("thing", boot.thing().name()),
                says,
                presses,
                Boots.of(kind(), voice()).svg("boot", "hands"),
                List.of(new ThingPage.Rows(say("things.measures"), say("boots.guards"), rows())),
                List.of(ask()),
                List.of());
    }

    private static Part title(BootMeasure measure) {
        return new Part.Capital(key(measure).label());
    }

    private List<ThingPage.Row> rows() {
        List<ThingPage.Row> out = new ArrayList<>();
        for (BootMeasure measure : BootMeasure.values()) {
            String written = boot.form().value(measure.path());
            OptionalDouble mm = Quantities.length(written, boot.unit());
            boolean needed = key(measure).need().always();
            String value = mm.isPresent() ? boot.say(Part.length(mm.getAsDouble())) : written;
            out.add(new ThingPage.Row(
                    boot.to(path(measure)),
                    boot.say(title(measure)),
                    written.isEmpty() ? say(needed ? "things.not-yet" : "boots.if-needed") : value,
                    written.isEmpty(),
                    "",
                    false));
        }
        return out;
    }

    private ThingPage.Ask ask() {
        List<Blank.Choice> ways = Table.keys().find("boot.dressing").orElseThrow().kind().words().stream()
                .map(w -> new Blank.Choice(w, w))
                .toList();
        return new ThingPage.Ask(
                say("boots.how"),
                List.of(),
                boot.to("/how"),
                boot.thing().now(),
                List.of(
                        Blank.text(
                                "boot.kind",
                                say("things.boot-kind"),
                                boot.form().value("boot.kind")),
                        Blank.pick(
                                "boot.dressing",
                                say("boots.dressing"),
                                boot.form().value("boot.dressing"),
                                ways),
                        Blank.pick("unit", say("things.unit"), boot.unit().symbol(), WearerPage.units())),
                say("things.keep"),
                false);
    }

    /** One measure with what was typed. */
    static ReadingPage reading(Held boot, BootMeasure measure, String typed, List<Finding> wrong) {
        return new BootPage(boot).reading(measure, typed, wrong);
    }

    private ReadingPage reading(BootMeasure measure, String typed, List<Finding> wrong) {
        BootMeasure[] all = BootMeasure.values();
        int at = measure.ordinal();
        boolean last = at + 1 == all.length;
        String next = last ? boot.to("") : boot.to(path(all[at + 1]));
        ReadingPage.Way way = new ReadingPage.Way(
                "/boots/" + boot.thing().id() + path(measure),
                boot.thing().now(),
                boot.askerId(),
                last
                        ? say("things.keep")
                        : boot.say("things.next", key(all[at + 1]).label()),
                next,
                at > 0 ? boot.to(path(all[at - 1])) : boot.to(""));
        BootGuide guide = BootGuide.of(measure.path());
        return new ReadingPage(
                Frame.plain("ask", boot.thing().name()),
                way,
                boot.say("things.where", Part.count(at + 1), Part.count(all.length)),
                boot.say(title(measure)),
                guide.how(),
                say("boots.guards"),
                List.of(Blank.number(
                        "reading", say("ask.reading"), typed, boot.unit().symbol())),
                Optional.empty(),
                List.of(Fold.of(say("boots.watch"), boot.say("things.wrong", Part.text(guide.wrong())))),
                fits(typed, wrong),
                boot.words(wrong),
                key(measure).need().always() ? say("boots.never") : "",
                Boots.of(measure, kind(), voice()).svg("boot", "hands"),
                "",
                "");
    }

    private Optional<MayCut> fits(String typed, List<Finding> wrong) {
        OptionalDouble mm = Quantities.length(typed, boot.unit());
        return mm.isPresent() && wrong.isEmpty()
                ? Optional.of(new MayCut(MayCut.Mark.HOLDS, boot.say("fits.takes", Part.length(mm.getAsDouble())), ""))
                : Optional.empty();
    }

    /** What the boot's text says with what was sent. */
    static Form changed(Held boot, BootMeasure measure, Form sent) {
        return boot.form().with(Map.of(measure.path(), sent.value("reading")));
    }

    private String say(String key) {
        return boot.say(Tell.said(key));
    }
}
