package stretchwright.web.ask;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.web.door.Guard;
import stretchwright.web.form.Form;
import stretchwright.web.form.Trial;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Pages;
import stretchwright.web.frame.Screen;
import stretchwright.workroom.Incoming;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/** The first questions, one on each page; after the last one the pattern. */
public final class AskScreen implements Screen {
    /** The one country that measures cloth and people in inches (CLDR 45, measurementSystem). */
    private static final String INCHES = "US";

    /** Where sheets of paper are Letter and not A4 (CLDR 45, paperSize). */
    private static final Set<String> LETTER =
            Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

    private final Bench bench;

    public AskScreen(Bench bench) {
        this.bench = bench;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/new", ctx -> ctx.redirect("/new/1"));
        routes.get("/new/{n}", this::ask);
        routes.post("/new/{n}", this::answer);
        routes.post("/new/{n}/look", this::look);
    }

    private Store store() {
        return bench.room().store();
    }

    private static Question question(Context ctx) {
        return Question.numbered(ctx.pathParam("n")).orElseThrow(NotFoundResponse::new);
    }

    private void ask(Context ctx) {
        Answers answers =
                Answers.of(store(), Optional.ofNullable(ctx.queryParam("of")).orElse(""));
        show(ctx, AskPage.of(question(ctx), answers.id(), usual(ctx, answers.form()), List.of()));
    }

    /** What stands in a question before it is answered: most come for a leg over the boot, and measure as their country does. */
    private static Form usual(Context ctx, Form answers) {
        Map<String, String> usual = new LinkedHashMap<>();
        if (answers.value("style.leg").isBlank()) {
            usual.put("style.leg", "over boot");
        }
        if (answers.value("unit").isBlank()) {
            usual.put("unit", ctx.req().getLocale().getCountry().equals(INCHES) ? "in" : "cm");
        }
        return answers.with(usual);
    }

    private static void show(Context ctx, AskPage page) {
        Pages.show(ctx, "ask.jte", page);
    }

    /** The same page with what the answer that is being typed would mean; nothing is stored. */
    private void look(Context ctx) {
        Question question = question(ctx);
        Form sent = new Form(Guard.form(ctx));
        if (!sent.value("of").isEmpty()
                && store().thing(sent.value("of"))
                        .filter(t -> t.place() == Place.HERE)
                        .isEmpty()) {
            ctx.status(HttpStatus.NO_CONTENT); // it was finished while this was under way
            return;
        }
        Answers answers = Answers.of(store(), sent.value("of"));
        Form now = answers.form().with(Sent.of(question, sent));
        show(ctx, AskPage.of(question, answers.id(), now, wrong(question, now, true)));
    }

    private void answer(Context ctx) {
        Question question = question(ctx);
        Form sent = new Form(Guard.form(ctx));
        Answers answers = Answers.of(store(), sent.value("of"));
        boolean skip = sent.value("do").equals("skip") && question.maySkip();
        Map<String, String> given = skip ? nothing(question) : Sent.of(question, sent);
        Form now = answers.form().with(given);
        List<Finding> wrong = skip
                ? Sent.noneAtAll(question, now)
                : wrong(question, now, sent.value("do").equals("none"));
        if (!wrong.isEmpty()) {
            ctx.status(422);
            show(ctx, AskPage.of(question, answers.id(), now, wrong));
            return;
        }
        Answers saved = answers.save(store(), now);
        Optional<Question> next = question.next(now);
        if (next.isPresent()) {
            ctx.redirect("/new/" + next.get().number() + "?of=" + saved.id(), HttpStatus.SEE_OTHER);
        } else {
            finish(ctx, question, saved);
        }
    }

    private static Map<String, String> nothing(Question question) {
        Map<String, String> out = new LinkedHashMap<>();
        question.keys().forEach(k -> out.put(k, ""));
        return out;
    }

    private static List<Finding> wrong(Question question, Form now, boolean noCloth) {
        return Sent.lacking(question, now, noCloth)
                .or(() -> Sent.notPulled(question, now))
                .map(List::of)
                .orElseGet(() -> Trial.wrong(now, question.keys()));
    }

    /** On the machines and the paper of the make before it; on the first one's paper as in its country. */
    private Form withMachines(Context ctx, Form make) {
        boolean letter = LETTER.contains(ctx.req().getLocale().getCountry());
        Form first = letter ? make.with(Map.of(TakenOver.PAPER, "Letter")) : make;
        return TakenOver.of(bench).map(last -> last.into(first)).orElse(first);
    }

    /** The make hangs in the workroom, and the note of the answers is put away. */
    private void finish(Context ctx, Question last, Answers answers) {
        try {
            Form whole = withMachines(ctx, answers.form().with(Map.of("name", NewName.of(store(), answers.form()))));
            byte[] text = Trial.text(whole).getBytes(StandardCharsets.UTF_8);
            Incoming incoming = bench.room().incoming("new", text);
            Thing make = incoming.take(Incoming.Same.BESIDE);
            answers.note().ifPresent(n -> store().move(Answers.HEADING, List.of(n.id()), Place.BIN));
            ctx.redirect("/makes/" + make.id(), HttpStatus.SEE_OTHER);
        } catch (BadInput e) {
            ctx.status(422);
            show(ctx, AskPage.of(last, answers.id(), answers.form(), e.findings()));
        }
    }
}
