package stretchwright.web.things;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.body.MeasureGuide;
import stretchwright.body.Side;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.intake.WearerKeys;
import stretchwright.web.draw.Drawing;
import stretchwright.web.draw.TapeFigure;
import stretchwright.web.draw.UsualFigure;
import stretchwright.web.form.Fits;
import stretchwright.web.form.Form;
import stretchwright.web.form.Trial;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;

/** One measure of a wearer: the words and places of its page. */
final class MeasurePage {
    private final Held wearer;
    private final Measure measure;
    private final Form now;
    private final SentReadings readings;

    /** @param now the wearer as she would be with what was typed */
    private MeasurePage(Held wearer, Measure measure, Form now, SentReadings readings) {
        this.wearer = wearer;
        this.measure = measure;
        this.now = now;
        this.readings = readings;
    }

    static String path(Measure measure) {
        return "/" + measure.term().replace(' ', '-');
    }

    static Optional<Measure> at(String path) {
        return Arrays.stream(Measure.values())
                .filter(m -> path(m).equals("/" + path))
                .findFirst();
    }

    /** As it was kept. */
    static ReadingPage of(Held wearer, Measure measure) {
        List<String> kept = Arrays.stream(
                        wearer.form().value(SentReadings.key(measure)).split(";"))
                .map(t -> Held.shown(t, wearer.unit()))
                .filter(t -> !t.isEmpty())
                .toList();
        SentReadings readings = new SentReadings(measure, wearer.unit(), kept);
        return new MeasurePage(wearer, measure, wearer.form(), readings).page(List.of());
    }

    /** With what was typed. */
    static ReadingPage of(Held wearer, Measure measure, Form sent, List<Finding> wrong) {
        return new MeasurePage(
                        wearer,
                        measure,
                        SentReadings.changed(wearer.form(), measure, wearer.unit(), sent),
                        SentReadings.of(measure, wearer.unit(), sent))
                .page(wrong);
    }

    private ReadingPage page(List<Finding> wrong) {
        MeasureGuide guide = MeasureGuide.of(measure);
        String unit = wearer.unit().symbol();
        Body body = body(wrong);
        return new ReadingPage(
                Frame.plain("ask", wearer.thing().name()),
                way(),
                wearer.say("things.where", Part.count(measure.ordinal() + 1), Part.count(Measure.values().length)),
                wearer.say("things.title", new Part.Capital(measure.said())),
                guide.how(),
                "",
                List.of(
                        Blank.number(SentReadings.ONCE, say("ask.once"), typed(0), ""),
                        Blank.number(SentReadings.AGAIN, say("ask.again"), typed(1), unit)),
                Optional.of(Blank.number(SentReadings.THIRD, say("things.thrice"), typed(2), unit)),
                folds(guide),
                fits(),
                wrong(wrong),
                skipped(),
                drawing(body, TapeFigure.Size.WIDE, "wide"),
                drawing(body, TapeFigure.Size.NARROW, "narrow"),
                "");
    }

    private ReadingPage.Way way() {
        int at = measure.ordinal();
        Measure[] all = Measure.values();
        String next = at + 1 < all.length ? wearer.to(path(all[at + 1])) : wearer.to("");
        String goes = at + 1 < all.length ? wearer.say("things.next", all[at + 1].said()) : say("things.keep");
        return new ReadingPage.Way(
                "/wearers/" + wearer.thing().id() + path(measure),
                wearer.thing().now(),
                wearer.askerId(),
                goes,
                next,
                at > 0 ? wearer.to(path(all[at - 1])) : wearer.to(""));
    }

    private String typed(int which) {
        return which < readings.typed().size() ? readings.typed().get(which) : "";
    }

    private List<Fold> folds(MeasureGuide guide) {
        List<Fold> out = new ArrayList<>();
        List<Blank> blanks = new ArrayList<>();
        if (measure.ofLeg()) {
            for (Side side : Side.values()) {
                blanks.add(Blank.number(
                        side.word(), say(word(side)), leg(side), wearer.unit().symbol()));
            }
        }
        if (measure.roundLeg()) {
            for (Side side : Side.values()) {
                blanks.add(Blank.tick(
                        "hard-" + side.word(),
                        say(hardWord(side)),
                        now.ticked(SentReadings.hard(side), measure.term())));
            }
        }
        boolean apart = blanks.stream().anyMatch(b -> !b.value().isEmpty());
        boolean seated = now.value(WearerKeys.SEATED.path()).matches("(?i)true|yes");
        blanks.add(Blank.tick(SentReadings.SEATED, say("things.seated"), seated));
        String title = measure.roundLeg()
                ? "things.apart-brace-seated"
                : measure.ofLeg() ? "things.apart-seated" : "things.is-seated";
        out.add(new Fold(say(title), List.of(), blanks, apart));
        out.add(Fold.of(
                say("things.watch"),
                wearer.say("things.wrong", Part.text(guide.wrong())),
                wearer.say("things.alone", Part.text(guide.alone())),
                wearer.say("things.within", Part.length(guide.tolerance()))));
        return out;
    }

    private String leg(Side side) {
        return String.join(
                "; ",
                Arrays.stream(now.value(SentReadings.key(measure, side)).split(";"))
                        .map(t -> Held.shown(t, wearer.unit()))
                        .toList());
    }

    private static String word(Side side) {
        return side == Side.LEFT ? "things.left" : "things.right";
    }

    private static String hardWord(Side side) {
        return side == Side.LEFT ? "things.hard-left" : "things.hard-right";
    }

    /** What does not agree is told before anything else of it. */
    private List<String> wrong(List<Finding> wrong) {
        if (wrong.isEmpty()) {
            return List.of();
        }
        if (readings.asksThird()) {
            return List.of(say("things.third"), differ());
        }
        return readings.noneAgree() ? List.of(say("things.none-agree")) : wearer.words(wrong);
    }

    private String differ() {
        return wearer.say(
                "things.differ",
                Part.length(readings.apart()),
                Part.length(MeasureGuide.of(measure).tolerance()).atMost());
    }

    private Optional<MayCut> fits() {
        return Fits.of(now, measure)
                .map(f -> new MayCut(
                        f.doubted() ? MayCut.Mark.LOOK : MayCut.Mark.HOLDS,
                        readings.leavesOne()
                                ? say("things.left-out") + " " + wearer.say(f.takes())
                                : wearer.say(f.takes()),
                        wearer.say(f.why())));
    }

    private String skipped() {
        return now.has(SentReadings.key(measure)) ? "" : wearer.say(Fits.skipped(now, measure));
    }

    /** As it is drawn: with what was typed, or as it was kept, or a usual one. */
    private Body body(List<Finding> wrong) {
        Figure figure = WearerKeys.figure(now.value(WearerKeys.FIGURE.path())).orElse(Figure.WOMAN);
        return Trial.body(wrong.isEmpty() ? now : wearer.form()).orElseGet(() -> UsualFigure.of(figure));
    }

    private String drawing(Body body, TapeFigure.Size size, String classes) {
        Drawing drawing = TapeFigure.of(measure, body, size, Voice.of(wearer.unit()));
        return drawing.svg("tape" + classes, classes);
    }

    private String say(String key) {
        return wearer.say(Tell.said(key));
    }
}
