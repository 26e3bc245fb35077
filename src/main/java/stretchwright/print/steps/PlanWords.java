package stretchwright.print.steps;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.fit.FitReport;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.pattern.Notion;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Column.Para;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;
import stretchwright.print.kit.Phrases;
import stretchwright.sewing.Place;
import stretchwright.sewing.SeveralPairs;
import stretchwright.sewing.SewingPlan;

/** The running text of the sewing plan. Care and cautions: trade-values section 12 and the sources named there. */
final class PlanWords {
    private PlanWords() {}

    static String title(Job job) {
        return Phrases.of("plan.title", job.make());
    }

    static List<Para> summary(Job job) {
        SewingPlan plan = job.sewing();
        Voice voice = job.voice();
        String thread = plan.thread().entrySet().stream()
                .map(e -> Phrases.of("plan.thread-of", voice.say(e.getKey().said()), Amounts.number(e.getValue(), 0)))
                .collect(Collectors.joining(", "));
        List<Para> all = new ArrayList<>(List.of(
                new Para(7, 0, 0, title(job)),
                text(job.forWhom()),
                text(effort(plan)),
                text(order(plan.optimum(), voice) + byHand(plan)),
                text(Phrases.of("plan.thread", thread.isEmpty() ? Phrases.of("plan.no-thread") : thread))));
        plan.several().map(s -> text(several(s, voice))).ifPresent(all::add);
        job.pattern().notions().stream().map(n -> text(toBuy(n, job.unit()))).forEach(all::add);
        return all;
    }

    private static String effort(SewingPlan plan) {
        String steps = String.valueOf(plan.operations().size());
        String minutes = Amounts.number(plan.minutes(), 0);
        String first = Amounts.number(plan.firstPair(), 0);
        return plan.changeovers() == 1
                ? Phrases.of("plan.effort-one-change", steps, minutes, first)
                : Phrases.of("plan.effort", steps, minutes, first, String.valueOf(plan.changeovers()));
    }

    /** Several pairs: in lots where that is quicker, and what it saves; cones and spools for all. */
    static String several(SeveralPairs s, Voice voice) {
        String thread = s.threads().stream()
                .map(t -> Phrases.of(
                        "plan.spools",
                        voice.say(t.machine().said()),
                        voice.say(t.position().said()),
                        String.valueOf(t.count()),
                        Amounts.number(t.length(), 0)))
                .collect(Collectors.joining(", "));
        String minutes = Amounts.number(s.minutes(), 0);
        String inAll = s.changeovers() == 1
                ? Phrases.of("plan.pairs-in-all-one-change", minutes)
                : Phrases.of("plan.pairs-in-all", minutes, String.valueOf(s.changeovers()));
        return inLots(s) + " " + inAll + " " + Phrases.of("plan.pairs-thread", thread);
    }

    private static String inLots(SeveralPairs s) {
        String pairs = String.valueOf(s.pairs());
        String saved = Amounts.number(s.pairByPair() - s.minutes(), 0);
        if (s.lot() == 1) {
            return Phrases.of("plan.pairs-one-by-one", pairs);
        }
        return s.lots() == 1
                ? Phrases.of("plan.pairs-together", pairs, saved)
                : Phrases.of("plan.pairs-in-lots", pairs, String.valueOf(s.lot()), String.valueOf(s.lots()), saved);
    }

    private static String byHand(SewingPlan plan) {
        boolean hand = plan.operations().stream().anyMatch(o -> o.stitch().isPresent())
                && plan.operations().stream().allMatch(o -> o.stitch().isEmpty() || o.place() == Place.HAND);
        return hand ? " " + Phrases.of("plan.by-hand") : "";
    }

    /** Why the order is as it is: what it was held against, and what forces a conversion. */
    static String order(SewingPlan.Optimum o, Voice voice) {
        String orders = String.format(Locale.ROOT, "%,d", o.validOrders());
        String best = o.validOrders().equals(BigInteger.ONE)
                ? Phrases.of("plan.order-only")
                : Phrases.of("plan.order-best", orders);
        if (o.conversions() == 0) {
            return best;
        }
        String fewest = o.conversions() == o.fewestConversions()
                ? forced(o, voice)
                : Phrases.of("plan.fewer-conversions", times(o.fewestConversions()));
        return best + " " + Phrases.of("plan.converted", times(o.conversions())) + " " + fewest;
    }

    private static String forced(SewingPlan.Optimum o, Voice voice) {
        return o.forcedBy().size() - 1 == o.conversions()
                ? Phrases.of(
                        "plan.conversions-forced",
                        o.forcedBy().stream()
                                .map(name -> voice.say(name.said()))
                                .reduce((one, next) -> Phrases.of("plan.then", one, next))
                                .orElse(""))
                : Phrases.of("plan.conversions-fewest");
    }

    private static String times(int n) {
        return switch (n) {
            case 1 -> Phrases.of("plan.once");
            case 2 -> Phrases.of("plan.twice");
            default -> Phrases.of("plan.times", String.valueOf(n));
        };
    }

    private static String toBuy(Notion n, Unit unit) {
        String[] values = {
            String.valueOf(n.count()),
            Amounts.sewn(Math.rint(n.cut()), unit),
            Amounts.sewn(Math.rint(n.width()), unit),
            n.name()
        };
        return n.name().equals("strap") ? Phrases.of("plan.to-buy-strap", values) : Phrases.of("plan.to-buy", values);
    }

    /** What the fit check said, the worst first. */
    static List<Para> verdicts(FitReport fit, Voice voice) {
        List<Para> all = new ArrayList<>();
        if (fit.verdicts().isEmpty()) {
            return all;
        }
        all.add(new Para(5, 0, 4, fit.stops() ? Phrases.of("fit.stop") : Phrases.of("fit.says")));
        for (FitReport.Severity severity : FitReport.Severity.values()) {
            fit.verdicts().stream()
                    .filter(v -> v.severity() == severity)
                    .forEach(v -> all.add(text(voice.say(severity.said()).toUpperCase(Locale.ROOT) + ": "
                            + Letters.shortened(voice.say(v.message().and(v.remedy())), 2000))));
        }
        return all;
    }

    static List<Para> care() {
        return List.of(text(Phrases.of("care.wash")), text(Phrases.of("care.dry")), text(Phrases.of("care.flames")));
    }

    private static Para text(String words) {
        return new Para(PlanPdf.TEXT, 0, 1, words);
    }
}
