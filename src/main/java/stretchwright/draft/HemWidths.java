package stretchwright.draft;

import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.boot.Boot;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Level;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Reason.Input;
import stretchwright.pattern.Style;

/** How wide the lower end of the leg is cut: as what it lies on, and for what must pass it. */
final class HemWidths {
    private static final Said SOURCE = Tell.said("source.hems");

    private HemWidths() {}

    /** Length of the finished edge, as its maker wants it; what must pass it is for the fit check to say. */
    static Ruled edge(Order order) {
        Ruled plain = plain(order);
        double ease = Cover.wanted(order.style()) ? 0 : ease(order);
        return ease == 0 ? plain : plain.with(plain.value() + ease).with(eased(ease));
    }

    /** As its rules give it. */
    static Ruled plain(Order order) {
        Ruled edge = order.boot()
                .filter(b -> order.style().lower().outsideBoot())
                .map(b -> overBoot(b, order))
                .orElseGet(() -> onLeg(order, HemHeights.of(order).value()));
        return edge.with(Inputs.stretchAcross(order.fabric()));
    }

    static Input eased(double ease) {
        return Inputs.style(Tell.said("input.ease", Level.Name.HEM.said()), ease);
    }

    /** What is added to the hem of the garment, mm; of a cover that is its own lower edge. */
    static double ease(Order order) {
        return order.style().ease().getOrDefault(Level.Name.HEM, 0.0);
    }

    /** On the leg itself: as the body is there, and for the heel to pass where it must. */
    private static Ruled onLeg(Order order, double height) {
        Body body = order.body();
        Style.Leg leg = order.style().leg();
        Input taken = order.holding().taken(Level.Name.ANKLE);
        boolean atAnkle = height <= body.mm(Measure.ANKLE_HEIGHT) || leg == Style.Leg.ANKLE || leg == Style.Leg.STIRRUP;
        if (!atAnkle && leg != Style.Leg.OVER_BOOT) {
            return Ruled.of(there(order, height), Tell.said("rule.hem-length"), SOURCE, taken);
        }
        return Ruled.of(
                atAnkle ? ankle(order) : Math.max(there(order, height), heelPasses(order)),
                Tell.said("rule.hem-length-heel", easyPull()),
                SOURCE,
                taken,
                Inputs.measure(body, Measure.ANKLE_GIRTH),
                Inputs.measure(body, Measure.HEEL_GIRTH));
    }

    private static double there(Order order, double height) {
        return GirthProfile.of(order.body()).girthAt(height)
                * (1 - order.holding().reductionAt(height));
    }

    /** Over the boot: the boot's girth there, and for the heel to pass. */
    private static Ruled overBoot(Boot boot, Order order) {
        LowerEnd.Hem hem = order.style().lower().hem();
        double held = 1 - order.reductions().hem();
        if (hem == LowerEnd.Hem.TO_COLLAR || hem == LowerEnd.Hem.WHOLE_BOOT) {
            double girth = boot.girthBelowTop(LowerEnd.LUNGE);
            Said name = Tell.said("input.girth-below-top", Part.millimetres(LowerEnd.LUNGE, 0));
            Ruled plain = Ruled.of(
                    girth * held, Tell.said("rule.hem-length-collar"), SOURCE, Inputs.boot(name, girth), order.hem());
            return passing(boot, girth, plain, order.hemStretch());
        }
        Ruled plain = Ruled.of(
                Math.max(boot.hemGirth() * held, Reducing.narrowestFor(boot.heelGirth(), order.hemStretch())),
                Tell.said("rule.hem-length-over", easyPull()),
                SOURCE,
                Inputs.boot(Tell.said("input.hem-girth"), boot.hemGirth()),
                order.hem(),
                Inputs.boot(Tell.said("input.boot-heel-girth"), boot.heelGirth()));
        return passing(boot, boot.hemGirth(), plain, order.hemStretch());
    }

    /** At the boot's top edge. Rolled up for lacing, the whole lower leg lies round the calf. */
    static double atTop(Boot boot, Order order) {
        Body body = order.body();
        double cloth = order.fabric().test().stretchAcross();
        double calf = boot.overLaced() ? 0 : body.mm(Measure.CALF_GIRTH);
        double foot = Math.max(calf, Math.max(body.mm(Measure.HEEL_GIRTH), boot.topGirth()));
        double held = boot.topGirth() * (1 - order.reductions().hem());
        return passing(boot, boot.topGirth(), Math.max(held, Reducing.narrowestFor(foot, cloth)), cloth);
    }

    private static Ruled passing(Boot boot, double girth, Ruled least, double stretch) {
        return boot.overLaced()
                ? least.with(passing(boot, girth, least.value(), stretch))
                        .with(Tell.said("rule.hem-length-widened", least.rule()))
                        .with(Inputs.boot(Tell.said("input.must-pass"), boot.widestOverLaced()))
                : least;
    }

    /** Pulled over the laced boot it is cut wider for guard and heel to pass, but never so wide that it hangs loose. */
    private static double passing(Boot boot, double girth, double least, double stretch) {
        if (!boot.overLaced()) {
            return least;
        }
        return Math.max(least, Math.min(girth, Reducing.narrowestFor(boot.widestOverLaced(), stretch)));
    }

    static double ankle(Order order) {
        return Math.max(order.holding().at(Level.Name.ANKLE).width(), heelPasses(order));
    }

    private static double heelPasses(Order order) {
        return Reducing.narrowestFor(order.body().mm(Measure.HEEL_GIRTH), order.hemStretch());
    }

    private static Part easyPull() {
        return Part.number(Reducing.PASSING_SHARE, 2);
    }
}
