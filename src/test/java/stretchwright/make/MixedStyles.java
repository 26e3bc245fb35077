package stretchwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.SampleBody;
import stretchwright.ground.RandomStream;

/** Make files drawn at random: any body, any cloth, and of the style any keys together, in sizes up to the limits. */
final class MixedStyles {
    private final RandomStream random;
    private final List<String> style = new ArrayList<>();
    /** Sizes are those of a pattern, or anything that the limits allow. */
    private final boolean wild;

    private final double size;

    private MixedStyles(RandomStream random, boolean wild, double size) {
        this.random = random;
        this.wild = wild;
        this.size = size;
    }

    /** In mm; the same seed gives the same file. */
    static String of(long seed) {
        RandomStream random = RandomStream.of(seed, "mixed styles");
        Body body = SampleBody.random(seed);
        MixedStyles mixed = new MixedStyles(random, random.nextDouble() < 0.4, body.mm(Measure.HIP_GIRTH) / 960);
        StringBuilder text = new StringBuilder("stretchwright: 1\nname: mixed\nunit: mm\nwearer:\n  figure: ");
        text.append(body.figure().name().toLowerCase(Locale.ROOT)).append('\n');
        text.append(mixed.or("  seated: true\n", 0.1)).append("  measurements:\n");
        for (Measure m : Measure.values()) {
            boolean always = m == Measure.WAIST_GIRTH || m == Measure.HIP_GIRTH;
            if (always || random.nextDouble() < (seed % 4 == 0 ? 1 : 0.25)) {
                double mm = body.mm(m);
                text.append(
                        m.term().endsWith("girth") && m.ofLeg() && mixed.may(0.15)
                                ? line("    %s: {left: %.1f, right: %.1f}", m.term(), 1.02 * mm, 0.98 * mm)
                                : line("    %s: %.1f", m.term(), mm));
            }
        }
        text.append(mixed.fabric());
        String boot = mixed.boot(body);
        boolean overBoot = mixed.style(!boot.isEmpty());
        text.append(boot).append("style:\n  leg: ").append(overBoot ? "over boot\n" : mixed.leg());
        mixed.style.forEach(l -> text.append("  ").append(l).append('\n'));
        return text.append(mixed.or("machines: [overlocker, coverstitch]\n", 0.6))
                .toString();
    }

    private static String line(String format, Object... values) {
        return String.format(Locale.ROOT, format, values) + "\n";
    }

    private boolean may(double share) {
        return random.nextDouble() < share;
    }

    private String or(String text, double share) {
        return may(share) ? text : "";
    }

    private String any(String... words) {
        return words[random.below(words.length)];
    }

    /** A size between two usual ones that goes with the body; of a wild style between the limits. */
    private double size(double least, double most, double low, double high) {
        double mm = wild && may(0.5) ? random.between(low, high) : size * random.between(least, most);
        return Math.max(low, Math.min(high, mm));
    }

    private String fabric() {
        double across = random.between(0.15, wild ? 2.5 : 1.2);
        return line("fabric:\n  usable width: %.0f", size * random.between(1100, 1700))
                + line("  stretch across: %.1f %%", 100 * across)
                + line("  stretch along: %.1f %%", 100 * across * random.between(0.3, 1.1))
                + or(line("  load across: [[20 %%, 3.1 N], [40 %%, 6.9 N], [60 %%, 13 N]]"), 0.3)
                + or("  one way: false\n", 0.3);
    }

    private String boot(Body body) {
        if (!may(0.6)) {
            return "";
        }
        double heel = body.mm(Measure.HEEL_GIRTH) * random.between(1.15, 1.45);
        return line("boot:\n  top girth: %.1f", body.mm(Measure.CALF_GIRTH) * random.between(0.75, 1.05))
                + line("  heel girth: %.1f", heel)
                + line("  hem girth: %.1f", heel * random.between(0.85, 1))
                + line("  ankle to hem: %.1f", size * random.between(20, 160))
                + or(line("  ankle to top: %.1f", size * random.between(50, 140)), 0.5)
                + or(line("  dressing: over the laced boot\n  guard girth: %.1f", heel * 1.2), 0.2)
                + or(sole(), 0.5);
    }

