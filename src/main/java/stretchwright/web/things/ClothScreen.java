package stretchwright.web.things;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.Cutting;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** Cloths: one test at a time. */
public final class ClothScreen implements Screen {
    private final Bench bench;

    public ClothScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/cloths/new", ctx -> Pages.show(ctx, "thing.jte", NewThing.cloth(Form.empty(), List.of())));
        routes.post("/cloths/new", ctx -> NewThing.add(bench, ctx, Kind.FABRIC, new Form(Guard.form(ctx))));
        routes.get("/cloths/{id}", ctx -> show(ctx, held(ctx, Held.asker(ctx)), List.of()));
        routes.post("/cloths/{id}/roll", ctx -> change(ctx, ClothScreen::roll));
        routes.post("/cloths/{id}/setting", ctx -> change(ctx, ClothScreen::setting));
        routes.post("/cloths/{id}/dye", this::dye);
        routes.post("/cloths/{id}/cut", this::cut);
        routes.get("/cloths/{id}/{test}", ctx -> reading(ctx, ClothReading.of(held(ctx, Held.asker(ctx)), test(ctx))));
        routes.post("/cloths/{id}/{test}/look", this::look);
        routes.post("/cloths/{id}/{test}", this::take);
    }

    private Held held(Context ctx, String asker) {
        return Held.of(bench, ctx, Kind.FABRIC, asker);
    }

    private static ClothTest test(Context ctx) {
        return ClothTest.at(ctx.pathParam("test")).orElseThrow(NotFoundResponse::new);
    }

    private static void show(Context ctx, Held cloth, List<String> wrong) {
        ThingPage page = ClothPage.of(cloth);
        Pages.show(
                ctx, "thing.jte", wrong.isEmpty() ? page : page.refused(ctx.path(), new Form(Guard.form(ctx)), wrong));
    }

    private static void reading(Context ctx, ReadingPage page) {
        Pages.show(ctx, "reading.jte", page);
    }

    /** The same page with what the readings that are being typed mean; nothing is stored. */
    private void look(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held cloth = held(ctx, sent.value("for"));
        ClothTest test = test(ctx);
        Form now = new ClothSent(test, cloth.unit()).changed(cloth.form(), sent);
        reading(ctx, ClothReading.of(cloth, test, sent, wrong(cloth, now)));
    }

    private void take(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held cloth = held(ctx, sent.value("for"));
        ClothTest test = test(ctx);
        Form now = new ClothSent(test, cloth.unit()).changed(cloth.form(), sent);
        List<Finding> wrong = wrong(cloth, now);
        if (wrong.isEmpty()) {
            try {
                cloth.save("test", now, sent.value("seen"));
                ctx.redirect(ClothReading.of(cloth, test).way().skip(), HttpStatus.SEE_OTHER);
                return;
            } catch (BadInput e) {
                wrong = e.findings();
            }
        }
        ctx.status(422);
        reading(ctx, ClothReading.of(cloth, test, sent, wrong));
    }

    /** What was not wrong before. */
    private static List<Finding> wrong(Held cloth, Form now) {
        List<Finding> found = ClothTrial.of(cloth, now).wrong();
        if (found.isEmpty()) {
            return found;
        }
        List<Finding> before = ClothTrial.of(cloth, cloth.form()).wrong();
        return found.stream().filter(f -> before.stream().noneMatch(f::equals)).toList();
    }

    /** What was sent as another text of the cloth. */
    private void change(Context ctx, Function<Change, Form> how) {
        Form sent = new Form(Guard.form(ctx));
        Held cloth = held(ctx, Held.asker(ctx));
        Form now = how.apply(new Change(cloth, sent));
        List<Finding> wrong = wrong(cloth, now);
        if (wrong.isEmpty()) {
            try {
                cloth.save("change", now, sent.value("seen"));
                ctx.redirect(cloth.to(""), HttpStatus.SEE_OTHER);
                return;
            } catch (BadInput e) {
                wrong = e.findings();
            }
        }
        ctx.status(422);
        show(ctx, cloth, cloth.words(wrong));
    }

    private record Change(Held cloth, Form sent) {}

    private static Form roll(Change change) {
        Map<String, String> values = new LinkedHashMap<>();
        ClothPage.ROLL.forEach(k -> values.put("fabric." + k, change.sent.value("fabric." + k)));
        return change.cloth.form().with(values);
    }

    /** Added, or in place of what was kept for the same stitch. */
    private static Form setting(Change change) {
        Form form = change.cloth.form();
        int place = 1;
        while (form.has("fabric.settings." + place)
                && !form.value("fabric.settings." + place + ".stitch").equals(change.sent.value("stitch"))) {
            place++;
        }
        Map<String, String> values = new LinkedHashMap<>();
        for (String key : List.of("stitch", "stitch length", "needle", "note")) {
            values.put("fabric.settings." + place + "." + key, change.sent.value(key));
        }
        return form.with(values);
    }

    private void dye(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held cloth = held(ctx, Held.asker(ctx));
        if (!Dye.is(sent.value("dye"))) {
            ctx.status(422);
            show(ctx, cloth, List.of(Held.plain("cloth.no-dye")));
            return;
        }
        Dye.keep(cloth, sent.value("dye"));
        ctx.redirect(cloth.to(""), HttpStatus.SEE_OTHER);
    }

    /** The cloth falls by what the lay of a make used, and what is left over comes back as remnants. */
    private void cut(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Held cloth = held(ctx, Held.asker(ctx));
        Workroom room = bench.room();
        Thing make = room.store()
                .thing(sent.value("make"))
                .filter(t -> t.kind() == Kind.MAKE && t.place() == Place.HERE)
                .filter(t -> t.links().fabric().equals(cloth.thing().id()))
                .orElseThrow(NotFoundResponse::new);
        try {
            Workroom.Stored stored = new Workroom.Stored(make, room.standing(make));
            Cutting.Cut cut = bench.heavy(() -> new Cutting(room, stored).run(false));
            boolean there = cut.cloth()
                    .flatMap(c -> room.store().thing(c.id()))
                    .filter(c -> c.place() == Place.HERE)
                    .isPresent();
            ctx.redirect(there ? cloth.to("") : "/", HttpStatus.SEE_OTHER); // a remnant that is used up lies in the bin
        } catch (BadInput e) {
            ctx.status(422);
            show(ctx, cloth, cloth.words(e.findings()));
        }
    }
}
