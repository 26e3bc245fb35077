package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Measuring;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Reason.Origin;
import stretchwright.pattern.Shift;
import stretchwright.pattern.Style;

/** What the draft could not keep of the rise: the waist edge's place, and the back crotch length as measured. */
final class RiseJudge {
    /** Farther than this from its place, mm, a top edge is seen and felt (common practice, no source). */
    static final double OFF_ITS_PLACE = 10;

    /** Drafts are solved to less than this, mm: a slip of the tape by just so much is not told by chance. */
    private static final double HAIR = 0.05;

    /** And beyond this the measures do not belong together: the cloth has given all it can (no source). */
    static final double FAR_OFF = 25;

    /** Cloth that stretches less along gives the rise little (docs/maths/draft.md, "The top"). */
    static final double GIVES_LITTLE = 0.35;

    /** A back that is drawn so much longer or shorter than measured, mm, is told (no source: what two tapes may differ by). */
    static final double BACK_OFF = 20;

    private final Pattern pattern;
    private final Fabric fabric;
    private final Body body;
    private final Style style;
    private final List<Verdict> out = new ArrayList<>();

    private RiseJudge(Pattern pattern, Fabric fabric, Body body, Style style) {
        this.pattern = pattern;
        this.fabric = fabric;
        this.body = body;
        this.style = style;
    }

    static List<Verdict> of(Pattern pattern, Fabric fabric, Body body, Style style) {
        RiseJudge judge = new RiseJudge(pattern, fabric, body, style);
        judge.place();
        judge.split();
        return judge.out;
    }

    /** Where rise and crotch length disagree, the draft keeps the crotch seam and lets the top edge move. */
    private void place() {
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double wanted = body.mm(Measure.WAIST_HEIGHT) - style.dropBelowWaist();
        double flat = crotch * (1 - pattern.reductions().along())
                + (wanted - crotch) * (1 - pattern.reductions().rise());
        double asked = pattern.shift(Shift.SIDE_WAIST);
        double off = (pattern.level(Level.Name.WAIST).orElseThrow().height() - asked - flat - pattern.above())
                / (1 - pattern.reductions().rise());
        if (Math.abs(off) <= OFF_ITS_PLACE + HAIR) {
            return;
        }
        boolean far = Math.abs(off) > FAR_OFF;
        double tape = 2
                * Math.abs(off)
                * (1 - pattern.reductions().rise())
                / (1 - pattern.reductions().crotch());
        out.add(new Verdict(far ? STOP : CAUTION, Tell.said("about.rise"), placed(off, tape), again(far)));
    }

    /** Where front and back as measured would put the back higher or lower than a back stands, half of the rest was left out. */
    private void split() {
        if (!body.isGiven(Measure.BACK_CROTCH_LENGTH) || Math.abs(pattern.backOff()) <= BACK_OFF) {
            return;
        }
        Part[] parts = {
            Part.length(body.mm(Measure.BACK_CROTCH_LENGTH)),
            Part.length(body.mm(Measure.TOTAL_CROTCH_LENGTH)),
            Part.length(Math.abs(pattern.backOff()))
        };
        out.add(new Verdict(
                CAUTION,
                Tell.said("about.back-rise"),
                pattern.backOff() < 0 ? Tell.said("split.back-long", parts) : Tell.said("split.back-short", parts),
                Tell.said("split.help")));
    }

    /** The measures at odds, and by how much on the tape. */
    private Said placed(double off, double tape) {
        Part[] parts = {
            Part.length(Math.abs(off)),
            Part.length(body.mm(Measure.TOTAL_CROTCH_LENGTH)),
            (body.isGiven(Measure.TOTAL_CROTCH_LENGTH) ? Origin.MEASURED : Origin.ESTIMATED).said(),
            Part.length(tape),
            Part.length(body.mm(Measure.WAIST_HEIGHT)),
            Part.length(body.mm(Measure.CROTCH_HEIGHT))
        };
        return off > 0 ? Tell.said("rise.above", parts) : Tell.said("rise.below", parts);
    }

    /** What to measure again: the crotch length, and the height that lies further from what the other measures let expect. */
    private Said again(boolean far) {
        Said help = !body.isGiven(Measure.TOTAL_CROTCH_LENGTH)
                ? Tell.said("rise.estimated-help")
                : Measuring.furthest(body, Measure.WAIST_HEIGHT, Measure.CROTCH_HEIGHT)
                        .filter(c -> far)
                        .map(c -> Tell.said(
                                "rise.measured-with-help",
                                c.measure().said(),
                                Part.length(c.mm()),
                                Part.length(c.expected().orElseThrow())))
                        .orElseGet(() -> Tell.said("rise.measured-help"));
        double along = fabric.test().stretchAlong();
        return along < GIVES_LITTLE ? help.and(Tell.said("rise.stiff-help", Part.share(along))) : help;
    }
}
