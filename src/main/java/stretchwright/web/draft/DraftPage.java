package stretchwright.web.draft;

import java.util.List;
import java.util.Optional;
import stretchwright.fit.FitReport;
import stretchwright.ground.Part;
import stretchwright.make.Session;
import stretchwright.web.draft.Spread.Sheet;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;
import stretchwright.web.things.Way;
import stretchwright.workroom.store.Links;

/**
 * A make on the table: the sentence, the drawing, what to change, and why.
 *
 * @param before what it is compared with; empty for nothing
 * @param why a number that was asked about
 * @param refused a change that was asked for and cannot be
 * @param tried whether it is only tried, and not kept
 */
public record DraftPage(
        Frame frame,
        Opened make,
        MayCut says,
        Optional<Session> before,
        Past past,
        Optional<WhyPanel> why,
        Refused refused,
        boolean tried,
        Shown shown) {
    /** Which drawings are sent: while a line is dragged only the one that is looked at. */
    enum Shown {
        BOTH,
        WIDE,
        NARROW;

        static Shown of(String word) {
            return word.equals("wide") ? WIDE : word.equals("narrow") ? NARROW : BOTH;
        }
    }

    /** A make as it stands. */
    static DraftPage of(Bench bench, Opened make, String asked, Refused refused) {
        Past past = Past.of(bench, make);
        return of(make, past.tacking(bench, make), past, asked, refused, false, Shown.BOTH);
    }

    /** One that is only tried, over the one that stands. */
    static DraftPage tried(Bench bench, Opened make, Opened other, Shown shown) {
        return of(other, Optional.of(make.session()), Past.of(bench, make), "", Refused.NOTHING, true, shown);
    }

    private static DraftPage of(
            Opened make,
            Optional<Session> before,
            Past past,
            String asked,
            Refused refused,
            boolean tried,
            Shown shown) {
        return new DraftPage(
                Frame.of(make, Frame.Stop.DRAFT),
                make,
                MayCut.of(make.session(), make.voice()),
                before,
                past,
                WhyPanel.of(make, asked),
                refused,
                tried,
                shown);
    }

    /** Whether something stands in the way of cutting that a change may turn. */
    public boolean mayTurn() {
        return says.mark() != MayCut.Mark.HOLDS && !make.demo() && !tried;
    }

    /** For a wide screen; empty where it is only tried on a narrow one. */
    public String wide() {
        return shown == Shown.NARROW ? "" : PatternDrawing.of(make, before, Sheet.WIDE);
    }

    public String narrow() {
        return shown == Shown.WIDE ? "" : PatternDrawing.of(make, before, Sheet.NARROW);
    }

    /** Where the cloth is still looked for: its card for the shop; empty where it is there. */
    public String shopCard() {
        return make.session().make().fabric().usual().stretch() && !make.demo()
                ? make.address() + "/file/shop-card.pdf"
                : "";
    }

    /** The guess that leaves most open, while nothing is tried. */
    public Optional<Guessed> guessed() {
        return tried ? Optional.empty() : Guessed.of(make);
    }

    public List<Control> controls() {
        return new Control.Lines(make, refused).first();
    }

    /** Widths at the levels. */
    public List<Control> levels() {
        return new Control.Lines(make, refused).levels();
    }

    /** Whether they are unfolded: one of them is not as usual, or was refused. */
    public boolean levelsOpen() {
        String usual = say("handle.as-usual");
        return levels().stream()
                .anyMatch(c -> !c.now().equals(usual)
                        || !c.typed().orElseThrow().finding().isEmpty());
    }

    /** What is the matter with a change that was asked for, beyond what stands at its field. */
    public List<String> wrong() {
        return refused.others(make.voice());
    }

    /** One verdict: its severity as a class and as told. */
    public record Verdict(String severity, String told, String about, String words) {}

    /** All of them, the worst first. */
    public List<Verdict> verdicts() {
        return make.session().fit().all().stream()
                .sorted(java.util.Comparator.comparing(FitReport.Verdict::severity))
                .map(v -> new Verdict(
                        v.severity().word(),
                        make.voice().say(v.severity().said()),
                        make.voice().say(v.about()),
                        make.voice().say(v.message().and(v.remedy()))))
                .toList();
    }

    /** "Undo: 1.5 cm longer"; empty where there is nothing to undo. */
    public String undo() {
        return past.earlier()
                .map(v -> make.voice().say(Tell.said("draft.undo", Difference.of(v.text(), make.text()))))
                .orElse("");
    }

    public String redo() {
        return past.later()
                .map(v -> make.voice().say(Tell.said("draft.redo", Difference.of(make.text(), v.text()))))
                .orElse("");
    }

    /** "Keep as version 4"; empty where it is kept. */
    public String keep() {
        return past.keptAs().isPresent() || make.demo()
                ? ""
                : make.voice().say(Tell.said("draft.keep", Part.count(past.next())));
    }

    /** What is drawn in tacking. */
    public String tacking() {
        return before.isEmpty() || tried
                ? ""
                : make.voice().say(Tell.said("draft.tacking", Part.count(past.beforeNumber())));
    }

    public String notes() {
        return make.voice()
                .say(Tell.said(
                        "draft.notes", Part.count(make.session().fit().all().size())));
    }

    /**
     * What the pair is made for and of, and where another takes its place.
     *
     * @param own where it is told of itself; empty where it is not known
     */
    public record Other(String label, String now, String own, String address, String words) {}

    public List<Other> others() {
        var m = make.session().make();
        Links links = make.stored().thing().links();
        String cloth = m.cloth().roll().name();
        return List.of(
                other("swap.for", m.wearer(), Way.toWearer(links, make.id()), "wearer", "swap.another-wearer"),
                other(
                        "swap.of",
                        cloth.isBlank() ? say("draft.usual-cloth") : cloth,
                        Way.toCloth(links, make.id()),
                        "fabric",
                        "swap.another-cloth"),
                other(
                        "swap.over",
                        m.boot().map(b -> b.kind()).orElse(""),
                        Way.toBoots(links, make.id()),
                        "boot",
                        "swap.another-boot"));
    }

    private Other other(String label, String now, String own, String kind, String words) {
        return new Other(say(label), now, own, make.address() + "/other/" + kind, say(words));
    }

    public String whose() {
        var m = make.session().make();
        String wearer = m.wearer().isBlank() ? say("draft.somebody") : m.wearer();
        String cloth = m.cloth().roll().name().isBlank()
                ? say("draft.some-cloth")
                : m.cloth().roll().name();
        return m.boot()
                .map(b -> make.voice()
                        .say(Tell.said("draft.for-boot", Part.text(wearer), Part.text(cloth), Part.text(b.kind()))))
                .orElseGet(() -> make.voice().say(Tell.said("draft.for", Part.text(wearer), Part.text(cloth))));
    }

    public String say(String key) {
        return make.voice().say(Tell.said(key));
    }
}
