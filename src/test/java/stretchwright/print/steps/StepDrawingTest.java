package stretchwright.print.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.ground.Progress;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Names;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.Seam;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.Clipping;
import stretchwright.print.kit.HelpedJob;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.kit.Writing;
import stretchwright.sewing.Joined;
import stretchwright.sewing.Place;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.sewing.StepKind;

/** Drawings of the steps of whole makes: what stands where, and that no words meet. */
class StepDrawingTest {

    /** What was drawn, kept to be looked at. */
    private static final class Seen implements Canvas {
        final List<Writing> words = new ArrayList<>();
        final List<List<Point>> thick = new ArrayList<>();
        final List<Point> points = new ArrayList<>();

        @Override
        public void line(Ink ink, List<Point> line, boolean closed) {
            points.addAll(line);
            if (ink == Ink.CUT) {
                thick.add(line);
            }
        }

        @Override
        public void text(Writing writing) {
            words.add(writing);
        }
    }

    static Stream<String> examples() {
        return Stream.of("evening-practice", "shaped-seam-gusset", "whole-boot", "contoured-band", "colour-panel");
    }

    private static Job job(String example) throws Exception {
        Path file = Path.of("examples", example + ".yaml");
        Made m = Make.run(Make.read(file.toString(), Files.readAllBytes(file)), Progress.silent());
        return new Job(
                m.make().name(),
                m.make().wearer(),
                m.make().unit(),
                m.pattern(),
                m.fit(),
                m.lays(),
                m.sewing(),
                Paper.named("A4"));
    }

    @ParameterizedTest
    @MethodSource("examples")
    @Tag("slow")
    void noWordsMeetAndNothingLeavesTheFrame(String example) throws Exception {
        Job job = job(example);
        for (Operation o : job.sewing().operations()) {
            framed(job, o, new Box(0, 0, 90, StepDrawing.height(job, o, 90, 6.8)), 6.8);
            framed(job, o, new Box(13, 40, 135, 120), PlanPdf.TEXT);
            framed(job, o, new Box(13, 40, 135, 82), PlanPdf.TEXT);
        }
        try (var pdf = org.apache.pdfbox.Loader.loadPDF(BookletPdf.pages(job).bytes())) {
            String booklet = new org.apache.pdfbox.text.PDFTextStripper().getText(pdf);
            assertThat(booklet).as("every drawing has room").doesNotContain("no room here");
            job.sewing()
                    .operations()
                    .forEach(o -> assertThat(booklet.split(
                                    "\\b" + o.step() + "\\. " + o.name().word()))
                            .as(o.name().word())
                            .hasSize(2));
        }
    }

    @Test
    void theSampleKeepsItsFrameToo() {
        Job job = SampleJob.on("A4");
        for (Operation o : job.sewing().operations()) {
            framed(job, o, new Box(0, 0, 90, StepDrawing.height(job, o, 90, 6.8)), 6.8);
        }
    }

    private static void framed(Job job, Operation o, Box room, double text) {
        Seen seen = new Seen();
        assertThat(StepDrawing.draw(job, o, seen, room, text))
                .as(o.name().word() + ": every letter and number has a place")
                .isTrue();
        assertThat(seen.points)
                .as(o.name().word())
                .allMatch(p -> room.grown(0.01).meets(new Box(p.x(), p.y(), p.x(), p.y())));
        List<Box> spaces = new ArrayList<>();
        for (Writing w : seen.words) {
            Box space = Box.around(w.outline());
            assertThat(space.minX()).as(o.name().word() + ": " + w.words()).isGreaterThanOrEqualTo(room.minX() - 0.01);
            assertThat(space.maxX()).as(o.name().word() + ": " + w.words()).isLessThanOrEqualTo(room.maxX() + 0.01);
            assertThat(space.minY()).as(o.name().word() + ": " + w.words()).isGreaterThanOrEqualTo(room.minY() - 0.01);
            assertThat(space.maxY()).as(o.name().word() + ": " + w.words()).isLessThanOrEqualTo(room.maxY() + 0.01);
            // lines of one paragraph stand closer than the space a letter may take; 0.3 mm is less than any hair of it
            assertThat(spaces).as(o.name().word() + ": " + w.words()).noneMatch(s -> s.meets(space.grown(-0.3)));
            spaces.add(space);
        }
    }

