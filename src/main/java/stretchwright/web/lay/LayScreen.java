package stretchwright.web.lay;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.sse.SseHandler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.lay.Lay;
import stretchwright.lay.Placed;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.jobs.Jobs;
import stretchwright.workroom.jobs.KeptLays;
import stretchwright.workroom.jobs.PieceSearch;

/** The lay of a make: looked at, searched on as a job, put by hand. */
public final class LayScreen implements Screen, AutoCloseable {
    private static final String WAY = "style.lay.way";

    private final Bench bench;
    private final Jobs jobs;
    private final LayEvents events;

    public LayScreen(Bench bench) {
        this.bench = bench;
        this.jobs = Jobs.open(bench.room().store().database());
        this.events = new LayEvents(jobs);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/makes/{id}/lay", this::show);
        routes.post("/makes/{id}/lay", this::pressed);
        routes.post("/makes/{id}/lay/cloth", this::cloth);
        routes.get("/makes/{id}/lay/events", this::events);
    }

    /** What is wrong with the address is told before anything is promised. */
    private void events(Context ctx) {
        Opened make = bench.make(ctx);
        int cloth = cloth(make, ctx.queryParam("cloth"));
        new SseHandler(client -> events.add(client, make, cloth)).handle(ctx);
    }

    @Override
    public void close() {
        events.close();
    }

    private void show(Context ctx) {
        Opened make = bench.make(ctx);
        int cloth = cloth(make, ctx.queryParam("cloth"));
        String piece = Objects.requireNonNullElse(ctx.queryParam("piece"), "");
        show(ctx, make, cloth, List.of(), table -> {
            boolean there = Placed.of(table.standing().lay())
                    .strangers(java.util.Set.of(piece))
                    .isEmpty();
            return Touched.none(cloth, there ? piece : "");
        });
    }

    private interface Hand {
        Touched on(Table table);
    }

    private void show(Context ctx, Opened make, int cloth, List<String> wrong, Hand hand) {
        show(ctx, make, cloth, wrong, Form.empty(), hand);
    }

    private void show(Context ctx, Opened make, int cloth, List<String> wrong, Form ofCloth, Hand hand) {
        Pages.show(ctx, "lay.jte", bench.heavy(() -> {
            Table table = table(make, cloth);
            return LayPage.of(table, hand.on(table), ofCloth, wrong);
        }));
    }

    private Table table(Opened make, int cloth) {
        Optional<Placed> kept = make.demo()
                ? Optional.empty()
                : Optional.ofNullable(
                        KeptLays.of(bench.room().store(), make.id()).get(cloth));
        return Table.of(make, cloth, search(make, cloth), kept);
    }

    private Optional<PieceSearch> search(Opened make, int cloth) {
        return make.demo() ? Optional.empty() : PieceSearch.newest(jobs, make.id(), cloth);
    }

    /** Which of the make's cloths. */
    private static int cloth(Opened make, @org.jspecify.annotations.Nullable String number) {
        if (number == null || number.isEmpty()) {
            return 0;
        }
        int contrasts = make.session().make().contrasts().size();
        if (!number.matches("[0-9]{1,2}") || Integer.parseInt(number) > contrasts) {
            throw new NotFoundResponse();
        }
        return Integer.parseInt(number);
    }

    private void pressed(Context ctx) {
        Opened make = bench.make(ctx);
        Map<String, List<String>> form = Guard.form(ctx);
        String what = new Form(form).value("do");
        int cloth = cloth(make, new Form(form).value("cloth"));
        try {
            if (bench.heavy(() -> done(what, make, cloth, form))) {
                ctx.redirect(make.address() + "/lay" + (cloth == 0 ? "" : "?cloth=" + cloth), HttpStatus.SEE_OTHER);
                return;
            }
            show(
                    ctx,
                    make,
                    cloth,
                    List.of(),
                    table -> touched(table, form)
                            .done(
                                    what,
                                    form,
                                    table.standing().lay(),
                                    s -> table.turned(table.shown(touched(table, form)), s)));
        } catch (Touched.Refused e) {
            ctx.status(422);
            show(ctx, make, cloth, List.of(make.voice().say(e.why())), table -> asBefore(table, form));
        }
    }

    private static Touched touched(Table table, Map<String, List<String>> form) {
        Touched touched = Touched.of(form, table.cloth(), table.standing().lay());
        touched.placed().ifPresent(table::tried);
        return touched;
    }

    /** What was sent, as far as it can be shown. */
    private static Touched asBefore(Table table, Map<String, List<String>> form) {
        try {
            return touched(table, form);
        } catch (Touched.Refused e) {
            return Touched.none(table.cloth(), "");
        }
    }

