package stretchwright.web.draft;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Unit;
import stretchwright.intake.Table;
import stretchwright.make.Make;
import stretchwright.make.Session;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.form.FormPage;
import stretchwright.web.form.Strangers;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.Incoming;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Thing;

/** Every option of a make on one page. */
public final class AllScreen implements Screen {
    private final Bench bench;

    public AllScreen(Bench bench) {
        this.bench = bench;
    }

    /** A form, and what stands around it. */
    public record Page(Frame frame, FormPage form, String address, long seen) {}

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/all", ctx -> show(ctx, fresh(Form.empty(), List.of())));
        routes.post("/all", this::make);
        routes.post("/all/more", ctx -> show(ctx, fresh(another(ctx), List.of())));
        routes.get("/makes/{id}/all", ctx -> {
            Opened make = bench.make(ctx);
            show(ctx, page(make, Form.of(make.text()), List.of()));
        });
        routes.post("/makes/{id}/all", this::change);
        routes.post("/makes/{id}/all/more", ctx -> show(ctx, page(bench.make(ctx), another(ctx), List.of())));
    }

    private static void show(Context ctx, Page page) {
        Pages.show(ctx, "all.jte", page);
    }

    private static Page fresh(Form form, List<Finding> findings) {
        Frame frame = Frame.plain("all", FormPage.said("form.heading"));
        return new Page(frame, new FormPage(form, findings), "/all", 0);
    }

    private static Page page(Opened make, Form form, List<Finding> findings) {
        return new Page(
                Frame.of(make, Frame.Stop.DRAFT), new FormPage(form, findings), make.address() + "/all", make.seen());
    }

    /** The form again, with a free place more in its lists. */
    private static Form another(Context ctx) {
        return Form.sent(Guard.form(ctx));
    }

    private void make(Context ctx) {
        Form form = Form.sent(Guard.form(ctx));
        try {
            String text = text(form);
            mustBeFree(form.value("name"));
            Thing made = bench.room()
                    .incoming("form", text.getBytes(StandardCharsets.UTF_8))
                    .take(Incoming.Same.BESIDE);
            ctx.redirect("/makes/" + made.id(), HttpStatus.SEE_OTHER);
        } catch (BadInput e) {
            ctx.status(422);
            show(ctx, fresh(form, e.findings()));
        }
    }

    /** Under a name that hangs there already another make would never be seen. */
    private void mustBeFree(String name) {
        if (bench.room().store().named(Kind.MAKE, name).isPresent()) {
            Finding taken =
                    new Finding("form", "name", 0, Tell.said("all.taken"), Tell.said("all.taken-help"), Unit.CM);
            throw new BadInput(List.of(taken));
        }
    }

    private void change(Context ctx) {
        Opened make = bench.make(ctx);
        Form form = Form.sent(Guard.form(ctx));
        try {
            bench.save(ctx, make, form.value("seen"), "change", text(form));
        } catch (BadInput e) {
            ctx.status(422);
            show(ctx, page(make, form, e.findings()));
        }
    }

    /** What the form says as the text of a make that can be drafted; everything that is wrong with either. */
    private String text(Form form) {
        String text = form.makeText();
        List<Finding> wrong = new ArrayList<>(Strangers.in(form, Table.keys()));
        try {
            Session session = Session.of(Make.read("form", text.getBytes(StandardCharsets.UTF_8)));
            if (wrong.isEmpty()) {
                bench.heavy(() -> List.of(session.pattern(), session.sewing(), session.lays()));
                return text;
            }
        } catch (BadInput e) {
            wrong.addAll(e.findings());
        }
        throw new BadInput(wrong);
    }
}
