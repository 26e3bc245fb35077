package stretchwright.print.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.ground.InWords.said;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import stretchwright.body.Measure;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Likely;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.SampleFabric;
import stretchwright.fit.Cover;
import stretchwright.fit.Direction;
import stretchwright.fit.FitReport;
import stretchwright.fit.LengthFit;
import stretchwright.fit.OpeningName;
import stretchwright.fit.PoseName;
import stretchwright.fit.Region;
import stretchwright.fit.Reinforcement;
import stretchwright.fit.Subject;
import stretchwright.ground.Document;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.SeamKind;
import stretchwright.pattern.SeamName;
import stretchwright.pattern.Stitch;
import stretchwright.pattern.WhichLeg;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.kit.Writing;
import stretchwright.print.sheets.PieceLabel;

/** The fit sheet and its plots, with made-up numbers in every list. */
class FitPdfTest {
    private static final Likely LIKELY = new Likely(0.09, 0.12, 0.93, 2.1, 0.32, 0.17);
    private static final Job JOB = job();

    private static Job job() {
        Job base = SampleJob.on("A4");
        List<FitReport.CoursePoint> course = new ArrayList<>();
        for (double height = 800; height >= 100; height -= 10) {
            course.add(new FitReport.CoursePoint(WhichLeg.BOTH, height, 300 + height / 4, 270 + height / 4, 0.08, 1.4));
        }
        FitReport fit = new FitReport(
                List.of(new FitReport.LevelFit(
                        Level.Name.KNEE, WhichLeg.BOTH, 365, 330, 0.106, 0.053, 30, 1.4, false, true, LIKELY)),
                List.of(new FitReport.Opening(OpeningName.HEM_OVER_HEEL, 300, 360, 0.2, 0.6, true)),
                List.of(new FitReport.Pose(
                        PoseName.DEEP_KNEE_BEND, Region.KNEE, Direction.ACROSS, 0.4, 0.5, 0.6, true, false, 0.03)),
                List.of(new FitReport.SeamFit(
                        SeamName.of(SeamKind.BACK_RISE),
                        0.05,
                        PoseName.DEEP_KNEE_BEND,
                        0.35,
                        Stitch.OVERLOCK_4,
                        0.6,
                        false,
                        List.of(Reinforcement.TEST_SEAM))),
                List.of(new Cover(
                        Region.SEAT, PoseName.DEEP_KNEE_BEND, 0.66, OptionalDouble.of(152), OptionalDouble.of(0.5))),
                List.of(new LengthFit(Part.text("inseam"), Direction.ALONG, 750, 738)),
                List.of(new FitReport.Slip(Measure.CALF_GIRTH, -6.5, List.of(said("the caution at the calf goes")))),
                course,
                Optional.empty(),
                List.of(
                        new FitReport.Verdict(FitReport.Severity.NOTE, said("band"), said("A note."), Said.NOTHING),
                        new FitReport.Verdict(
                                FitReport.Severity.STOP,
                                Subject.of(said("calf")),
                                said("Too tight by far."),
                                said("Widen it."),
                                List.of(
                                        new FitReport.Tried(
                                                said("a calf 12 mm wider"), true, said("nothing at the calf")),
                                        new FitReport.Tried(said("a light hold"), false, Said.NOTHING)),
                                OptionalDouble.empty())),
                List.of(new FitReport.Verdict(
                        FitReport.Severity.NOTE, said("dart"), said("Nothing to do."), Said.NOTHING)));
        return new Job(
                base.makeName(),
                base.wearerName(),
                base.unit(),
                base.pattern(),
                base.fabric(),
                fit,
                base.lay(),
                base.sewing(),
                base.paper());
    }

    /** Notes beyond the three come after all tables, and what the next reading of the cloth would buy below the levels. */
    @Test
    void asidesComeLast() throws Exception {
        String all = text(FitPdf.of(JOB));
        int asides = all.indexOf("Also good to know");
        assertThat(asides).isGreaterThan(all.indexOf("inseam")).isLessThan(all.indexOf("dart: Nothing to do."));
        assertThat(all.replaceAll("\\s+", " ")).contains("the upper end of a pressure is", "times its lower end");
    }

