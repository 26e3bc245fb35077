package stretchwright.web.things;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;

/** One test of a cloth: the words and places of its page. */
final class ClothReading {
    private final Held cloth;
    private final ClothTest test;
    private final ClothSent fields;
    private final Map<String, String> typed;
    private final Form now;

    private ClothReading(Held cloth, ClothTest test, Map<String, String> typed, Form now) {
        this.cloth = cloth;
        this.test = test;
        this.fields = new ClothSent(test, cloth.unit());
        this.typed = typed;
        this.now = now;
    }

    /** As it was kept. */
    static ReadingPage of(Held cloth, ClothTest test) {
        Map<String, String> kept = new ClothSent(test, cloth.unit()).kept(cloth.form());
        return new ClothReading(cloth, test, kept, cloth.form()).page(List.of());
    }

    /** With what was typed. */
    static ReadingPage of(Held cloth, ClothTest test, Form sent, List<Finding> wrong) {
        Map<String, String> typed = new LinkedHashMap<>();
        sent.typed().forEach((k, v) -> typed.put(k, v.get(0)));
        Form now = new ClothSent(test, cloth.unit()).changed(cloth.form(), sent);
        return new ClothReading(cloth, test, typed, now).page(wrong);
    }

    private ReadingPage page(List<Finding> wrong) {
        Voice voice = Voice.of(cloth.unit());
        ClothTrial trial = ClothTrial.of(cloth, now);
        return new ReadingPage(
                Frame.plain("ask", cloth.thing().name()),
                way(),
                cloth.say("things.where", Part.count(test.ordinal() + 1), Part.count(ClothTest.values().length)),
                cloth.say(test.title()),
                cloth.say(test.how()),
                "",
                readings(),
                Optional.empty(),
                folds(),
                fits(trial, wrong),
                cloth.words(wrong),
                test == ClothTest.FOLD ? "" : say("cloth.fold-enough"),
                test.hands().drawing(voice).svg("hands", "hands"),
                "",
                trial.fabric().map(f -> LoadPlot.of(f.test(), voice)).orElse(""));
    }

    private ReadingPage.Way way() {
        ClothTest[] all = ClothTest.values();
        int at = test.ordinal();
        String next = at + 1 < all.length ? cloth.to(all[at + 1].path()) : cloth.to("");
        return new ReadingPage.Way(
                "/cloths/" + cloth.thing().id() + test.path(),
                cloth.thing().now(),
                cloth.askerId(),
                at + 1 < all.length ? cloth.say("things.next", all[at + 1].title()) : say("things.keep"),
                next,
                at > 0 ? cloth.to(all[at - 1].path()) : cloth.to(""));
    }

    private List<Blank> readings() {
        String mark = fields.marks().symbol();
        String hundred = cloth.unit() == Unit.IN ? "4" : "100";
        return switch (test) {
            case FOLD, FOLD_ALONG ->
                List.of(
                        number("was", Tell.said("cloth.was", Part.text(hundred)), ""),
                        number("pulled", Tell.said("cloth.pulled"), ""),
                        number("rested", Tell.said("cloth.rested"), mark));
            case HANGING, HANGING_ALONG ->
                List.of(
                        number(ClothSent.WEIGHTS.get(0), Tell.said("cloth.under", Part.text("100 g")), ""),
                        number(ClothSent.WEIGHTS.get(1), Tell.said("cloth.under", Part.text("250 g")), ""),
                        number(ClothSent.WEIGHTS.get(2), Tell.said("cloth.under", Part.text("500 g")), mark));
            case WRAP ->
                List.of(
                        number("hip", Tell.said("cloth.wrap-hip"), ""),
                        number(
                                "calf",
                                Tell.said("cloth.wrap-calf"),
                                cloth.unit().symbol()));
            case SHOW_THROUGH -> List.of(number("at", Tell.said("cloth.shows-at"), "%"));
            case WASH ->
                List.of(
                        number("across", Tell.said("cloth.washed-across"), ""),
                        number("along", Tell.said("cloth.washed-along"), mark));
        };
    }

    private Blank number(String name, Said label, String unit) {
        return Blank.number(name, cloth.say(label), typed.getOrDefault(name, ""), unit);
    }

    private List<Fold> folds() {
        if (test != ClothTest.HANGING && test != ClothTest.HANGING_ALONG) {
            return List.of();
        }
        String mark = fields.marks().symbol();
        List<Blank> blanks = new ArrayList<>(List.of(
                number("back-1", Tell.said("cloth.back", Part.text("250 g")), mark),
                number("back-2", Tell.said("cloth.back", Part.text("100 g")), mark),
                number("width", Tell.said("cloth.strip-width"), mark)));
        if (test == ClothTest.HANGING) {
            blanks.add(number("after", Tell.said("cloth.after"), mark));
        }
        boolean open = blanks.stream().anyMatch(b -> !b.value().isEmpty());
        Blank others = Blank.text("others", say("cloth.others"), typed.getOrDefault("others", ""));
        return List.of(
                new Fold(say("cloth.strip"), List.of(say("cloth.strip-how")), blanks, open),
                new Fold(
                        say("cloth.other-weights"),
                        List.of(),
                        List.of(others),
                        !others.value().isEmpty()));
    }

    private Optional<MayCut> fits(ClothTrial trial, List<Finding> wrong) {
        if (!wrong.isEmpty() || test.keys().stream().noneMatch(now::has)) {
            return Optional.empty();
        }
        return trial.fabric().map(f -> new MayCut(MayCut.Mark.HOLDS, told(trial, f), ""));
    }

    private String told(ClothTrial trial, Fabric f) {
        return switch (test) {
            case FOLD, FOLD_ALONG, HANGING, HANGING_ALONG, WRAP -> ClothPage.stretches(cloth, trial, f);
            case SHOW_THROUGH -> say("cloth.kept");
            case WASH ->
                cloth.say(
                        "cloth.shrinks",
                        Part.share(f.quality().shrinkageAcross()),
                        Part.share(f.quality().shrinkageAlong()));
        };
    }

    private String say(String key) {
        return cloth.say(Tell.said(key));
    }
}
