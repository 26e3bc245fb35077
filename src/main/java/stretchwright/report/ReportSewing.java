package stretchwright.report;

import java.util.List;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.sewing.Setting;
import stretchwright.sewing.SeveralPairs;
import stretchwright.sewing.SewingPlan;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The sewing plan in the report. */
final class ReportSewing {
    private final Voice voice;

    private ReportSewing(Voice voice) {
        this.voice = voice;
    }

    static void plan(ObjectNode out, SewingPlan plan, Unit unit) {
        new ReportSewing(Voice.of(unit)).plan(out, plan);
    }

    private void plan(ObjectNode out, SewingPlan plan) {
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
        ArrayNode forcedBy = best.putArray("forcedBy");
        optimum.forcedBy().forEach(name -> forcedBy.add(name.word()));
        ObjectNode thread = out.putObject("thread");
        plan.thread().forEach((machine, metres) -> thread.put(machine.word(), Numbers.mm(metres)));
        plan.several().ifPresent(p -> several(out.putObject("severalPairs"), p));
    }

    private void operation(ObjectNode one, SewingPlan.Operation op) {
        one.put("step", op.step());
        one.put("name", op.name().word());
        one.put("machine", op.place().word());
        op.stitch()
                .ifPresentOrElse(
                        s -> one.put("stitch", s.number()).put("stitchName", s.plainName()),
                        () -> one.putNull("stitch"));
        one.put("seam", op.seam());
        ArrayNode joins = one.putArray("joins");
        op.joins().forEach(j -> joins.add(j.word()));
        one.put("length", Numbers.mm(op.length()));
        one.put("minutes", Numbers.mm(op.minutes()));
        ArrayNode after = one.putArray("after");
        op.after().forEach(after::add);
        one.put("instruction", voice.say(op.instruction()));
        one.put("check", voice.say(op.check()));
        help(one, op.help());
    }

    private void help(ObjectNode one, SewingPlan.Help help) {
        help.setting().ifPresent(s -> setting(one.putObject("setting"), s));
        ArrayNode allowances = one.putArray("allowances");
        help.allowances().forEach(a -> allowances.add(Numbers.mm(a)));
        one.put("spread", voice.say(Part.listed(Part.Join.SEMICOLON, help.spread())));
        ArrayNode why = one.putArray("why");
        help.why().forEach(r -> why.addObject().put("step", r.step()).put("because", voice.say(r.because())));
        help.demand()
                .ifPresent(d -> one.putObject("demand")
                        .put("pose", voice.say(d.pose()))
                        .put("needed", Numbers.share(d.needed()))
                        .put("stands", Numbers.share(d.stands()))
                        .put("breaks", d.breaks()));
        one.put("mistake", voice.say(help.mistake()));
        one.put("undo", voice.say(help.undo()));
    }

    private void setting(ObjectNode out, Setting setting) {
        out.put("stitchLength", Numbers.mm(setting.stitchLength()))
                .put("stitchesPerCm", Numbers.rounded(setting.perCm(), 1))
                .put("needle", voice.say(setting.needle()))
                .put("thread", voice.say(setting.thread()));
        setting.feed().ifPresent(f -> out.put("feed", Numbers.rounded(f, 2)));
        out.put("note", voice.say(setting.note())).put("kept", setting.kept());
    }

    private static void threads(ArrayNode out, List<SewingPlan.Thread> threads) {
        for (SewingPlan.Thread t : threads) {
            out.addObject()
                    .put("machine", t.machine().word())
                    .put("position", t.position().word())
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
}
