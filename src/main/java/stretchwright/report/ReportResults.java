package stretchwright.report;

import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport;
import stretchwright.ground.Numbers;
import stretchwright.ground.Voice;
import stretchwright.pattern.WhichLeg;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Fit and sewing plan in the report. */
final class ReportResults {
    private ReportResults() {}

    static void fit(ObjectNode out, FitReport fit, Voice voice) {
        ArrayNode levels = out.putArray("levels");
        for (FitReport.LevelFit l : fit.levels()) {
            ObjectNode level = levels.addObject();
            if (l.leg() != WhichLeg.BOTH) {
                level.put("leg", l.leg().word());
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
            ReportFit.likely(level.putObject("likely"), l.likely());
        }
        ArrayNode openings = out.putArray("openings");
        for (FitReport.Opening o : fit.openings()) {
            openings.addObject()
                    .put("opening", o.opening().word())
                    .put("relaxed", Numbers.mm(o.relaxed()))
                    .put("mustPass", Numbers.mm(o.mustPass()))
                    .put("needed", Numbers.share(o.needed()))
                    .put("allowed", Numbers.share(o.allowed()))
                    .put("passes", o.passes());
        }
        ArrayNode poses = out.putArray("poses");
        for (FitReport.Pose p : fit.poses()) {
            poses.addObject()
                    .put("pose", p.pose().word())
                    .put("region", p.region().word())
                    .put("direction", p.direction().word())
                    .put("needed", Numbers.share(p.needed()))
                    .put("neededIfStuck", Numbers.share(p.neededIfStuck()))
                    .put("available", Numbers.share(p.available()))
                    .put("passes", p.passes())
                    .put("derived", p.derived())
                    .put("chance", Numbers.rounded(p.chance(), 3));
        }
        ReportFit.seams(out.putArray("seams"), fit, voice);
        ReportFit.covers(out.putArray("covers"), fit);
        ReportFit.lengths(out.putArray("lengths"), fit, voice);
        ReportFit.slips(out.putArray("slips"), fit, voice);
        ReportFit.course(out.putArray("course"), fit);
        fit.settles().ifPresent(s -> ReportFit.settles(out.putObject("settles"), s));
        ArrayNode verdicts = out.putArray("verdicts");
        for (FitReport.Verdict v : fit.verdicts()) {
            ObjectNode verdict = verdicts.addObject();
            verdict.put("severity", v.severity().word())
                    .put("about", voice.say(v.about()))
                    .put("message", voice.say(v.message()))
                    .put("remedy", voice.say(v.remedy()));
            v.chance().ifPresent(c -> verdict.put("chance", Numbers.rounded(c, 3)));
            ReportFit.tried(verdict.putArray("tried"), v, voice);
        }
        ArrayNode asides = out.putArray("asides");
        fit.asides()
                .forEach(v -> asides.addObject()
                        .put("about", voice.say(v.about()))
                        .put("message", voice.say(v.message()))
                        .put("remedy", voice.say(v.remedy())));
    }
}
