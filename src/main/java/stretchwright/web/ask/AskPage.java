package stretchwright.web.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.web.form.Fits;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;

/**
 * One question with what was answered so far.
 *
 * @param of the note in which the answers are kept; empty before the first
 */
public record AskPage(Frame frame, String of, int number, Form answers, List<Finding> wrong) {
    public AskPage {
        wrong = List.copyOf(wrong);
    }

    static AskPage of(Question question, String of, Form answers, List<Finding> wrong) {
        return new AskPage(
                Frame.plain("ask", said(Unit.CM, Tell.said("ask.heading"))), of, question.number(), answers, wrong);
    }

    /** A word to choose. */
    public record Choice(String value, String words, boolean chosen, String picture) {}

    /** A place to type in. */
    public record Entry(String name, String label, String value, String unit) {}

    private Question question() {
        return Question.values()[number - 1];
    }

    public Unit unit() {
        return Unit.of(answers.value("unit")).orElse(Unit.CM);
    }

    public int count() {
        return Question.count(answers);
    }

    public String where() {
        return say(Tell.said("ask.where", Part.count(number), Part.count(count())));
    }

    /** Where the chalk line on the tape ends, in twelfths of the way. */
    public int twelfths() {
        return Math.round(12f * number / count());
    }

    public String title() {
        return say(question().title());
    }

    public String how() {
        return say(question().how());
    }

    public boolean isWho() {
        return question() == Question.WHO;
    }

    public boolean isCloth() {
        return question() == Question.CLOTH;
    }

    public boolean asksUnit() {
        return question() == Question.STATURE;
    }

    public boolean maySkip() {
        return question().maySkip();
    }

    public List<Choice> figures() {
        return choices("wearer.figure", List.of("woman", "man", "child"), List.of("ask.woman", "ask.man", "ask.child"));
    }

    public List<Choice> units() {
        String now = unit().symbol();
        return List.of(
                new Choice("cm", "cm", !now.equals("in"), ""),
                new Choice("in", say("ask.inches"), now.equals("in"), ""));
    }

    public List<Choice> legs() {
        return choices(
                "style.leg",
                List.of("over boot", "ankle", "calf", "knee", "short"),
                List.of("ask.over-boot", "ask.ankle", "ask.to-calf", "ask.to-knee", "ask.short"));
    }

    private List<Choice> choices(String key, List<String> values, List<String> words) {
        List<Choice> out = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            String picture = key.equals("style.leg") ? AskPictures.leg(answers, values.get(i), voice()) : "";
            out.add(new Choice(values.get(i), say(words.get(i)), values.get(i).equals(answers.value(key)), picture));
        }
        return out;
    }

    public List<Entry> entries() {
        return switch (question()) {
            case WHO -> List.of();
            case CLOTH ->
                List.of(stretch("fabric.stretch across", "ask.across"), stretch("fabric.stretch along", "ask.along"));
            case STATURE, WAIST, SEAT, INNER_LEG, THROUGH_THE_LEGS, CALF, BOOT_TOP, BOOT_HEEL, BOOT_HEM, ANKLE_TO_HEM ->
                twice(question().keys().get(0));
        };
    }

    /** Of a boot one reading is asked; of the body two may be given. */
    private List<Entry> twice(String key) {
        List<String> readings = Arrays.asList(answers.value(key).split(";\\s*", 2));
        String unit = unit().symbol();
        Entry once =
                new Entry(key, question().isOfBoot() ? say("ask.reading") : say("ask.once"), readings.get(0), unit);
        return question().isOfBoot()
                ? List.of(once)
                : List.of(
                        once,
                        new Entry(
                                key + Sent.AGAIN, say("ask.again"), readings.size() > 1 ? readings.get(1) : "", unit));
    }

    private Entry stretch(String key, String label) {
        return new Entry(key, say(label), answers.value(key), unit() == Unit.IN ? "in" : "mm");
    }

    /** Where the tape goes, or what hands do; of a measure one picture for a desk and one for a phone. */
    public List<String> drawings() {
        return AskPictures.of(question(), answers, voice());
    }

    private Voice voice() {
        return Voice.of(unit());
    }

    /** What is wrong with the answer; empty where nothing is. */
    public List<String> mend() {
        return wrong.stream().map(f -> f.told(voice())).distinct().toList();
    }

    public String id(Entry entry) {
        return entry.name().replaceAll("[^a-z]+", "-");
    }

    /** Whether the answer agrees with itself and with the others; empty before there is one. */
    public Optional<MayCut> fits() {
        Optional<Measure> measure = question().measure();
        if (measure.isEmpty()
                || !wrong.isEmpty()
                || answers.value(question().keys().get(0)).isBlank()) {
            return Optional.empty();
        }
        return Fits.of(answers, measure.get())
                .map(f -> new MayCut(f.doubted() ? MayCut.Mark.LOOK : MayCut.Mark.HOLDS, say(f.takes()), say(f.why())));
    }

    /** What is taken where the question is skipped; empty where nothing can be. */
    public String skipped() {
        return question().measure().map(m -> say(Fits.skipped(answers, m))).orElse("");
    }

    public String back() {
        return number == 1 ? "/" : "/new/" + (number - 1) + "?of=" + of;
    }

    public String next() {
        return number == count() ? say("ask.finish") : say(Tell.said("ask.next"));
    }

    public String say(String key) {
        return say(Tell.said(key));
    }

    private String say(Said said) {
        return said(unit(), said);
    }

    private static String said(Unit unit, Said said) {
        return Voice.of(unit).say(said);
    }
}
