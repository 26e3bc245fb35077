package stretchwright.print.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stretchwright.ground.Box;
import stretchwright.ground.Document;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Names;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.HelpedJob;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.SampleJob;
import stretchwright.print.kit.Writing;
import stretchwright.sewing.Joined;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.sewing.StepKind;

/** Drawings of the steps of whole makes: what stands where, and that no words meet. */
class StepDrawingTest extends DrawnSteps {
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
}
