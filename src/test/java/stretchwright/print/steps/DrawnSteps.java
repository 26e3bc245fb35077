package stretchwright.print.steps;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Progress;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Paper;
import stretchwright.sewing.Joined;
import stretchwright.sewing.Place;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.sewing.StepKind;

/** Steps of examples and of the sample, as drawings of them are asked for. */
abstract class DrawnSteps {
    static Job job(String example) throws Exception {
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

    static Operation named(Job job, StepKind name) {
        return job.sewing().operations().stream()
                .filter(o -> o.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static Operation joining(Job job, Joined... places) {
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

    static Operation unsewn(Operation o, StepKind kind) {
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
}