    private String sole() {
        return line("  ankle to sole: %.1f", size * random.between(90, 170))
                + line("  sole length: %.1f\n  sole width: %.1f", size * 260, size * 90)
                + line("  arch width: %.1f\n  gap between mounts: %.1f", size * 70, size * 110);
    }

    private String leg() {
        return any("ankle", "ankle", "stirrup", "calf", "knee", "short") + "\n";
    }

    /** Whether the leg goes over the boot. */
    private boolean style(boolean boot) {
        boolean overBoot = boot && may(0.8);
        boolean shaped = may(0.25);
        top(shaped);
        parts(shaped);
        String hem = overBoot
                ? any("over the laces", "over the heel", "to the collar", "inside the boot", "whole boot")
                : "";
        boolean cuff = !hem.endsWith("the boot") && !hem.endsWith("boot") && !hem.endsWith("heel") && may(0.4);
        if (cuff) {
            style.add(line("cuff: {height: %.1f}", size(15, 60, 8, 200)).strip());
        }
        if (overBoot) {
            style.add("hem: " + hem);
        }
        if (hem.startsWith("over") && may(0.4)) {
            style.add("strap: {width: 22}");
        }
        if (!cuff && !hem.endsWith("boot") && !hem.endsWith("heel") && may(0.3)) {
            style.add(line("growth: %.1f", random.between(0, 50)).strip());
        }
        style.add("hold: " + any("light", "medium", "firm", "10 %", "{calf: 8 mmHg, knee: 6 mmHg}"));
        if (may(0.2)) {
            style.add(line("ease: {%s: %.1f}", any("hip", "mid-thigh", "knee", "calf"), random.between(-15, 30))
                    .strip());
        }
        if (may(0.2)) {
            style.add(line("seam allowance: %.1f", random.between(3, 40)).strip());
        }
        return overBoot;
    }

    private void top(boolean shaped) {
        double rise = may(0.6) ? size(10, 110, 0, 300) : 0;
        style.add(line("rise: %.1f", rise).strip());
        if (may(0.4)) {
            style.add(line("front waist: %.1f", random.between(-30, 30)).strip());
            style.add(line("back waist: %.1f", random.between(-20, 50)).strip());
        }
        style.add("back: " + (shaped ? "plain" : any("plain", "darts", "darts", "shaped seam")));
        style.add("waistband: " + band(rise));
    }

    private String band(double rise) {
        if (rise > 20 && may(0.5)) {
            return line("{shape: contoured, height: %.1f}", random.between(0.3, 1.1) * rise)
                    .strip();
        }
        return switch (random.below(3)) {
            case 0 ->
                line("{shape: casing, elastic: %.1f}", size(15, 40, 6, 60)).strip();
            case 1 ->
                line("{height: %.1f, key pocket: %.1f, elastic: 20}", size(90, 130, 90, 250), size(45, 80, 35, 150))
                        .strip();
            default -> line("{height: %.1f}", size(20, 110, 8, 250)).strip();
        };
    }

    private void parts(boolean shaped) {
        if (shaped) {
            style.add("side seam: shaped");
        }
        if (may(0.6)) {
            style.add(line("panel: {width: %.1f}", size(may(0.2) ? 10 : 25, 240, 10, 300))
                    .strip());
        }
        if (may(0.5)) {
            double length = size(90, 220, 20, 400);
            style.add(line(
                            "gusset: {length: %.1f, width: %.1f}",
                            length, Math.max(20, length * random.between(0.25, 1)))
                    .strip());
        }
        if (may(0.15)) {
            style.add("knee shaping: true");
        }
        List<String> pockets = new ArrayList<>();
        for (String kind : List.of("phone", "hip pad", "tailbone pad", "knee pad")) {
            if (may(0.2)) {
                pockets.add(line(
                                "{kind: %s, width: %.1f, height: %.1f, thickness: %.1f}",
                                kind, size(30, 100, 30, 400), size(30, 150, 30, 400), size(0, 15, 0, 60))
                        .strip());
            }
        }
        if (!pockets.isEmpty()) {
            style.add("pockets: [" + String.join(", ", pockets) + "]");
        }
    }
}