    /** The waistband is on the fold: the edge that meets the legs is drawn over both halves. */
    @Test
    void anEdgeOnTheFoldIsShownWhole() {
        Job job = SampleJob.on("A4");
        Operation o = joining(
                job,
                new Joined(Names.piece("leg"), EdgeName.WAIST_EDGE),
                new Joined(Names.piece("waistband"), EdgeName.LOWER_EDGE));
        StepPanels step = StepPanels.of(job, o);
        StepPanel band = step.panel("B");
        assertThat(band.piece().onFold()).isTrue();
        Box edge = Box.around(step.sewn("B").line().points());
        assertThat(edge.minX()).isEqualTo(-edge.maxX());
        assertThat(step.sewn("B").line().length())
                .isCloseTo(2 * step.sewn("B").edge().length(), org.assertj.core.api.Assertions.within(0.01));
        assertThat(step.meets())
                .containsExactly(new StepPanels.Meeting(Seam.Role.WAISTBAND_JOIN, List.of("A"), List.of("B")));
    }

    @Test
    void aPairIsDrawnAsLeftAndRightWithTheEdgesFacing() {
        Job job = SampleJob.on("A4");
        StepPanels step = StepPanels.of(
                job,
                joining(
                        job,
                        new Joined(Names.piece("leg"), EdgeName.FRONT_CROTCH),
                        new Joined(Names.piece("leg"), EdgeName.FRONT_CROTCH)));
        assertThat(step.panels()).hasSize(2);
        assertThat(step.panels().get(0).mirrored())
                .isNotEqualTo(step.panels().get(1).mirrored());
        assertThat(step.panels().get(0).sewnOnLeft()).isFalse();
        assertThat(step.panels().get(1).sewnOnLeft()).isTrue();
        assertThat(StepDrawing.key(step).get(0)).isEqualTo("A on B, outsides together.");
    }

    @Test
    @Tag("slow")
    void theGussetSaysWhichEdgesMeet() throws Exception {
        Job job = job("shaped-seam-gusset");
        Operation gusset = named(job, StepKind.GUSSET);
        StepPanels step = StepPanels.of(job, gusset);
        assertThat(step.panels()).hasSize(5);
        assertThat(StepDrawing.key(step).get(0)).isEqualTo("A on B; C on D; E on F; G on H, outsides together.");
        assertThat(StepAfter.of(job, step)).isEmpty();
        StepPanels sides = StepPanels.of(job, named(job, StepKind.SIDE_SEAMS));
        assertThat(StepDrawing.key(sides).get(0)).startsWith("A on B");
        assertThat(StepAfter.of(job, sides)).isPresent();
        assertThat(StepAfter.of(job, StepPanels.of(job, named(job, StepKind.INSEAMS))))
                .isEmpty();
    }

    /** Where nothing flat would be true there is no picture of it: darts, curved bands, straps, panels. */
    @Test
    @Tag("slow")
    void whatCannotBeDrawnHonestlyIsLeftOut() throws Exception {
        Job contoured = job("contoured-band");
        for (StepKind step : List.of(StepKind.DARTS, StepKind.BAND_RINGS)) {
            assertThat(StepAfter.of(contoured, StepPanels.of(contoured, named(contoured, step))))
                    .as(step.word())
                    .isEmpty();
        }
        Job panel = job("colour-panel");
        StepPanels sides = StepPanels.of(panel, named(panel, StepKind.PANELS));
        assertThat(sides.meets())
                .hasSize(2)
                .allMatch(m -> m.one().size() == 1 && m.other().size() == 1);
        assertThat(StepAfter.of(panel, sides)).isEmpty();
    }

    @Test
    @Tag("slow")
    void aRingIsAsRoundAndHighAsItsBand() throws Exception {
        Job job = job("evening-practice");
        StepPanels step = StepPanels.of(job, named(job, StepKind.BAND_RING));
        Box ring = StepAfter.of(job, step).orElseThrow().box();
        Box half = step.panels().get(0).piece().sewLine().box();
        assertThat(ring.width() * Math.PI).isCloseTo(2 * half.width(), org.assertj.core.api.Assertions.within(0.1));
        assertThat(ring.height()).isGreaterThan(half.height());
    }

    @Test
    void theFileHasANameForItsStepAndADescription() {
        Job job = SampleJob.on("A4");
        Document d = StepDrawing.svg(job, job.sewing().operations().get(1));
        assertThat(d.name()).isEqualTo("step-02.svg");
        assertThat(new String(d.bytes(), StandardCharsets.UTF_8))
                .contains("<title>2. front rise</title>", "<desc>A: leg, front crotch; B: other leg, front crotch.");
    }

    /** A step whose every sentence is another one, as in another language, is drawn as before. */
    @Test
    void noDrawingReadsASentence() {
        Job job = SampleJob.on("A4");
        assertThat(whatIsFolded(job)).isNotEmpty();
        for (Operation o : Stream.concat(job.sewing().operations().stream(), whatIsFolded(job).stream())
                .toList()) {
            assertThat(lines(job, foreign(o))).as(o.name().word()).isEqualTo(lines(job, o));
        }
    }