    /** False where nothing was stored: then the page comes with what was done. */
    private boolean done(String what, Opened make, int cloth, Map<String, List<String>> form) {
        boolean stores = List.of("search", "stop", "keep", "usual").contains(what);
        if (stores && make.demo()) {
            throw new Touched.Refused("lay.demo");
        }
        switch (what) {
            case "search" -> search(make, cloth, form);
            case "stop" -> stop(make, cloth, new Form(form).value("job"));
            case "keep" -> keep(make, cloth, touched(table(make, cloth), form));
            case "usual" -> {
                over(make, cloth);
                KeptLays.drop(bench.room().store(), make.id(), cloth);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private void search(Opened make, int cloth, Map<String, List<String>> form) {
        Table table = table(make, cloth);
        if (table.search().filter(s -> !s.over()).isPresent()) {
            return;
        }
        Touched touched = touched(table, form);
        if (touched.placed().isEmpty() && table.standing().lay().shortest()) {
            throw new Touched.Refused("lay.none-shorter");
        }
        touched.placed().ifPresent(p -> keep(make, cloth, touched));
        Placed from =
                touched.placed().orElseGet(() -> Placed.of(table.standing().lay()));
        boolean hand = touched.touched();
        PieceSearch.ask(jobs, make.name(), make.id(), make.text(), cloth, from.byHand(hand), touched.pinned());
    }

    private void stop(Opened make, int cloth, String job) {
        Optional<PieceSearch> search =
                search(make, cloth).filter(s -> !s.over() && s.job().id().equals(job));
        if (search.isEmpty() || !jobs.cancel(job)) {
            throw new Touched.Refused("lay.search-gone");
        }
        Table table = table(make, cloth);
        search(make, cloth)
                .flatMap(PieceSearch::best)
                .filter(p -> table.laid()
                        .tried(p)
                        .filter(t -> shorter(t.lay(), table.standing().lay()) && t.holds())
                        .isPresent())
                .ifPresent(p -> KeptLays.keep(bench.room().store(), make.id(), cloth, p));
    }

    private static boolean shorter(Lay one, Lay other) {
        return one.length() < other.length();
    }

    private void keep(Opened make, int cloth, Touched touched) {
        Placed placed = touched.placed().orElseThrow(() -> new Touched.Refused("lay.nothing-moved"));
        if (!table(make, cloth).tried(placed).holds()) {
            throw new Touched.Refused("lay.does-not-hold");
        }
        over(make, cloth);
        KeptLays.keep(bench.room().store(), make.id(), cloth, placed);
    }

    /** A search for what is no longer wanted. */
    private void over(Opened make, int cloth) {
        search(make, cloth)
                .filter(s -> !s.over())
                .ifPresent(s -> jobs.cancel(s.job().id()));
    }

    /** What is told of the cloth, and how it is to lie: keys of the make, stored as a version. */
    private void cloth(Context ctx) {
        Opened make = bench.make(ctx);
        Form sent = new Form(Guard.form(ctx));
        try {
            if (make.demo()) {
                throw new Touched.Refused("lay.demo");
            }
            String text = changed(make, sent);
            bench.heavy(() -> bench.tried(make, text).session().lays());
            bench.saved(ctx, make, sent.value("seen"), sent.value("do"), text)
                    .ifPresent(t -> ctx.redirect(make.address() + "/lay", HttpStatus.SEE_OTHER));
        } catch (Touched.Refused e) {
            refused(ctx, make, sent, List.of(make.voice().say(e.why())));
        } catch (BadInput e) {
            refused(
                    ctx,
                    make,
                    sent,
                    e.findings().stream().map(f -> f.told(make.voice())).toList());
        }
    }

    private static String changed(Opened make, Form sent) {
        return switch (sent.value("do")) {
            case "flaw" -> OwnCloth.with(make.text(), sent);
            case "no-flaw" -> OwnCloth.without(make.text(), sent.value("flaw"));
            case "outline" -> OwnCloth.outlined(make.text(), sent.value("outline"));
            case "way" -> {
                Map<String, String> way = new LinkedHashMap<>();
                way.put("style.lay", "");
                way.put(WAY, sent.value("way"));
                yield Form.of(make.text()).with(way).makeText();
            }
            default -> throw new Touched.Refused("lay.not-read");
        };
    }

    private void refused(Context ctx, Opened make, Form sent, List<String> wrong) {
        ctx.status(422);
        show(ctx, make, 0, wrong, sent, table -> Touched.none(0, ""));
    }
}
