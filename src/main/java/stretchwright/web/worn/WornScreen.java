package stretchwright.web.worn;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Said;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Table;
import stretchwright.intake.WearingSymptom;
import stretchwright.make.Make;
import stretchwright.wearing.FirstWorn;
import stretchwright.wearing.Wearing;
import stretchwright.wearing.WearingLines;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.Kept;
import stretchwright.workroom.store.Thing;

/** After wearing: what it did, one question where two cures are opposite, one change. */
public final class WornScreen implements Screen {
    private static final List<String> ANSWERS = List.of("yes", "no");

    private final Bench bench;

    public WornScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/makes/{id}/worn", this::ask);
        routes.post("/makes/{id}/worn", this::make);
        routes.post("/makes/{id}/worn/marks", this::marks);
    }

    private static void show(Context ctx, WornPage page) {
        Pages.show(ctx, "worn.jte", page);
    }

    private void ask(Context ctx) {
        Opened make = bench.make(ctx);
        String what = Optional.ofNullable(ctx.queryParam("what")).orElse("");
        if (what.isEmpty()) {
            show(ctx, WornPage.of(make));
            return;
        }
        String answer = Optional.ofNullable(ctx.queryParam("answer")).orElse("");
        show(ctx, page(make, symptom(what), answer));
    }

    private static WearingSymptom symptom(String what) {
        return WearingSymptom.of(what).orElseThrow(NotFoundResponse::new);
    }

    private WornPage page(Opened make, WearingSymptom symptom, String answer) {
        Optional<Said> question = Wearing.question(symptom.word());
        if (question.isPresent() && !ANSWERS.contains(answer)) {
            return WornPage.of(make).asking(symptom, question.get());
        }
        String given = question.isPresent() ? answer : "";
        return WornPage.of(make).with(symptom, given, bench.heavy(() -> Cured.of(bench, make, symptom, given)));
    }

    private Opened own(Context ctx) {
        Opened make = bench.make(ctx);
        if (make.demo()) {
            throw new NotFoundResponse();
        }
        return make;
    }

    /** The change is made and kept as the next version. */
    private void make(Context ctx) {
        Opened make = own(ctx);
        Form sent = new Form(Guard.form(ctx));
        WornPage page = page(make, symptom(sent.value("what")), sent.value("answer"));
        Optional<String> text = page.cure().flatMap(Cured::text);
        if (text.isEmpty()) {
            ctx.status(422);
            show(ctx, page);
            return;
        }
        try {
            keep(ctx, make, sent.value("seen"), text.get());
        } catch (BadInput e) {
            ctx.status(422);
            show(ctx, page.with(Form.empty(), List.of(), words(make, e.findings())));
        }
    }

    private void keep(Context ctx, Opened make, String seen, String text) {
        Optional<Thing> now = bench.saved(ctx, make, seen, "after", text);
        if (now.isPresent()) {
            Kept.keep(bench.room().store(), now.get());
            ctx.redirect(make.address(), HttpStatus.SEE_OTHER);
        }
    }

    private static List<String> words(Opened make, List<Finding> findings) {
        return findings.stream().map(f -> f.told(make.voice())).distinct().toList();
    }

    /** What marks on a first pair teach; asked for, the make keeps it. */
    private void marks(Context ctx) {
        Opened make = own(ctx);
        Form sent = new Form(Guard.form(ctx));
        Findings findings = new Findings("worn");
        try {
            Optional<FirstWorn> worn = FirstWorn.of(marked(make, sent), findings);
            Optional<String> text = worn.flatMap(w -> w.written(make.text(), findings));
            if (text.isPresent() && sent.value("do").equals("keep")) {
                keep(ctx, make, sent.value("seen"), text.get());
                return;
            }
            List<String> taught = worn.map(w -> WearingLines.of(w, make.voice())).orElse(List.of()).stream()
                    .map(Cured::line)
                    .toList();
            ctx.status(text.isPresent() ? 200 : 422);
            show(ctx, WornPage.of(make).with(sent, taught, words(make, findings.all())));
        } catch (BadInput e) {
            ctx.status(422);
            show(ctx, WornPage.of(make).with(sent, List.of(), words(make, e.findings())));
        }
    }

    /** The make with what was read of its first pair. */
    private static MakeFile marked(Opened make, Form sent) {
        Map<String, String> values = new LinkedHashMap<>();
        sent.typed().forEach((key, typed) -> {
            if (key.startsWith("first pair.") && Table.keys().find(key).isPresent()) {
                values.put(key, typed.get(0));
            }
        });
        String text = Form.of(make.text()).with(values).makeText();
        return Make.read(make.name(), text.getBytes(StandardCharsets.UTF_8));
    }
}
