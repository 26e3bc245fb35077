package stretchwright.report;

import java.util.List;
import stretchwright.ground.Numbers;
import stretchwright.sewing.Setting;
import stretchwright.sewing.SeveralPairs;
import stretchwright.sewing.SewingPlan;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The sewing plan in the report. */
final class ReportSewing {
    private ReportSewing() {}

    static void plan(ObjectNode out, SewingPlan plan) {
        ArrayNode operations = out.putArray("operations");
        plan.operations().forEach(o -> operation(operations.addObject(), o));
        out.put("changeovers", plan.changeovers());
        out.put("minutes", Numbers.mm(plan.minutes()));
        out.put("firstPair", Numbers.mm(plan.firstPair()));
        threads(out.putArray("threads"), plan.threads());
        SewingPlan.Optimum optimum = plan.optimum();
        ObjectNode best = out.putObject("optimum");
        best.put("validOrders", optimum.validOrders())
                .put("conversions", optimum.conversions())
                .put("fewestConversions", optimum.fewestConversions());
        texts(best.putArray("forcedBy"), optimum.forcedBy());
        ObjectNode thread = out.putObject("thread");
        plan.thread().forEach((machine, metres) -> thread.put(machine, Numbers.mm(metres)));
        plan.several().ifPresent(p -> several(out.putObject("severalPairs"), p));
    }

    private static void operation(ObjectNode one, SewingPlan.Operation op) {
        one.put("step", op.step());
        one.put("name", op.name());
        one.put("machine", op.machine());
        op.stitch()
                .ifPresentOrElse(
                        s -> one.put("stitch", s.number()).put("stitchName", s.plainName()),
                        () -> one.putNull("stitch"));
        one.put("seam", op.seam());
        texts(one.putArray("joins"), op.joins());
        one.put("length", Numbers.mm(op.length()));
        one.put("minutes", Numbers.mm(op.minutes()));
        ArrayNode after = one.putArray("after");
        op.after().forEach(after::add);
        one.put("instruction", op.instruction());
        one.put("check", op.check());
        help(one, op.help());
    }

    private static void help(ObjectNode one, SewingPlan.Help help) {
        help.setting().ifPresent(s -> setting(one.putObject("setting"), s));
        ArrayNode allowances = one.putArray("allowances");
        help.allowances().forEach(a -> allowances.add(Numbers.mm(a)));
        one.put("spread", help.spread());
        ArrayNode why = one.putArray("why");
        help.why().forEach(r -> why.addObject().put("step", r.step()).put("because", r.because()));
        help.demand()
                .ifPresent(d -> one.putObject("demand")
                        .put("pose", d.pose())
                        .put("needed", Numbers.share(d.needed()))
                        .put("stands", Numbers.share(d.stands()))
                        .put("breaks", d.breaks()));
        one.put("mistake", help.mistake());
        one.put("undo", help.undo());
    }

    private static void setting(ObjectNode out, Setting setting) {
        out.put("stitchLength", Numbers.mm(setting.stitchLength()))
                .put("stitchesPerCm", Numbers.rounded(setting.perCm(), 1))
                .put("needle", setting.needle())
                .put("thread", setting.thread());
        setting.feed().ifPresent(f -> out.put("feed", Numbers.rounded(f, 2)));
        out.put("note", setting.note()).put("kept", setting.kept());
    }

    private static void threads(ArrayNode out, List<SewingPlan.Thread> threads) {
        for (SewingPlan.Thread t : threads) {
            out.addObject()
                    .put("machine", t.machine())
                    .put("position", t.position())
                    .put("metres", Numbers.mm(t.metres()))
                    .put("spoolLength", Numbers.mm(t.length()))
                    .put("spools", t.count());
        }
    }

    private static void several(ObjectNode out, SeveralPairs pairs) {
        out.put("pairs", pairs.pairs())
                .put("lot", pairs.lot())
                .put("lots", pairs.lots())
                .put("changeovers", pairs.changeovers())
                .put("minutes", Numbers.mm(pairs.minutes()))
                .put("pairByPair", Numbers.mm(pairs.pairByPair()));
        threads(out.putArray("threads"), pairs.threads());
    }

    private static void texts(ArrayNode out, List<String> texts) {
        texts.forEach(out::add);
    }
}
