package stretchwright.print;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.fit.FitReport;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Notion;
import stretchwright.print.Column.Para;
import stretchwright.sewing.SeveralPairs;
import stretchwright.sewing.SewingPlan;

/** The running text of the sewing plan. Care and cautions: trade-values section 12 and the sources named there. */
final class PlanWords {
    private PlanWords() {}

    static List<Para> summary(Job job) {
        SewingPlan plan = job.sewing();
        String thread = plan.thread().entrySet().stream()
                .map(e -> e.getKey() + " " + Amounts.number(e.getValue(), 0) + " m")
                .collect(Collectors.joining(", "));
        List<Para> all = new ArrayList<>(List.of(
                new Para(7, 0, 0, job.make() + " - sewing plan"),
                text(job.forWhom()),
                text(plan.operations().size() + " steps, " + Amounts.number(plan.minutes(), 0)
                        + " minutes for a practised sewer from cut pieces, some " + Amounts.number(plan.firstPair(), 0)
                        + " for a first pair, " + plan.changeovers()
                        + (plan.changeovers() == 1 ? " change" : " changes") + " of machine."),
                text(order(plan.optimum()) + byHand(plan)),
                text("Thread: " + (thread.isEmpty() ? "none" : thread)
                        + ". Sew a sample on the real number of layers first and stretch it: no thread may break.")));
        plan.several().map(s -> text(several(s))).ifPresent(all::add);
        job.pattern().notions().stream().map(n -> text(toBuy(n))).forEach(all::add);
        return all;
    }

    /** Several pairs: in lots where that is quicker, and what it saves; cones and spools for all. */
    static String several(SeveralPairs s) {
        String how = s.lot() == 1
                ? "finish one before the next is begun, no other way is quicker"
                : "do each step for " + (s.lots() == 1 ? "all of them" : s.lot() + " pairs") + " before the next step, "
                        + (s.lots() == 1 ? "" : "in " + s.lots() + " lots, ")
                        + "which saves " + Amounts.number(s.pairByPair() - s.minutes(), 0)
                        + " minutes against one pair after another";
        String thread = s.threads().stream()
                .map(t -> t.machine() + " " + t.position() + " " + t.count() + " x " + Amounts.number(t.length(), 0)
                        + " m")
                .collect(Collectors.joining(", "));
        return s.pairs() + " pairs: " + how + ". In all " + Amounts.number(s.minutes(), 0) + " minutes and "
                + s.changeovers() + (s.changeovers() == 1 ? " change" : " changes") + " of machine. Thread for all: "
                + thread + ".";
    }

    private static String byHand(SewingPlan plan) {
        boolean hand = plan.operations().stream().anyMatch(o -> o.stitch().isPresent())
                && plan.operations().stream()
                        .allMatch(o -> o.stitch().isEmpty() || o.machine().equals(Machine.HAND.word()));
        return hand
                ? " All of it is sewn by hand, which is slow, and a backstitch stretches little: a borrowed machine with a"
                        + " zigzag stitch is quicker and holds more."
                : "";
    }

    /** Why the order is as it is: what it was held against, and what forces a conversion. */
    static String order(SewingPlan.Optimum o) {
        String orders = String.format(Locale.ROOT, "%,d", o.validOrders());
        String best = o.validOrders().equals(BigInteger.ONE)
                ? "No other order keeps what must come before."
                : "Of " + orders + " orders that keep what must come before, none takes less time.";
        if (o.conversions() == 0) {
            return best;
        }
        String fewest = o.conversions() == o.fewestConversions()
                ? " No order needs fewer conversions of the machine" + forced(o)
                : " An order with " + times(o.fewestConversions()) + " takes longer.";
        return best + " The machine is converted " + times(o.conversions()) + "." + fewest;
    }

    private static String forced(SewingPlan.Optimum o) {
        return o.forcedBy().size() - 1 == o.conversions()
                ? ": of " + String.join(", then ", o.forcedBy())
                        + " each waits for the one before and needs the other setup."
                : ".";
    }

    private static String times(int n) {
        return n == 1 ? "once" : n == 2 ? "twice" : n + " times";
    }

    private static String toBuy(Notion n) {
        return "To buy besides the cloth: " + n.count() + " x " + Amounts.number(n.cut(), 0) + " mm of "
                + (n.name().equals("strap") ? "firm elastic" : "elastic") + ", " + Amounts.number(n.width(), 0)
                + " mm wide (" + n.name() + ").";
    }

    /** What the fit check said, the worst first. */
    static List<Para> verdicts(FitReport fit) {
        List<Para> all = new ArrayList<>();
        if (fit.verdicts().isEmpty()) {
            return all;
        }
        all.add(new Para(5, 0, 4, fit.stops() ? "Stop: read before cutting" : "What the fit check says"));
        for (FitReport.Severity severity : FitReport.Severity.values()) {
            fit.verdicts().stream()
                    .filter(v -> v.severity() == severity)
                    .forEach(v -> all.add(text(severity.word().toUpperCase(Locale.ROOT) + ": "
                            + Letters.shortened(v.message() + " " + v.remedy(), 2000))));
        }
        return all;
    }

    static List<Para> care() {
        return List.of(
                text("Wash cold and gentle (never above 40 \u00B0C), inside out. No fabric softener, no bleach."),
                text("Air dry, away from heat. If it must be ironed: low, 110 \u00B0C at most, no steam press -"
                        + " heat ruins elastane."),
                text("Keep it away from flames: the fibres melt."));
    }

    static List<Para> cautions() {
        return List.of(
                text("Needle and knife: keep fingers off the overlock knife and behind the presser foot; take pins"
                        + " out before they reach the knife; switch off and unplug to thread or to change a needle."),
                text("Needles: a new stretch needle for this garment and after 8 to 10 hours of sewing."),
                text("Children: no cords or ties in the waistband, no hanging ankle ties."),
                text("On the ice or on wheels: the hem edge ends above the blade holder or the wheels; nothing loose"
                        + " enough to drag or to come near the blade; laces tucked in."),
                text("This is not a medical device. Take it off if there is numbness, cold, blue skin or tingling, or"
                        + " if a mark stays longer than 30 minutes; where firm pressure is meant or circulation is"
                        + " poor, ask a clinician first."),
                text("Common practice unless a standard is named; the rules where you live come first."));
    }

    private static Para text(String words) {
        return new Para(PlanPdf.TEXT, 0, 1, words);
    }
}
