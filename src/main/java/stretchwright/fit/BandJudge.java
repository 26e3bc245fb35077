package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Level;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.TopEnd.Band.Shape;

/** What concerns the top edge: how much the band takes in, where it stands, what lies in it. */
final class BandJudge {
    /** Below this ratio the band gathers the leg's top edge visibly (docs/maths/draft.md, "Backs"; no source). */
    static final double LEAST_BAND_RATIO = 0.80;

    /** A rib band is 2/3 to 3/4 of the opening it is sewn to (trade values section 5, [S24]). */
    static final double SHORTEST_RIB = 2.0 / 3;

    static final double LONGEST_RIB = 3.0 / 4;

    /** Finished bands: low 40 to 60, mid 80 to 100, high 110 to 140 mm (common practice, no source). */
    static final double HIGHEST_BAND = 140;

    /** A straight band follows the body where its edges differ by no more than this strain (common practice, no source). */
    static final double STRAIGHT_UP_TO = 0.15;

    /** Farther than this from its place, mm, a top edge is seen and felt (common practice, no source). */
    static final double OFF_ITS_PLACE = 40;

    private final Pattern pattern;
    private final Body body;
    private final Style style;
    private final List<Verdict> out = new ArrayList<>();

    private BandJudge(Pattern pattern, Body body, Style style) {
        this.pattern = pattern;
        this.body = body;
        this.style = style;
    }

    static List<Verdict> of(Pattern pattern, Body body, Style style) {
        BandJudge judge = new BandJudge(pattern, body, style);
        pattern.seam(Seam.Role.WAISTBAND_JOIN).ifPresent(judge::takenIn);
        pattern.notions().stream().filter(n -> n.name().equals("waist elastic")).forEach(judge::elastic);
        judge.noDart();
        judge.place();
        if (style.top().band().shape() != Shape.CASING) {
            judge.stands();
        }
        if (style.top().band().shape() == Shape.CONTOURED) {
            judge.contoured();
        }
        if (style.top().band().drawstring()) {
            judge.cord();
        }
        return judge.out;
    }

    private void add(FitReport.Severity severity, String message, String remedy) {
        add(severity, Subject.Kind.NONE, message, remedy);
    }

    private void add(FitReport.Severity severity, Subject.Kind kind, String message, String remedy) {
        out.add(new Verdict(severity, Subject.of(kind, "waistband"), message, remedy));
    }

    /** Where rise and crotch length disagree, the draft keeps the crotch seam and lets the top edge move. */
    private void place() {
        double drawn = pattern.level(Level.Name.WAIST).orElseThrow().height()
                / (1 - pattern.reductions().along());
        double off = drawn - (body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist());
        if (Math.abs(off) <= OFF_ITS_PLACE) {
            return;
        }
        boolean measured = body.isGiven(Measure.TOTAL_CROTCH_LENGTH);
        out.add(new Verdict(
                CAUTION,
                "rise",
                text(
                        "At the side the legs' top edge would lie %.0f mm %s where it is wanted: the total crotch length of"
                                + " %.0f mm%s is too %s for waist and crotch height.",
                        Math.abs(off),
                        off > 0 ? "above" : "below",
                        body.mm(Measure.TOTAL_CROTCH_LENGTH),
                        measured ? " (measured)" : " (estimated)",
                        off > 0 ? "long" : "short"),
                measured
                        ? "Measure it again with the tape snug, and both heights; if all hold, baste the rise and try on first."
                        : "Measure it: from the waist in front through the legs to the waist behind, the tape snug."));
    }

