package stretchwright.web.draft;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
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
    /** Under which a form sends what it adds. */
    static final String DO = "do";

    /** Names the field that is typed in: emptied it does not arrive, and is as usual again. */
    private static final String OF = "of";

    /** Which drawing is looked at. */
    private static final String SHEET = "sheet";

    /** Fields of the form that are no keys of a make. */
    private static final List<String> OF_PAGE = List.of("seen", DO, OF, SHEET);

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
        routes.post("/makes/{id}/back", ctx -> stand(ctx, store()::earlier, "undo"));
        routes.post("/makes/{id}/forth", ctx -> stand(ctx, store()::later, "redo"));
        routes.post("/makes/{id}/stand", this::goTo);
        routes.post("/makes/{id}/keep", this::keep);
    }

    private Store store() {
        return bench.room().store();
    }

    private Thing seen(Context ctx) {
        return bench.thing(ctx, Kind.MAKE);
    }

    /** An earlier or later version stands; where there is none all stays, and where the press was meant for another one too. */
    private void stand(Context ctx, Function<Thing, Optional<Version>> which, String what) {
        Form sent = new Form(Guard.form(ctx));
        Thing now = seen(ctx);
        if (!sent.value("seen").isBlank() && !sent.value("seen").equals(Long.toString(now.now()))) {
            Opened make = bench.make(ctx);
            Finding late = new Finding(
                    make.name(),
                    "seen",
                    0,
                    Tell.said("draft.late"),
                    Said.NOTHING,
                    make.session().make().unit());
            ctx.status(HttpStatus.CONFLICT);
            Pages.show(ctx, "draft.jte", DraftPage.of(bench, make, "", new Refused(Form.empty(), List.of(late))));
            return;
        }
        which.apply(now).ifPresent(v -> store().stand(what, now, v.number()));
        ctx.redirect("/makes/" + now.id(), HttpStatus.SEE_OTHER);
    }

    private void goTo(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        String number = sent.value("number");
        Thing now = seen(ctx);
        Version version = Optional.of(number)
                .filter(n -> n.matches("[0-9]{1,12}"))
                .flatMap(n -> store().version(now.id(), Long.parseLong(n)))
                .orElseThrow(NotFoundResponse::new);
        Thing stands = store().stand("version", now, version.number());
        if (sent.value("keep").equals("yes")) {
            Kept.keep(store(), stands);
        }
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
    private static boolean stands(Opened make, Form form, String key, String value) {
        return Handle.of(key)
                .filter(h -> value.strip().equals(Control.shown(make, form, h)))
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
        Form form = Form.of(make.text());
        Map<String, String> changes = new LinkedHashMap<>();
        sent.typed().forEach((key, values) -> {
            if (!OF_PAGE.contains(key)
                    && Table.keys().find(key).isPresent()
                    && !stands(make, form, key, values.get(0))) {
                changes.put(key, Handle.of(key).isPresent() ? withUnit(make, values.get(0)) : values.get(0));
            }
        });
        Handle.of(sent.value(OF))
                .filter(h -> !sent.typed().containsKey(h.key()))
                .ifPresent(h -> changes.put(h.key(), ""));
        return form.with(changes).makeText();
    }

    private void tried(Context ctx) {
        Form sent = new Form(Guard.form(ctx));
        Opened make = bench.onScreen(bench.make(ctx), sent.value("seen"));
        try {
            Opened other = bench.tried(make, changed(make, sent));
            other.session().pattern();
            Pages.show(ctx, "draft.jte", DraftPage.tried(bench, make, other, DraftPage.Shown.of(sent.value(SHEET))));
        } catch (BadInput e) {
            refused(ctx, make, sent, e);
        }
    }

    private void change(Context ctx) {
        Opened now = bench.make(ctx);
        Form sent = new Form(Guard.form(ctx));
        Opened make = bench.onScreen(now, sent.value("seen"));
        try {
            String text = drafted(make, wanted(make, sent));
            if (Form.of(text).equals(Form.of(make.text())) || Form.of(text).equals(Form.of(now.text()))) {
                ctx.redirect(make.address(), HttpStatus.SEE_OTHER);
                return;
            }
            bench.save(ctx, now, sent.value("seen"), "change", text);
        } catch (BadInput e) {
            refused(ctx, make, sent, e);
        }
    }

    /** Texts that say what was asked for, the best first. */
    private static List<String> wanted(Opened make, Form sent) {
        return Addition.of(sent.value(DO))
                .map(a -> a.pressed(Form.of(make.text()), make.voice().say(Tell.said("addition.contrast"))).stream()
                        .map(Form::makeText)
                        .toList())
                .orElseGet(() -> List.of(changed(make, sent)));
    }

    /** The first that can be drafted; where none can, it is told of the first. */
    private String drafted(Opened make, List<String> texts) {
        for (String text : texts.subList(1, texts.size())) {
            if (!canBeDrafted(make, texts.get(0)) && canBeDrafted(make, text)) {
                return text;
            }
        }
        bench.tried(make, texts.get(0)).session().pattern();
        return texts.get(0);
    }

    private boolean canBeDrafted(Opened make, String text) {
        try {
            bench.tried(make, text).session().pattern();
            return true;
        } catch (BadInput e) {
            return false;
        }
    }

    /** The make as it stands, and why it stays so. */
    private void refused(Context ctx, Opened make, Form sent, BadInput e) {
        ctx.status(422);
        Pages.show(ctx, "draft.jte", DraftPage.of(bench, make, "", new Refused(sent, e.findings())));
    }
}
