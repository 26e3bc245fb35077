package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.TrunkProfile;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Chance;
import stretchwright.ground.Part;
import stretchwright.ground.Path;
import stretchwright.ground.Said;
import stretchwright.pattern.Notion;
import stretchwright.pattern.NotionName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.TopEnd.Band.Shape;
import stretchwright.settle.Elastic;

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

    private final Pattern pattern;
    private final Body body;
    private final Style style;
    private final List<Verdict> out = new ArrayList<>();

    private BandJudge(Pattern pattern, Body body, Style style) {
        this.pattern = pattern;
        this.body = body;
        this.style = style;
    }

    static List<Verdict> of(Pattern pattern, Fabric fabric, Body body, Style style) {
        BandJudge judge = new BandJudge(pattern, body, style);
        pattern.seam(Seam.Role.WAISTBAND_JOIN).ifPresent(judge::takenIn);
        pattern.notions().stream()
                .filter(n -> n.name() == NotionName.WAIST_ELASTIC)
                .forEach(judge::elastic);
        judge.noDart();
        judge.out.addAll(RiseJudge.of(pattern, fabric, body, style));
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

    private void add(FitReport.Severity severity, Said message, Said remedy) {
        add(severity, Subject.Kind.NONE, message, remedy);
    }

    private void add(FitReport.Severity severity, Subject.Kind kind, Said message, Said remedy) {
        out.add(new Verdict(severity, Subject.of(kind, Tell.said("about.waistband")), message, remedy));
    }

    private void takenIn(Seam join) {
        double top = join.sides().get(0).length();
        double band = join.sides().get(1).length();
        Said numbers = Tell.said("band.takes-in", Part.length(band), Part.length(top), Part.share(1 - band / top));
        boolean shaped = style.top().back() != TopEnd.BackShape.PLAIN;
        if (band / top < LEAST_BAND_RATIO) {
            Said help = shaped ? Tell.said("band.takes-in-shaped-help") : Tell.said("band.takes-in-help");
            add(
                    CAUTION,
                    Subject.Kind.TAKEN_IN,
                    numbers,
                    help.and(Tell.said("band.rib", Part.span(SHORTEST_RIB * top, LONGEST_RIB * top))));
        } else if (shaped) {
            add(NOTE, Subject.Kind.TAKEN_IN, numbers.and(darts()), Said.NOTHING);
        }
    }

    private Said darts() {
        return pattern.seam(Seam.Role.DART)
                .map(d -> Tell.said(
                        "band.darts",
                        Part.length(line(d.sides().get(0))
                                .start()
                                .distance(line(d.sides().get(1)).end()))))
                .orElse(Said.NOTHING);
    }

    private Path line(Seam.Side side) {
        return pattern.piece(side.piece()).edge(side.edge()).line();
    }

    private void noDart() {
        if (style.top().back() == TopEnd.BackShape.DARTS
                && pattern.seam(Seam.Role.DART).isEmpty()) {
            add(
                    NOTE,
                    Tell.said(
                            "band.no-dart",
                            Part.length(body.mm(Measure.WAIST_GIRTH)),
                            Judge.known(body, Measure.WAIST_GIRTH),
                            Part.length(body.mm(Measure.HIP_GIRTH)),
                            Judge.known(body, Measure.HIP_GIRTH)),
                    Tell.said("band.no-dart-help"));
        }
    }

    private void elastic(Notion elastic) {
        double ring = elastic.cut() - elastic.ends();
        double cloth = pattern.level(stretchwright.pattern.Level.Name.WAIST)
                .orElseThrow()
                .width();
        add(
                NOTE,
                Tell.said("band.elastic", Part.length(ring), Part.length(cloth), Part.length(elastic.worn()))
                        .and(Tell.said("band.elastic-pull", pulls(elastic))),
                Tell.said("band.elastic-help"));
    }

    private static Part pulls(Notion elastic) {
        double pull = Elastic.pull(elastic.width(), elastic.cut() - elastic.ends(), elastic.worn());
        double off = StrictMath.exp(Chance.EIGHT_IN_TEN * Elastic.SPREAD);
        return Tell.said("band.newtons", Part.fixed(pull / off, 0), Part.fixed(pull * off, 0));
    }

    /** How far a band reaches above the waist. */
    private void stands() {
        double over = style.bandHeight() - style.dropBelowWaist();
        if (over > HIGHEST_BAND) {
            add(
                    CAUTION,
                    Subject.Kind.HIGH_BAND,
                    Tell.said("band.high", Part.length(over)),
                    Tell.said("band.high-help", Part.length(HIGHEST_BAND).atMost()));
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
                    Tell.said("band.straight-would-do", Part.share(strain)),
                    Tell.said("band.straight-would-do-help"));
        }
    }

    private void cord() {
        out.add(new Verdict(
                CAUTION, Tell.said("about.drawstring"), Tell.said("band.cord"), Tell.said("band.cord-help")));
    }
}
