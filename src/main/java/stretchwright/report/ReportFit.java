package stretchwright.report;

import stretchwright.fit.FitReport;
import stretchwright.ground.Numbers;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the fit check says of seams, show-through, washing, slips and the course of the leg, in the report. */
final class ReportFit {
    private ReportFit() {}

    static void seams(ArrayNode out, FitReport fit) {
        for (FitReport.SeamFit s : fit.seams()) {
            out.addObject()
                    .put("seam", s.seam())
                    .put("standing", Numbers.share(s.standing()))
                    .put("pose", s.pose())
                    .put("needed", Numbers.share(s.needed()))
                    .put("stitch", s.stitch())
                    .put("stitchName", s.stitchName())
                    .put("stands", Numbers.share(s.stands()))
                    .put("holds", s.holds())
                    .put("reinforcement", s.reinforcement());
        }
    }

    static void covers(ArrayNode out, FitReport fit) {
        for (FitReport.Cover c : fit.covers()) {
            ObjectNode one = out.addObject();
            one.put("region", c.region()).put("pose", c.pose()).put("areal", Numbers.share(c.areal()));
            c.weight().ifPresent(w -> one.put("weight", Numbers.mm(w)));
            c.limit().ifPresent(l -> one.put("limit", Numbers.share(l)));
            one.put("shows", c.shows());
        }
    }

    static void lengths(ArrayNode out, FitReport fit) {
        for (FitReport.LengthFit l : fit.lengths()) {
            out.addObject()
                    .put("what", l.what())
                    .put("direction", l.direction())
                    .put("cut", Numbers.mm(l.cut()))
                    .put("washed", Numbers.mm(l.washed()));
        }
    }

    static void slips(ArrayNode out, FitReport fit) {
        for (FitReport.Slip s : fit.slips()) {
            out.addObject()
                    .put("measure", s.measure())
                    .put("by", Numbers.mm(s.by()))
                    .put("changes", s.changes());
        }
    }

    static void course(ArrayNode out, FitReport fit) {
        for (FitReport.CoursePoint p : fit.course()) {
            ObjectNode one = out.addObject();
            if (!p.leg().isEmpty()) {
                one.put("leg", p.leg());
            }
            one.put("height", Numbers.mm(p.height()))
                    .put("girth", Numbers.mm(p.girth()))
                    .put("width", Numbers.mm(p.width()))
                    .put("across", Numbers.share(p.across()))
                    .put("pressure", Numbers.rounded(p.pressure(), 3));
        }
    }

    static void tried(ArrayNode out, FitReport.Verdict verdict) {
        for (FitReport.Tried t : verdict.tried()) {
            out.addObject().put("change", t.change()).put("turns", t.turns()).put("after", t.after());
        }
    }
}