    @Test
    void theSheetHoldsEveryListTheWorstFirst() throws Exception {
        String all = text(FitPdf.of(JOB));
        assertThat(all)
                .contains("tried, and it helps: a calf 12 mm wider - nothing at the calf")
                .contains("tried, not enough: a light hold")
                .contains("Openings, lengths in cm", "hem over heel", "deep knee bend", "goes")
                .contains("514 four-thread overlock", "breaks; besides: sew a test seam")
                .contains("66 %", "152", "shows through")
                .contains("75 73.8", "-0.7", "the caution at the calf goes")
                .contains("6 to 16 (11) >", "9 to 12 %")
                .contains("not a medical device");
        assertThat(all.indexOf("STOP, calf")).isPositive().isLessThan(all.indexOf("NOTE, band"));
        assertThat(FitPdf.of(JOB).pages()).isBetween(1, 3);
    }

    /** The deepest pose stands in the drawing of the cloth: it was compared with a word and never found. */
    @Test
    void theDeepestPoseIsFound() {
        assertThat(LoadSvg.deepest(JOB, Direction.ACROSS)).isEqualTo(0.5);
        assertThat(new String(LoadSvg.of(JOB).bytes(), StandardCharsets.UTF_8)).contains("across 50 %");
    }

    /** What is empty has no heading; an empty report still makes a sheet. */
    @Test
    void emptyListsAreNotShown() throws Exception {
        String all = text(FitPdf.of(SampleJob.on("letter")));
        assertThat(all).doesNotContain("After washing", "If the tape slipped", "Openings, lengths");
    }

    /** 11 px and more where the drawing is 328 px wide: a telephone of 360 px less the page's margins. */
    @Test
    void theLetteringIsLargeEnoughForATelephone() {
        for (Document d : List.of(FitSvg.of(JOB), LoadSvg.of(JOB))) {
            String svg = new String(d.bytes(), StandardCharsets.UTF_8);
            assertThat(svg).contains("<title>", "<desc>");
            double width = Double.parseDouble(svg.replaceAll("(?s).*?viewBox=\"0 0 ([0-9.]+) .*", "$1"));
            Matcher size = Pattern.compile("font-size=\"([0-9.]+)\"").matcher(svg);
            int found = 0;
            while (size.find()) {
                found++;
                assertThat(Double.parseDouble(size.group(1)) * 328 / width).isGreaterThanOrEqualTo(11);
            }
            assertThat(found).isGreaterThan(8);
        }
    }

    @Test
    void theLettersStayOnTheDrawing() {
        for (Job job : List.of(
                JOB,
                SampleJob.with("A4", "m", "w", SampleFabric.heavyKnit(), SampleJob.openLay()),
                loaded(LoadCurve.assumed(0.6), LoadCurve.assumed(0.6)),
                loaded(LoadCurve.assumed(1.1), LoadCurve.assumed(0.7)),
                loaded(LoadCurve.assumed(0.6), LoadCurve.through(List.of(new LoadCurve.Reading(0.2, 90)))))) {
            FitSvg.draw(job, inside(FitSvg.HEIGHT));
            LoadSvg.draw(job, inside(LoadSvg.HEIGHT));
        }
    }

    private static Canvas inside(double height) {
        return new Canvas() {
            @Override
            public void line(Ink ink, List<stretchwright.ground.Point> points, boolean closed) {
                assertThat(points).allMatch(p -> p.x() >= -0.01 && p.x() <= 118.01 && p.y() >= -0.01);
            }

            @Override
            public void text(Writing w) {
                assertThat(w.outline())
                        .as(w.words())
                        .allMatch(p -> p.x() >= 0 && p.x() <= 118 && p.y() >= 0 && p.y() <= height);
            }
        };
    }

    /** Words of the heads stay whole, also where the last column is long. */
    @Test
    void noWordOfAHeadIsBroken() throws Exception {
        FitReport fit = JOB.fit();
        List<FitReport.SeamFit> seams = List.of(new FitReport.SeamFit(
                SeamName.of(SeamKind.WAISTBAND_JOIN),
                0.163,
                PoseName.PULLED_OVER_THE_HIPS,
                0.402,
                Stitch.OVERLOCK_4,
                1,
                true,
                List.of(Reinforcement.SECOND_ROW)));
        FitReport with = new FitReport(
                fit.levels(),
                fit.openings(),
                fit.poses(),
                seams,
                fit.covers(),
                fit.lengths(),
                fit.slips(),
                fit.course(),
                fit.settles(),
                fit.verdicts());
        assertThat(text(FitPdf.of(with(JOB.fabric(), with)))).contains("standing needed pose stitch stands", "40.2 %");
    }

