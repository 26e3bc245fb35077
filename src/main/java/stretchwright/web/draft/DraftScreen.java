package stretchwright.web.draft;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.ground.Quantities;
import stretchwright.intake.Table;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.Kept;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;
import stretchwright.workroom.store.Version;

/** A make on the table: what is pressed or dragged is tried, and kept as a version. */
public final class DraftScreen implements Screen {
    /** Names the field that is typed in: emptied it does not arrive, and is as usual again. */
    private static final String OF = "of";

    /** Fields of the form that are no keys of a make. */
    private static final List<String> OF_PAGE = List.of("seen", "do", OF);

    private final Bench bench;

    public DraftScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/makes/{id}", this::show);
        routes.post("/makes/{id}/try", this::tried);
        routes.post("/makes/{id}/change", this::change);
        routes.get("/makes/{id}/remedies", ctx -> {
            Opened make = bench.make(ctx);
            Pages.show(ctx, "remedies.jte", bench.heavy(() -> RemediesPage.of(make)));
        });
        routes.get(
                "/makes/{id}/versions",
                ctx -> Pages.show(ctx, "versions.jte", VersionsPage.of(bench, bench.make(ctx))));
        routes.post("/makes/{id}/back", ctx -> stand(ctx, store().earlier(seen(ctx)), "undo"));
        routes.post("/makes/{id}/forth", ctx -> stand(ctx, store().later(seen(ctx)), "redo"));
        routes.post("/makes/{id}/stand", this::goTo);
        routes.post("/makes/{id}/keep", this::keep);
    }

    private Store store() {
        return bench.room().store();
    }

    private Thing seen(Context ctx) {
        return bench.thing(ctx, Kind.MAKE);
    }

    /** An earlier or later version stands; where there is none all stays. */
    private void stand(Context ctx, Optional<Version> version, String what) {
        Guard.form(ctx);
        Thing now = seen(ctx);
        version.ifPresent(v -> store().stand(what, now, v.number()));
        ctx.redirect("/makes/" + now.id(), HttpStatus.SEE_OTHER);
    }

    private void goTo(Context ctx) {
        String number = new Form(Guard.form(ctx)).value("number");
        Thing now = seen(ctx);
        Version version = Optional.of(number)
                .filter(n -> n.matches("[0-9]{1,12}"))
                .flatMap(n -> store().version(now.id(), Long.parseLong(n)))
                .orElseThrow(NotFoundResponse::new);
        store().stand("version", now, version.number());
        ctx.redirect("/makes/" + now.id(), HttpStatus.SEE_OTHER);
    }

    private void keep(Context ctx) {
        Guard.form(ctx);
        Thing now = seen(ctx);
        Kept.keep(store(), now);
        ctx.redirect("/makes/" + now.id(), HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx) {
        String why = Optional.ofNullable(ctx.queryParam("why")).orElse("");
        Pages.show(ctx, "draft.jte", DraftPage.of(bench, bench.make(ctx), why, Refused.NOTHING));
    }

    /** Whether a field was sent as it was shown: nothing is asked for then. */
    private static boolean stands(Opened make, String key, String value) {
        return Handle.of(key)
                .filter(h -> value.strip().equals(Control.shown(make, h)))
                .isPresent();
    }

    /** The unit stands beside the field: a number in it is never of a doubtful unit. */
    private static String withUnit(Opened make, String typed) {
        return Quantities.number(typed).isPresent()
                ? typed.strip() + " " + make.session().make().unit().symbol()
                : typed;
    }

    /** The text of the make with the sent values in it. */
    private static String changed(Opened make, Form sent) {
        Map<String, String> changes = new LinkedHashMap<>();
        sent.typed().forEach((key, values) -> {
            if (!OF_PAGE.contains(key) && Table.keys().find(key).isPresent() && !stands(make, key, values.get(0))) {
                changes.put(key, Handle.of(key).isPresent() ? withUnit(make, values.get(0)) : values.get(0));
            }
        });
        Handle.of(sent.value(OF))
                .filter(h -> !sent.typed().containsKey(h.key()))
                .ifPresent(h -> changes.put(h.key(), ""));
        return Form.of(make.text()).with(changes).makeText();
    }

    private void tried(Context ctx) {
        Opened make = bench.make(ctx);
        Form sent = new Form(Guard.form(ctx));
        try {
            Opened other = bench.tried(make, changed(make, sent));
            other.session().pattern();
            Pages.show(ctx, "draft.jte", DraftPage.tried(bench, make, other));
        } catch (BadInput e) {
            refused(ctx, make, sent, e);
        }
    }

    private void change(Context ctx) {
        Opened make = bench.make(ctx);
        Form sent = new Form(Guard.form(ctx));
        try {
            String text = changed(make, sent);
            if (Form.of(text).equals(Form.of(make.text()))) {
                ctx.redirect(make.address(), HttpStatus.SEE_OTHER);
                return;
            }
            bench.tried(make, text).session().pattern();
            bench.save(ctx, make, sent.value("seen"), "change", text);
        } catch (BadInput e) {
            refused(ctx, make, sent, e);
        }
    }

    /** The make as it stands, and why it stays so. */
    private void refused(Context ctx, Opened make, Form sent, BadInput e) {
        ctx.status(422);
        Pages.show(ctx, "draft.jte", DraftPage.of(bench, make, "", new Refused(sent, e.findings())));
    }
}
