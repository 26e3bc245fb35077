package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport.CoursePoint;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Chance;
import stretchwright.ground.Part;
import stretchwright.pattern.Level;
import stretchwright.settle.LegShape;

/**
 * Where the leg hangs loose: how much of its length the cloth is wider than what it lies on, each place counted by the
 * chance that it is, so that nothing jumps. Cloth that spans the hollow above a boot is not loose there. Limits and what is
 * not known: docs/maths/fit.md, "Looseness".
 */
final class SlackJudge {
    /** So much of a leg loose, mm: hardly seen; then a fold shows (common practice, no source). */
    private static final double SEEN = 30;

    private static final double FOLD = 60;

    /** And from this share of it on the leg holds nowhere (common practice, no source). */
    private static final double NOWHERE = 0.5;

    /** What tape and scissors leave open of a strain: 3 mm on 500 of the tape, 2 mm on 400 sewn (docs/maths/fit.md). */
    private static final double SPREAD = 0.01;

    /** Where every level is stretched by more than this no place between them is loose (tried on random bodies). */
    private static final double SURE = 0.10;

    /** Above a hem on the leg: one that the heel must pass hangs loose on every slim ankle (common practice, no source). */
    private static final double HEM_RUN = 100;

    /** Between two places of the leg that are asked, mm. */
    private static final double APART = 40;

    private final Worn leg;
    private final List<LevelFit> levels;
    private final LegShape shape;

    SlackJudge(Worn leg, List<LevelFit> levels) {
        this.leg = leg;
        this.shape = new LegShape(leg.pattern(), leg.body(), leg.boot(), leg.style());
        this.levels = levels;
    }

    /** @param levels of this leg */
    static List<Verdict> of(Worn leg, List<LevelFit> levels) {
        SlackJudge judge = new SlackJudge(leg, levels);
        List<Verdict> out = new ArrayList<>();
        judge.length(out);
        judge.hem(out);
        return out;
    }

    private void length(List<Verdict> out) {
        if (levels.stream().filter(SlackJudge::isOfLeg).allMatch(l -> l.across() > SURE)) {
            return;
        }
        Loose loose = loose();
        if (loose.length < SEEN) {
            return;
        }
        boolean nowhere = loose.length > NOWHERE * loose.of;
        out.add(new Verdict(
                nowhere ? STOP : loose.length >= FOLD ? CAUTION : NOTE,
                Tell.said("about.looseness"),
                nowhere
                        ? Tell.said("slack.nowhere", Part.length(loose.length), Part.length(loose.of))
                        : Tell.said("slack.loose", Part.length(loose.length), Part.length(loose.of)),
                Tell.said("slack.help")));
    }

    /** So much of a leg so long, mm. */
    record Loose(double length, double of) {}

    Loose loose() {
        List<CoursePoint> points = below(new Course(levels, leg.pattern(), leg.fabric(), shape).points(APART));
        if (points.isEmpty()) {
            return new Loose(0, 0);
        }
        double last = leg.hemOnBoot() ? 0 : points.get(points.size() - 1).height() + HEM_RUN;
        double all = 0;
        double loose = 0;
        for (int i = 1; i < points.size(); i++) {
            double run = points.get(i - 1).height() - points.get(i).height();
            boolean end = points.get(i).height() < last;
            all += run;
            loose += end ? 0 : run * (chance(points.get(i - 1)) + chance(points.get(i))) / 2;
        }
        return new Loose(loose, all);
    }

    static boolean isOfLeg(LevelFit l) {
        return l.level() != Level.Name.WAIST && l.level() != Level.Name.HIP;
    }

    /** From the crotch level down; a hem's own level last. */
    private List<CoursePoint> below(List<CoursePoint> course) {
        double crotch = leg.body().mm(Measure.CROTCH_HEIGHT);
        return course.stream().filter(p -> p.height() < crotch).toList();
    }

    private double chance(CoursePoint p) {
        double strain = Math.max(p.girth(), shape.spanned(p.height())) / p.width() - 1;
        return Chance.below(0, strain, SPREAD);
    }

    /** No loose cloth may come near a blade. */
    private void hem(List<Verdict> out) {
        if (!leg.hemOnBoot()) {
            return;
        }
        levels.stream()
                .filter(l -> l.level() == Level.Name.HEM && l.width() > l.girth())
                .forEach(l -> out.add(new Verdict(
                        STOP,
                        Tell.said("about.hem-on-boot"),
                        Tell.said("slack.hem", Part.length(l.width()), Part.length(l.girth())),
                        Tell.said("slack.hem-help"))));
    }
}
