package stretchwright.web.worn;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.FirstPairKeys;
import stretchwright.intake.Key;
import stretchwright.intake.WearingSymptom;
import stretchwright.web.draw.WornPlaces;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;

/**
 * What a worn pair did.
 *
 * @param symptom that was chosen; empty before
 * @param question to answer first; empty where there is none, or it is answered
 * @param answer "yes", "no" or nothing
 * @param cure what follows; empty before everything is answered
 * @param marks on a first pair, as they were typed
 * @param learnt what they teach, one line each
 * @param wrong what is the matter with what was sent
 */
public record WornPage(
        Frame frame,
        Opened make,
        Optional<WearingSymptom> symptom,
        String question,
        String answer,
        Optional<Cured> cure,
        Form marks,
        List<String> learnt,
        List<String> wrong) {
    public WornPage {
        learnt = List.copyOf(learnt);
        wrong = List.copyOf(wrong);
    }

    static WornPage of(Opened make) {
        return new WornPage(
                Frame.of(make, Frame.Stop.WORN),
                make,
                Optional.empty(),
                "",
                "",
                Optional.empty(),
                Form.empty(),
                List.of(),
                List.of());
    }

    WornPage asking(WearingSymptom what, Said asked) {
        return new WornPage(
                frame, make, Optional.of(what), make.voice().say(asked), "", Optional.empty(), marks, learnt, wrong);
    }

    WornPage with(WearingSymptom what, String answered, Cured cured) {
        return new WornPage(
                frame, make, Optional.of(what), "", answered, Optional.of(cured), marks, learnt, cured.wrong());
    }

    WornPage with(Form typed, List<String> taught, List<String> found) {
        return new WornPage(frame, make, symptom, question, answer, cure, typed, taught, found);
    }

    /** A place on the body, and what can happen there. */
    public record Group(String title, List<Place> places) {
        public Group {
            places = List.copyOf(places);
        }
    }

    /** One symptom: its picture and its words. */
    public record Place(String address, String words, String picture) {}

    public MayCut says() {
        if (!wrong.isEmpty()) {
            return new MayCut(MayCut.Mark.STOP, title(), "");
        }
        if (!question.isEmpty()) {
            return new MayCut(MayCut.Mark.LOOK, title(), question);
        }
        return cure.map(c -> new MayCut(c.mark(), title(), c.why()))
                .orElseGet(() -> new MayCut(MayCut.Mark.WORKS, title(), say("worn.touch")));
    }

    private String title() {
        return symptom.map(s -> make.voice().say(Tell.said("worn.did", new Part.Capital(Part.text(s.word())))))
                .orElseGet(() -> say("worn.ask"));
    }

    /** Of what was chosen; empty before. */
    public String picture() {
        return symptom.map(s -> WornPlaces.of(s, make.voice()).svg("place", "")).orElse("");
    }

    public String address() {
        return make.address() + "/worn";
    }

    public String answered(String word) {
        return address() + "?what=" + path(symptom.orElseThrow()) + "&answer=" + word;
    }

    private static String path(WearingSymptom symptom) {
        return symptom.word().replace(' ', '+');
    }

    public List<Group> groups() {
        return List.of(
                group("worn.band", WearingSymptom.BAND_SLIDES_DOWN, WearingSymptom.BAND_WILL_NOT_PASS),
                group("worn.seat", WearingSymptom.CROTCH_HANGS_LOW, WearingSymptom.NO_RANGE_IN_SPLITS),
                group("worn.leg", WearingSymptom.TIGHT_CALF, WearingSymptom.SEE_THROUGH),
                group("worn.hem", WearingSymptom.HEM_WILL_NOT_PASS, WearingSymptom.HEM_WAVY));
    }

    private Group group(String title, WearingSymptom first, WearingSymptom last) {
        return new Group(
                say(title),
                Arrays.stream(WearingSymptom.values())
                        .filter(s -> s.ordinal() >= first.ordinal() && s.ordinal() <= last.ordinal())
                        .map(s -> new Place(
                                address() + "?what=" + path(s),
                                s.word(),
                                WornPlaces.of(s, make.voice()).svg("place" + s.ordinal(), "")))
                        .toList());
    }

    /** One reading of a first pair. */
    public record Mark(String key, String label, String help, String value, String unit) {
        public String id() {
            return key.replaceAll("[^a-z]+", "-");
        }
    }

    /** On the leg, and then on edges and band. */
    public List<List<Mark>> firstPair() {
        return List.of(
                List.of(
                        mark(FirstPairKeys.CENTRE_BACK),
                        mark(FirstPairKeys.KNEE_ALONG),
                        mark(FirstPairKeys.KNEE_ACROSS),
                        mark(FirstPairKeys.THIGH_ALONG)),
                List.of(
                        mark(FirstPairKeys.BACK_DROP),
                        mark(FirstPairKeys.HEM_RISE),
                        mark(FirstPairKeys.BAND_LENGTH),
                        mark(FirstPairKeys.BAND_HEIGHT)));
    }

    private Mark mark(Key<?> key) {
        return new Mark(
                key.path(),
                make.voice().say(key.label()),
                make.voice().say(key.help()),
                marks.value(key.path()),
                make.voice().unit().symbol());
    }

    public String say(String key) {
        return make.voice().say(Tell.said(key));
    }
}
