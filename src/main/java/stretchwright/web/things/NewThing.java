package stretchwright.web.things;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.web.form.Form;
import stretchwright.web.form.Trial;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Pages;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Saved;
import stretchwright.workroom.store.Thing;

/** A wearer, cloth or boot of which nothing is known yet but its name. */
final class NewThing {
    private NewThing() {}

    static ThingPage wearer(Form sent, List<String> wrong) {
        return page(
                "things.new-wearer",
                "/wearers/new",
                wrong,
                List.of(
                        Blank.text("name", say("ask.name"), sent.value("name")),
                        Blank.pick(
                                "wearer.figure",
                                say("ask.figure"),
                                sent.value("wearer.figure"),
                                List.of(
                                        new Blank.Choice("woman", say("ask.woman")),
                                        new Blank.Choice("man", say("ask.man")),
                                        new Blank.Choice("child", say("ask.child")))),
                        Blank.number("wearer.age", say("ask.age"), sent.value("wearer.age"), ""),
                        unit(sent)));
    }

    static ThingPage cloth(Form sent, List<String> wrong) {
        return page(
                "things.new-cloth",
                "/cloths/new",
                wrong,
                List.of(
                        Blank.text("name", say("ask.name"), sent.value("name")),
                        Blank.number("fabric.usable width", say("things.width"), sent.value("fabric.usable width"), ""),
                        unit(sent)));
    }

    static ThingPage boot(Form sent, List<String> wrong) {
        return page(
                "things.new-boot",
                "/boots/new",
                wrong,
                List.of(
                        Blank.text("name", say("things.whose-boot"), sent.value("name")),
                        Blank.text("boot.kind", say("things.boot-kind"), sent.value("boot.kind")),
                        unit(sent)));
    }

    private static Blank unit(Form sent) {
        return Blank.pick("unit", say("ask.unit"), sent.value("unit"), WearerPage.units());
    }

    private static ThingPage page(String title, String action, List<String> wrong, List<Blank> blanks) {
        ThingPage.Ask ask = new ThingPage.Ask(say(title), List.of(), action, 0, blanks, say("things.begin"), false);
        return new ThingPage(
                Frame.plain("thing new", say(title)),
                new MayCut(MayCut.Mark.WORKS, say(title), say("things.new-how")),
                List.of(),
                "",
                List.of(),
                List.of(ask),
                wrong);
    }

    /** Stored and shown, or the same page with what is wrong. */
    static void add(Bench bench, Context ctx, Kind kind, Form sent) {
        try {
            Thing made = made(bench, kind, sent);
            String shelf = kind == Kind.WEARER ? "/wearers/" : kind == Kind.FABRIC ? "/cloths/" : "/boots/";
            ctx.redirect(shelf + made.id(), HttpStatus.SEE_OTHER);
        } catch (BadInput e) {
            List<String> wrong = e.findings().stream()
                    .map(f -> f.told(Voice.of(f.unit())))
                    .distinct()
                    .toList();
            ctx.status(422);
            Pages.show(
                    ctx,
                    "thing.jte",
                    kind == Kind.WEARER
                            ? wearer(sent, wrong)
                            : kind == Kind.FABRIC ? cloth(sent, wrong) : boot(sent, wrong));
        }
    }

    private static Thing made(Bench bench, Kind kind, Form sent) {
        String name = name(kind, sent);
        if (sent.value("name").isBlank()) {
            throw wrong(Tell.said("things.nameless"));
        }
        if (bench.room().store().named(kind, name).isPresent()) {
            throw wrong(Tell.said("things.taken"));
        }
        Map<String, String> values =
                new LinkedHashMap<>(Map.of("unit", sent.value("unit").equals("in") ? "in" : "cm"));
        sent.typed().forEach((key, typed) -> {
            if (key.startsWith(kind.word() + ".")) {
                values.put(key, typed.get(0));
            }
        });
        if (kind != Kind.BOOT) {
            values.put(kind.word() + ".name", name);
        } else if (sent.value("boot.kind").isBlank()) {
            values.put("boot.kind", say("things.boot"));
        }
        Form form = Form.empty().with(values);
        if (kind == Kind.WEARER
                && values.getOrDefault("wearer.figure", "").equals("child")
                && sent.value("wearer.age").isBlank()) {
            throw wrong(Tell.said("things.child-age"));
        }
        List<Finding> found = Trial.wrong(form, List.copyOf(values.keySet()));
        if (!found.isEmpty()) {
            throw new BadInput(found);
        }
        Edit edit = Edit.fresh(kind, name, bench.room().own(kind, form.makeText()), Links.NONE);
        return ((Saved.Stored) bench.room().store().save("new", List.of(edit)).get(0)).thing();
    }

    /** A boot is called by its kind and whose it is. */
    private static String name(Kind kind, Form sent) {
        String plain = sent.value("name").strip();
        String boot = sent.value("boot.kind").isBlank()
                ? say("things.boot")
                : sent.value("boot.kind").strip();
        return kind == Kind.BOOT ? boot + ", " + plain : plain;
    }

    private static BadInput wrong(Said wrong) {
        return new BadInput(List.of(new Finding("new", "", 0, wrong, Said.NOTHING, Unit.CM)));
    }

    private static String say(String key) {
        return Held.plain(key);
    }
}
