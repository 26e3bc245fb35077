package stretchwright.print.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.Part;
import stretchwright.sewing.Setting;
import stretchwright.sewing.SewingPlan;
import stretchwright.sewing.SewingPlan.Demand;
import stretchwright.sewing.SewingPlan.Help;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.sewing.SewingPlan.Reason;

/** The sample job with all the help that a step can have; all of it invented. */
public final class HelpedJob {
    public static final Help HELP = new Help(
            Optional.of(Setting.kept(
                    2.5, "stretch needle 75/11", "textured polyester 120", OptionalDouble.of(1.5), "upper looper 3")),
            List.of(7.0, 7.0),
            List.of(SampleJob.told("stretch the cuff by 12 mm between the centre and the inseam")),
            List.of(new Reason(1, SampleJob.told("the setting is tried on a scrap"))),
            Optional.of(new Demand(Part.text("deep squat"), 0.42, 0.3)),
            SampleJob.told("the lower layer creeps: a tuck at the end"),
            SampleJob.told("unpick 50 mm, ease, sew again"));

    private HelpedJob() {}

    public static Job job() {
        return with(SampleJob.on("A4"), HELP);
    }

    public static Job with(Job job, Help help) {
        List<Operation> all = new ArrayList<>();
        for (Operation o : job.sewing().operations()) {
            all.add(new Operation(
                    o.step(),
                    o.name(),
                    o.place(),
                    o.stitch(),
                    o.seam(),
                    o.joins(),
                    o.length(),
                    o.minutes(),
                    o.after(),
                    o.instruction(),
                    o.check(),
                    help));
        }
        SewingPlan p = job.sewing();
        return new Job(
                job.makeName(),
                job.wearerName(),
                job.unit(),
                job.pattern(),
                job.fit(),
                job.lays(),
                new SewingPlan(
                        all,
                        p.changeovers(),
                        p.minutes(),
                        p.firstPair(),
                        p.thread(),
                        p.threads(),
                        p.optimum(),
                        p.several()),
                job.paper());
    }
}
