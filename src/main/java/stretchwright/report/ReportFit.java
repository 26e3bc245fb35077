package stretchwright.report;

import java.util.List;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Likely;
import stretchwright.fit.Cover;
import stretchwright.fit.FitReport;
import stretchwright.fit.LengthFit;
import stretchwright.fit.Reinforcement;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.pattern.WhichLeg;
import stretchwright.settle.SettleRange;
import stretchwright.settle.Settles;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the fit check says of seams, show-through, washing, slips and the course of the leg, in the report. */
final class ReportFit {
    private ReportFit() {}

    static void likely(ObjectNode out, Likely likely) {
        out.put("acrossLow", Numbers.share(likely.strainLow()))
                .put("acrossHigh", Numbers.share(likely.strainHigh()))
                .put("pressureLow", Numbers.rounded(likely.pressureLow(), 3))
                .put("pressureHigh", Numbers.rounded(likely.pressureHigh(), 3))
                .put("pressureLowMmHg", Numbers.mm(Laplace.toMmHg(likely.pressureLow())))
                .put("pressureHighMmHg", Numbers.mm(Laplace.toMmHg(likely.pressureHigh())))
                .put("spread", Numbers.rounded(likely.spread(), 3))
                .put("tensionSpread", Numbers.rounded(likely.tensionSpread(), 3));
    }

    static void seams(ArrayNode out, FitReport fit, Voice voice) {
        for (FitReport.SeamFit s : fit.seams()) {
            out.addObject()
                    .put("seam", s.seam().word())
                    .put("standing", Numbers.share(s.standing()))
                    .put("pose", s.pose().word())
                    .put("needed", Numbers.share(s.needed()))
                    .put("stitch", s.stitch().number())
                    .put("stitchName", s.stitch().plainName())
                    .put("stands", Numbers.share(s.stands()))
                    .put("holds", s.holds())
                    .put(
                            "reinforcement",
                            several(
                                    s.reinforcement().stream()
                                            .map(Reinforcement::said)
                                            .toList(),
                                    voice));
        }
    }

    static void covers(ArrayNode out, FitReport fit) {
        for (Cover c : fit.covers()) {
            ObjectNode one = out.addObject();
            one.put("region", c.region().word()).put("pose", c.pose().word()).put("areal", Numbers.share(c.areal()));
            c.weight().ifPresent(w -> one.put("weight", Numbers.mm(w)));
            c.limit().ifPresent(l -> one.put("limit", Numbers.share(l)));
            one.put("shows", c.shows());
        }
    }

    static void lengths(ArrayNode out, FitReport fit, Voice voice) {
        for (LengthFit l : fit.lengths()) {
            out.addObject()
                    .put("what", voice.say(l.what()))
                    .put("direction", l.direction().word())
                    .put("cut", Numbers.mm(l.cut()))
                    .put("washed", Numbers.mm(l.washed()));
        }
    }

    static void slips(ArrayNode out, FitReport fit, Voice voice) {
        for (FitReport.Slip s : fit.slips()) {
            out.addObject()
                    .put("measure", s.measure().term())
                    .put("by", Numbers.mm(s.by()))
                    .put("changes", several(s.changes(), voice));
        }
    }

    /** Lengths in mm below the places asked for, of the hem above; forces in N of the whole garment. */
    static void settles(ObjectNode out, SettleRange range) {
        Settles s = range.middle();
        out.put("waist", Numbers.mm(s.waist()))
                .put("waistLow", Numbers.mm(SettleRange.low(s.waist(), range.waistSpread())))
                .put("waistHigh", Numbers.mm(SettleRange.high(s.waist(), range.waistSpread())))
                .put("backStanding", Numbers.mm(s.backStanding()))
                .put("back", Numbers.mm(s.back()))
                .put("backLow", Numbers.mm(SettleRange.low(s.back(), range.backSpread())))
                .put("backHigh", Numbers.mm(SettleRange.high(s.back(), range.backSpread())))
                .put("backAfter", Numbers.mm(s.backAfter()))
                .put("backSpin", Numbers.mm(s.backSpin()))
                .put("hemUp", Numbers.mm(s.hemUp()))
                .put("hemUpLow", Numbers.mm(SettleRange.low(s.hemUp(), range.hemSpread())))
                .put("hemUpHigh", Numbers.mm(SettleRange.high(s.hemUp(), range.hemSpread())))
                .put("pullStanding", Numbers.rounded(s.pullStanding(), 1))
                .put("pull", Numbers.rounded(s.pull(), 1))
                .put("grip", Numbers.rounded(s.grip(), 1))
                .put("hemPull", Numbers.rounded(s.hemPull(), 1))
                .put("hemGrip", Numbers.rounded(s.hemGrip(), 1));
    }

    static void course(ArrayNode out, FitReport fit) {
        for (FitReport.CoursePoint p : fit.course()) {
            ObjectNode one = out.addObject();
            if (p.leg() != WhichLeg.BOTH) {
                one.put("leg", p.leg().word());
            }
            one.put("height", Numbers.mm(p.height()))
                    .put("girth", Numbers.mm(p.girth()))
                    .put("width", Numbers.mm(p.width()))
                    .put("across", Numbers.share(p.across()))
                    .put("pressure", Numbers.rounded(p.pressure(), 3));
        }
    }

    static void tried(ArrayNode out, FitReport.Verdict verdict, Voice voice) {
        for (FitReport.Tried t : verdict.tried()) {
            out.addObject()
                    .put("change", voice.say(t.change()))
                    .put("turns", t.turns())
                    .put("after", voice.say(t.after()));
        }
    }

    private static String several(List<Said> all, Voice voice) {
        return voice.say(Part.listed(Part.Join.SEMICOLON, all));
    }
}