    /** Assumed is dashed and says so, read is solid, and dotted where the strain lies beyond the last reading. */
    @Test
    void theKindOfLineTellsHowMuchIsKnown() {
        assertThat(curves(LoadCurve.assumed(0.6))).contains("class=\"sew-line\"", "indication only");
        assertThat(curves(LoadCurve.through(List.of(new LoadCurve.Reading(0.2, 20)))))
                .contains("class=\"cut-line\"")
                .doesNotContain("class=\"sew-line\"", "indication only");
        assertThat(curves(LoadCurve.through(List.of(new LoadCurve.Reading(0.05, 20)))))
                .doesNotContain("class=\"cut-line\"");
    }

    private static String curves(LoadCurve across) {
        return new String(
                FitSvg.of(loaded(across, JOB.fabric().test().loadAlong())).bytes(), StandardCharsets.UTF_8);
    }

    private static Job loaded(LoadCurve across, LoadCurve along) {
        Fabric f = JOB.fabric();
        Fabric other = new Fabric(
                new Fabric.Quality(f.quality().weight(), 0, 0),
                new Fabric.Roll(
                        f.roll().name(),
                        f.roll().usableWidth(),
                        f.roll().onHand(),
                        false,
                        0,
                        f.roll().price(),
                        ClothShape.WHOLE),
                new Fabric.Test(
                        f.test().stretchAcross(),
                        f.test().stretchAlong(),
                        across,
                        along,
                        f.test().recovery(),
                        f.test().showsThroughAt(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
        return with(other, JOB.fit());
    }

    private static Job with(Fabric fabric, FitReport fit) {
        return new Job(
                JOB.makeName(),
                JOB.wearerName(),
                JOB.unit(),
                JOB.pattern(),
                fabric,
                fit,
                JOB.lay(),
                JOB.sewing(),
                JOB.paper());
    }

    @Test
    void theAxisStepIsRound() {
        assertThat(Axis.step(23, 3)).isEqualTo(10);
        assertThat(Axis.upTo(23, 10)).isEqualTo(30);
        assertThat(new Axis(0, 10, 5, 25).at(5)).isEqualTo(15);
    }

    @Test
    void theLabelGivesTheRangeWhereTheLevelsDiffer() {
        assertThat(PieceLabel.across(holds(0.13, 0.131)))
                .isEqualTo(Amounts.percent(JOB.pattern().reductions().across()));
        assertThat(PieceLabel.across(holds(0.11, 0.16))).isEqualTo("11 to 16 %, by level");
    }

    private static stretchwright.pattern.Pattern holds(double knee, double calf) {
        stretchwright.pattern.Pattern p = JOB.pattern();
        return new stretchwright.pattern.Pattern(
                p.pieces(),
                p.seams(),
                p.levels(),
                p.reductions(),
                p.reasons(),
                p.notions(),
                List.of(
                        new LevelHold(
                                Level.Name.KNEE, WhichLeg.BOTH, knee, OptionalDouble.of(1.2), LevelHold.Bound.NONE),
                        new LevelHold(
                                Level.Name.CALF, WhichLeg.BOTH, calf, OptionalDouble.of(1.5), LevelHold.Bound.POSE)),
                p.moved(),
                p.backOff(),
                0);
    }

    private static String text(Document d) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(d.bytes())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    @Test
    void whatHasNoNameIsNotNamed() {
        Fabric ink = SampleFabric.with(1470, 0.60, 0.45, true);
        assertThat(SampleJob.named("A4", "Make", "Rowan").forWhom())
                .startsWith("For Rowan, in ")
                .endsWith(".");
        assertThat(SampleJob.named("A4", "Make", "").forWhom()).startsWith("In ");
        Fabric unnamed = new Fabric(
                new Fabric.Quality(
                        ink.quality().weight(),
                        ink.quality().shrinkageAcross(),
                        ink.quality().shrinkageAlong()),
                new Fabric.Roll(
                        "",
                        ink.roll().usableWidth(),
                        ink.roll().onHand(),
                        ink.roll().oneWay(),
                        ink.roll().repeatAlong(),
                        ink.roll().price(),
                        ink.roll().shape()),
                new Fabric.Test(
                        ink.test().stretchAcross(),
                        ink.test().stretchAlong(),
                        ink.test().loadAcross(),
                        ink.test().loadAlong(),
                        ink.test().recovery(),
                        ink.test().showsThroughAt(),
                        ink.test().wrapped(),
                        ink.test().assumed()));
        assertThat(SampleJob.with("A4", "Make", "Rowan", unnamed, SampleJob.openLay())
                        .forWhom())
                .isEqualTo("For Rowan.");
        assertThat(SampleJob.with("A4", "Make", "", unnamed, SampleJob.openLay())
                        .forWhom())
                .isEmpty();
    }
}
