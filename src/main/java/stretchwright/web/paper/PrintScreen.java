package stretchwright.web.paper;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.print.kit.FileGroup;
import stretchwright.print.kit.PdfPages;
import stretchwright.print.sheets.SheetMap;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;

/** The pattern on paper: which paper, which of its sheets, one press; all other files below. */
public final class PrintScreen implements Screen {
    private static final String SHEETS = "sheet";
    private static final Set<String> ANSWERS = Set.of("yes", "smaller", "larger");

    /** Keys of the make that this screen changes. */
    private static final List<String> KEYS = List.of("print.paper", "print.margin", "print.overlap");

    private final Bench bench;

    public PrintScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/makes/{id}/print", this::show);
        routes.post("/makes/{id}/print", this::print);
        routes.post("/makes/{id}/print/paper", this::paper);
        routes.get("/makes/{id}/print/{name}", this::sheets);
    }

    private void show(Context ctx) {
        Opened make = bench.make(ctx);
        String only = Optional.ofNullable(ctx.queryParam("only")).orElse("");
        show(ctx, make, Optional.empty(), only, typed(make), List.of());
    }

    private static Form typed(Opened make) {
        return Form.of(make.text());
    }

    private void show(
            Context ctx, Opened make, Optional<List<String>> names, String only, Form typed, List<String> wrong) {
        String said = Optional.ofNullable(ctx.queryParam("square"))
                .filter(ANSWERS::contains)
                .orElse("");
        Pages.show(ctx, "print.jte", bench.heavy(() -> {
            SheetMap map = make.session().sheets();
            Printed printed = Printed.of(bench, make);
            return new PrintPage(
                    Frame.of(make, Frame.Stop.PRINT),
                    make,
                    MayCut.of(make.session(), make.voice()),
                    map,
                    names.map(n -> Chosen.of(map, n)).orElseGet(() -> Chosen.asked(map, printed, only)),
                    printed,
                    pattern(make).pages(),
                    said,
                    typed,
                    wrong,
                    FileList.of(make));
        }));
    }

    /** The pattern on the paper of the make. */
    private static Document pattern(Opened make) {
        String name = make.session().printables().stream()
                .filter(p -> p.group() == FileGroup.PATTERN && p.name().endsWith(".pdf"))
                .findFirst()
                .orElseThrow()
                .name();
        return make.session().document(name).orElseThrow();
    }

    /** Remembers what is printed, and leads to the pages. What was ticked on sheets that are others now is asked again. */
    private void print(Context ctx) {
        Opened make = bench.make(ctx);
        Map<String, List<String>> sent = Guard.form(ctx);
        List<String> names = sent.containsKey("first")
                ? List.of(Chosen.FIRST)
                : new ArrayList<>(sent.getOrDefault(SHEETS, List.of()));
        SheetMap map = bench.heavy(() -> make.session().sheets());
        boolean stale = !sent.getOrDefault("seen", List.of("")).get(0).equals(Long.toString(make.seen()));
        Chosen chosen = Chosen.of(map, names);
        if (stale || Chosen.unknown(map, names)) {
            refused(ctx, make, 409, names, "print.changed-meanwhile");
        } else if (chosen.isNothing()) {
            refused(ctx, make, 422, names, "print.none");
        } else {
            String file = bench.heavy(() -> pattern(make).name());
            Printed.remember(bench, make, map, chosen.sheets());
            ctx.redirect(make.address() + "/print/" + file + "?sheets=" + chosen.query(), HttpStatus.SEE_OTHER);
        }
    }

    private void refused(Context ctx, Opened make, int status, List<String> names, String why) {
        ctx.status(status);
        show(
                ctx,
                make,
                Optional.of(names),
                "",
                typed(make),
                List.of(make.voice().say(Tell.said(why))));
    }

    /** Those pages alone, to be opened in the browser. */
    private void sheets(Context ctx) {
        Opened make = bench.make(ctx);
        List<String> names =
                List.of(Optional.ofNullable(ctx.queryParam("sheets")).orElse("").split(","));
        Document pages = bench.heavy(() -> {
            SheetMap map = make.session().sheets();
            Document whole = pattern(make);
            Chosen chosen = Chosen.of(map, names);
            if (!ctx.pathParam("name").equals(whole.name()) || Chosen.unknown(map, names) || chosen.isNothing()) {
                throw new NotFoundResponse();
            }
            return PdfPages.only(whole, chosen.pages(map, whole.pages()));
        });
        ctx.header("Content-Disposition", "inline; filename=\"" + pages.name() + "\"");
        ctx.contentType("application/pdf").result(pages.bytes());
    }

    private void paper(Context ctx) {
        Opened make = bench.make(ctx);
        if (make.demo()) {
            throw new NotFoundResponse();
        }
        Form sent = new Form(Guard.form(ctx));
        Form changed = typed(make).with(changes(sent));
        try {
            bench.tried(make, changed.makeText()).session().sheets();
            bench.saved(ctx, make, sent.value("seen"), "paper", changed.makeText())
                    .ifPresent(t -> ctx.redirect(make.address() + "/print", HttpStatus.SEE_OTHER));
        } catch (BadInput e) {
            ctx.status(422);
            List<String> wrong =
                    e.findings().stream().map(f -> f.told(make.voice())).toList();
            show(ctx, make, Optional.empty(), "", changed, wrong);
        }
    }

    /** A paper by its name; or all that is filled in beside, where what is left empty is as usual. */
    private static Map<String, String> changes(Form sent) {
        Map<String, String> changes = new LinkedHashMap<>();
        KEYS.stream().filter(k -> sent.has(k) || sent.has("other")).forEach(k -> changes.put(k, sent.value(k)));
        return changes;
    }
}