    private void takenIn(Seam join) {
        double top = join.sides().get(0).length();
        double band = join.sides().get(1).length();
        String numbers = text(
                "The band is %.0f mm and the leg tops together %.0f mm: it takes in %.0f %%.",
                band, top, percent(1 - band / top));
        boolean shaped = style.top().back() != TopEnd.BackShape.PLAIN;
        if (band / top < LEAST_BAND_RATIO) {
            String back = shaped
                    ? "the back takes in all it can; a lower rise leaves less to take in."
                    : "back: darts or back: shaped seam lies flatter, and so does a contoured band.";
            add(
                    CAUTION,
                    Subject.Kind.TAKEN_IN,
                    numbers,
                    text(
                            "Stretch the band evenly between the quarter marks; %s A band of rib may be %.0f to %.0f mm for"
                                    + " this edge.",
                            back, SHORTEST_RIB * top, LONGEST_RIB * top));
        } else if (shaped) {
            add(NOTE, Subject.Kind.TAKEN_IN, numbers + darts(), "");
        }
    }

    private String darts() {
        return pattern.seam(Seam.Role.DART)
                .map(d -> text(
                        " Each dart takes in %.0f mm.",
                        pattern.piece(d.sides().get(0).piece())
                                .edge(d.sides().get(0).edge())
                                .line()
                                .start()
                                .distance(pattern.piece(d.sides().get(1).piece())
                                        .edge(d.sides().get(1).edge())
                                        .line()
                                        .end())))
                .orElse("");
    }

    private void noDart() {
        if (style.top().back() == TopEnd.BackShape.DARTS
                && pattern.seam(Seam.Role.DART).isEmpty()) {
            add(
                    NOTE,
                    text(
                            "No dart is drawn: with a waist of %.0f mm (%s) and a hip of %.0f mm (%s) the band takes in the"
                                    + " little that is left.",
                            body.mm(Measure.WAIST_GIRTH),
                            Judge.known(body, Measure.WAIST_GIRTH),
                            body.mm(Measure.HIP_GIRTH),
                            Judge.known(body, Measure.HIP_GIRTH)),
                    "Write back: plain.");
        }
    }

    private void elastic(Notion elastic) {
        double ring = elastic.cut() - elastic.ends();
        double cloth = pattern.level(stretchwright.pattern.Level.Name.WAIST)
                .orElseThrow()
                .width();
        add(
                NOTE,
                text(
                        "The elastic is a ring of %.0f mm in cloth of %.0f mm, on a girth of %.0f mm. How hard it pulls is not"
                                + " known: it comes on top of the pressure given for the waist.",
                        ring, cloth, elastic.worn()),
                "Before cutting it, close it round the waist with a clip and sit for some minutes: it holds without marking"
                        + " the skin.");
    }

    /** How far a band reaches above the waist. */
    private void stands() {
        double over = style.bandHeight() - style.dropBelowWaist();
        if (over > HIGHEST_BAND) {
            add(
                    CAUTION,
                    Subject.Kind.HIGH_BAND,
                    text(
                            "The band would reach %.0f mm above the waist, up the ribs, and is as narrow there as at the waist.",
                            over),
                    text("Choose a band of %.0f mm or less, or a lower rise.", HIGHEST_BAND));
        } else if (style.dropBelowWaist() == 0) {
            add(
                    NOTE,
                    text("The band is joined at the waist and stands %.0f mm above it.", style.bandHeight()),
                    text("For a band that ends at the waist write the rise as %.0f mm below it.", style.bandHeight()));
        }
    }

    private void contoured() {
        TrunkProfile trunk = TrunkProfile.of(body);
        double below = trunk.girthBelowWaist(style.dropBelowWaist());
        double above = trunk.girthBelowWaist(style.dropBelowWaist() - style.bandHeight());
        double strain = Strain.of(Math.min(below, above), Math.max(below, above));
        if (strain <= STRAIGHT_UP_TO) {
            add(
                    NOTE,
                    text(
                            "Between the band's edges the body grows by %.0f %% only: a straight band would follow it too.",
                            percent(strain)),
                    "A straight band takes one piece less and one seam less.");
        }
    }

    private void cord() {
        out.add(new Verdict(
                CAUTION,
                "drawstring",
                "A cord at the waist can catch on a barrier, a machine or another skater, and can be drawn too tight.",
                "Sew it fast at the centre back, tie it and tuck the ends in before skating; never give the garment to a"
                        + " child. Local rules on cords come first."));
    }
}
