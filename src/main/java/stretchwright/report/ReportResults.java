package stretchwright.report;

import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport;
import stretchwright.ground.Numbers;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Fit and sewing plan in the report. */
final class ReportResults {
    private ReportResults() {}

    static void fit(ObjectNode out, FitReport fit) {
        ArrayNode levels = out.putArray("levels");
        for (FitReport.LevelFit l : fit.levels()) {
            ObjectNode level = levels.addObject();
            if (!l.leg().isEmpty()) {
                level.put("leg", l.leg());
            }
            level.put("level", l.level().word())
                    .put("girth", Numbers.mm(l.girth()))
                    .put("width", Numbers.mm(l.width()))
                    .put("across", Numbers.share(l.across()))
                    .put("along", Numbers.share(l.along()))
                    .put("tension", Numbers.mm(l.tension()))
                    .put("pressure", Numbers.rounded(l.pressure(), 3))
                    .put("pressureMmHg", Numbers.mm(Laplace.toMmHg(l.pressure())))
                    .put("assumed", l.assumed())
                    .put("beyondReadings", l.beyondReadings());
        }
        ArrayNode openings = out.putArray("openings");
        for (FitReport.Opening o : fit.openings()) {
            openings.addObject()
                    .put("opening", o.opening())
                    .put("relaxed", Numbers.mm(o.relaxed()))
                    .put("mustPass", Numbers.mm(o.mustPass()))
                    .put("needed", Numbers.share(o.needed()))
                    .put("allowed", Numbers.share(o.allowed()))
                    .put("passes", o.passes());
        }
        ArrayNode poses = out.putArray("poses");
        for (FitReport.Pose p : fit.poses()) {
            poses.addObject()
                    .put("pose", p.pose())
                    .put("region", p.region())
                    .put("direction", p.direction())
                    .put("needed", Numbers.share(p.needed()))
                    .put("neededIfStuck", Numbers.share(p.neededIfStuck()))
                    .put("available", Numbers.share(p.available()))
                    .put("passes", p.passes())
                    .put("derived", p.derived());
        }
        ReportFit.seams(out.putArray("seams"), fit);
        ReportFit.covers(out.putArray("covers"), fit);
        ReportFit.lengths(out.putArray("lengths"), fit);
        ReportFit.slips(out.putArray("slips"), fit);
        ReportFit.course(out.putArray("course"), fit);
        ArrayNode verdicts = out.putArray("verdicts");
        for (FitReport.Verdict v : fit.verdicts()) {
            ObjectNode verdict = verdicts.addObject();
            verdict.put("severity", v.severity().word())
                    .put("about", v.about())
                    .put("message", v.message())
                    .put("remedy", v.remedy());
            ReportFit.tried(verdict.putArray("tried"), v);
        }
    }
}
