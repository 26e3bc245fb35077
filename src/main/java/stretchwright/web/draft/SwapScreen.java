package stretchwright.web.draft;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** The same make from another cloth, for another wearer, over another boot. */
public final class SwapScreen implements Screen {
    private static final List<Kind> KINDS = List.of(Kind.WEARER, Kind.FABRIC, Kind.BOOT);

    /** So many lie on a shelf of this page. */
    private static final int MOST = 200;

    private final Bench bench;

    public SwapScreen(Bench bench) {
        this.bench = bench;
    }

    /**
     * What can take its place.
     *
     * @param wrong why what was chosen cannot
     */
    public record Page(Frame frame, Opened make, String kind, String heading, List<Thing> things, List<String> wrong) {
        public Page {
            things = List.copyOf(things);
            wrong = List.copyOf(wrong);
        }

        public String say(String key) {
            return make.voice().say(Tell.said(key));
        }
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/makes/{id}/other/{kind}", ctx -> show(ctx, bench.make(ctx), List.of()));
        routes.post("/makes/{id}/other/{kind}", this::swap);
    }

    private static Kind kind(Context ctx) {
        return Kind.of(ctx.pathParam("kind")).filter(KINDS::contains).orElseThrow(NotFoundResponse::new);
    }

    private void show(Context ctx, Opened make, List<String> wrong) {
        Kind kind = kind(ctx);
        String heading = make.voice()
                .say(
                        switch (kind) {
                            case WEARER -> Tell.said("swap.wearer");
                            case FABRIC -> Tell.said("swap.cloth");
                            default -> Tell.said("swap.boot");
                        });
        List<Thing> things = bench.room().store().list(kind, Place.HERE, "", 0, MOST);
        Pages.show(
                ctx, "swap.jte", new Page(Frame.of(make, Frame.Stop.DRAFT), make, kind.word(), heading, things, wrong));
    }

    private void swap(Context ctx) {
        Opened make = bench.make(ctx);
        Form sent = new Form(Guard.form(ctx));
        Thing other = Optional.of(sent.value("thing"))
                .flatMap(bench.room().store()::thing)
                .filter(t -> t.kind() == kind(ctx) && t.place() == Place.HERE)
                .orElseThrow(NotFoundResponse::new);
        try {
            String text = bench.room().with(make.stored(), other);
            bench.tried(make, text).session().pattern();
            bench.save(ctx, make, sent.value("seen"), "change", text);
        } catch (BadInput e) {
            ctx.status(422);
            show(ctx, make, e.findings().stream().map(f -> f.told(make.voice())).toList());
        }
    }
}