    /** The same in every unit. */
    @Test
    void noDrawingDependsOnTheUnit() {
        Job cm = SampleJob.on("A4");
        Job inches = new Job(
                cm.makeName(), cm.wearerName(), Unit.IN, cm.pattern(), cm.fit(), cm.lays(), cm.sewing(), cm.paper());
        for (Operation o : cm.sewing().operations()) {
            if (StepDrawing.shows(cm, o)) {
                assertThat(StepDrawing.svg(inches, o)).isEqualTo(StepDrawing.svg(cm, o));
            }
        }
    }

    /** A strip without a fold mark, folded along its middle, is drawn folded; marked only, it is not. */
    @Test
    void aStripIsFoldedWhereItsStepSaysSo() {
        Job job = SampleJob.on("A4");
        Joined[] edges = {
            new Joined(Names.piece("cuff"), EdgeName.LOWER_EDGE), new Joined(Names.piece("cuff"), EdgeName.UPPER_EDGE)
        };
        Job bare = unmarked(job);
        for (StepKind kind : List.of(StepKind.CUFF_FOLD, StepKind.BAND_FOLD)) {
            Operation fold = unsewn(joining(bare, edges), kind);
            assertThat(StepAfter.of(bare, StepPanels.of(bare, fold)))
                    .as(kind.word())
                    .isPresent();
        }
        Operation turn = unsewn(joining(bare, edges), StepKind.BAND_TURN);
        assertThat(StepAfter.of(bare, StepPanels.of(bare, turn))).isEmpty();
    }

    private static List<Operation> whatIsFolded(Job job) {
        return List.of(unsewn(
                joining(
                        job,
                        new Joined(Names.piece("cuff"), EdgeName.LOWER_EDGE),
                        new Joined(Names.piece("cuff"), EdgeName.UPPER_EDGE)),
                StepKind.CUFF_FOLD));
    }

    private static List<List<Point>> lines(Job job, Operation o) {
        Seen seen = new Seen();
        StepDrawing.draw(job, o, seen, new Box(0, 0, 90, StepDrawing.height(job, o, 90, 6.8)), 6.8);
        return List.of(seen.points, seen.thick.stream().flatMap(List::stream).toList());
    }

    private static Job unmarked(Job job) {
        Pattern all = job.pattern();
        List<Piece> pieces = all.pieces().stream()
                .map(p -> p.name().is(PieceKind.CUFF)
                        ? Piece.of(
                                p.name(),
                                p.cut(),
                                p.mirrored(),
                                p.onFold(),
                                p.edges(),
                                p.grain(),
                                p.notches(),
                                List.of())
                        : p)
                .toList();
        Pattern pattern = new Pattern(pieces, all.seams(), all.levels(), all.reductions());
        return new Job(
                job.makeName(),
                job.wearerName(),
                job.unit(),
                pattern,
                job.fit(),
                job.lays(),
                job.sewing(),
                job.paper());
    }

    private static Operation unsewn(Operation o, StepKind kind) {
        return new Operation(
                o.step(),
                kind,
                Place.TABLE,
                Optional.empty(),
                "",
                o.joins(),
                0,
                o.minutes(),
                o.after(),
                o.instruction(),
                o.check(),
                o.help());
    }

    private static Operation foreign(Operation o) {
        Said other = SampleJob.told("Zzz zzz.");
        return new Operation(
                o.step(),
                o.name(),
                o.place(),
                o.stitch(),
                o.seam(),
                o.joins(),
                o.length(),
                o.minutes(),
                o.after(),
                other,
                other,
                HelpedJob.HELP);
    }

    @Test
    void aLineIsCutAtTheWindow() {
        List<List<Point>> runs = Clipping.inside(
                List.of(new Point(-5, 5), new Point(15, 5), new Point(15, 8), new Point(-5, 8)),
                true,
                new Box(0, 0, 10, 10));
        assertThat(runs)
                .containsExactly(
                        List.of(new Point(0, 5), new Point(10, 5)), List.of(new Point(10, 8), new Point(0, 8)));
    }

    private static Operation named(Job job, StepKind name) {
        return job.sewing().operations().stream()
                .filter(o -> o.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Operation joining(Job job, Joined... places) {
        Operation o = job.sewing().operations().get(1);
        return new Operation(
                o.step(),
                o.name(),
                o.place(),
                o.stitch(),
                o.seam(),
                List.of(places),
                o.length(),
                o.minutes(),
                o.after(),
                o.instruction(),
                o.check(),
                o.help());
    }
}
