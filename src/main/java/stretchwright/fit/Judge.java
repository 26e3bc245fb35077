package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.FitReport.Severity.STOP;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Comfort;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport.LevelFit;
import stretchwright.fit.FitReport.Opening;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.pattern.Level;

/** What the numbers mean: stop, caution or note, each with its numbers and a remedy. */
final class Judge {
    /** Passing should leave this much of what is allowed in reserve, for tape errors and tired cloth. */
    static final double EASY_SHARE = 0.85;

    /** An opening cut to pass with just that reserve may fall short of it by the 0.01 mm grid: on 120 mm 0.0002. */
    static final double ROUNDING = 0.0005;

    /** Standing, at most half of the stretch may be used (docs/maths/fit.md, Limits; common practice, no source). */
    static final double STANDING_SHARE = 0.5;

    private Judge() {}

    static List<Verdict> openings(List<Opening> openings, Fabric fabric, String orElse) {
        List<Verdict> out = new ArrayList<>();
        for (Opening o : openings) {
            double wide = o.mustPass() / (1 + EASY_SHARE * o.allowed());
            String numbers = text(
                    "%s: %.0f mm at rest must pass %.0f mm; that needs %.0f %%, and %.0f %% is there (cloth across: %.0f %%).",
                    o.opening(),
                    o.relaxed(),
                    o.mustPass(),
                    percent(o.needed()),
                    percent(o.allowed()),
                    percent(fabric.stretchAcross()));
            if (!o.passes()) {
                boolean seam = o.allowed() < fabric.stretchAcross();
                String what = seam ? "a stitch that stretches %.0f %% or more" : "cloth of %.0f %% or more across";
                out.add(new Verdict(
                        STOP,
                        o.opening(),
                        "It will not go on. " + numbers + (seam ? " The stitch is the limit." : ""),
                        text(
                                        "Use " + what + ", or make this opening %.0f mm wide.",
                                        Math.ceil(percent(o.needed() / EASY_SHARE)),
                                        wide)
                                + (o.opening().equals(Openings.HEM) ? orElse : "")));
            } else if (o.needed() > EASY_SHARE * o.allowed() + ROUNDING) {
                out.add(new Verdict(
                        CAUTION,
                        o.opening(),
                        "It goes on, but only just. " + numbers,
                        text("%.0f mm at rest would pass easily.", wide)));
            }
        }
        return out;
    }

    static List<Verdict> levels(List<LevelFit> levels, Fabric fabric, boolean overBoot) {
        List<Verdict> out = new ArrayList<>();
        for (LevelFit l : levels) {
            strain(l, fabric).ifPresent(out::add);
            if (onSkin(l, overBoot)) {
                pressure(l).ifPresent(out::add);
            }
        }
        tourniquet(levels).ifPresent(out::add);
        return out;
    }

    private static Optional<Verdict> strain(LevelFit l, Fabric fabric) {
        double most = STANDING_SHARE * fabric.stretchAcross();
        if (l.across() > fabric.stretchAcross()) {
            return one(
                    STOP,
                    l,
                    text(
                            "At the %s the cloth would have to stretch %.0f %% standing; it has %.0f %%.",
                            l.place(), percent(l.across()), percent(fabric.stretchAcross())),
                    text("Choose a lighter hold, or cloth of %.0f %% or more across.", percent(l.across()) * 2));
        }
        if (l.across() > most) {
            return one(
                    CAUTION,
                    l,
                    text(
                            "At the %s the cloth uses %.0f %% standing, more than half of its %.0f %%: little is left for bending.",
                            l.place(), percent(l.across()), percent(fabric.stretchAcross())),
                    text("Cloth of %.0f %% or more across leaves enough.", Math.ceil(percent(l.across()) * 2)));
        }
        return Optional.empty();
    }

    private static Optional<Verdict> pressure(LevelFit l) {
        double mmHg = Laplace.toMmHg(l.pressure());
        boolean band = l.level() == Level.Name.WAIST;
        double stop = band ? Comfort.STOP_BAND : Comfort.STOP;
        double caution = band ? Comfort.CAUTION_BAND : Comfort.CAUTION;
        if (mmHg <= (band ? Comfort.CAUTION_BAND : Comfort.NOTE)) {
            return Optional.empty();
        }
        String indication = "";
        if (l.assumed()) {
            indication = " The load curve is assumed and not measured, so take this as an indication.";
        } else if (l.beyondReadings()) {
            indication = " That lies beyond the last reading; the curve is carried on straight.";
        }
        String message = text(
                "At the %s the pressure is about %.0f mmHg (%.1f kPa).%s", l.place(), mmHg, l.pressure(), indication);
        if (mmHg > stop && !l.assumed()) {
            return one(STOP, l, message, text("Stay below %.0f mmHg: choose a lighter hold or a softer cloth.", stop));
        }
        if (mmHg > caution) {
            String device = mmHg > Comfort.DEVICE && !band
                    ? " That is in the range of medical compression, and this is no medical device: ask a clinician."
                    : "";
            return one(
                    CAUTION,
                    l,
                    message + device,
                    "Take it off if the leg turns numb, cold or blue; a lighter hold lowers the pressure.");
        }
        return one(NOTE, l, message, "");
    }

    /** A thigh tighter than the calf holds the blood back (section 2.3). */
    private static Optional<Verdict> tourniquet(List<LevelFit> levels) {
        double calf = pressureAt(levels, Level.Name.CALF);
        for (Level.Name name : List.of(Level.Name.CROTCH, Level.Name.MID_THIGH)) {
            double thigh = pressureAt(levels, name);
            if (calf > 0 && thigh > 1.1 * calf && Laplace.toMmHg(thigh) > Comfort.NEGLIGIBLE) {
                return Optional.of(new Verdict(
                        CAUTION,
                        name.word(),
                        text(
                                "The pressure rises going up the leg: %.1f mmHg at the %s, %.1f at the calf.",
                                Laplace.toMmHg(thigh), name.word(), Laplace.toMmHg(calf)),
                        "Check the thigh and calf girths; a lighter hold makes the difference smaller."));
            }
        }
        return Optional.empty();
    }

    static List<Verdict> poses(List<Pose> poses) {
        List<Verdict> out = new ArrayList<>();
        for (Pose p : hardest(poses)) {
            String numbers = text(
                    "%s, %s %s: needs %.0f %%, and the cloth has %.0f %%.",
                    capital(p.pose()), p.region(), p.direction(), percent(p.needed()), percent(p.available()));
            String cloth =
                    text("Cloth of %.0f %% or more %s has enough.", Math.ceil(percent(p.needed())), p.direction());
            boolean along = p.direction().equals("along");
            if (!p.passes() && (!along || p.needed() > 2 * p.available())) {
                out.add(new Verdict(STOP, p.pose() + ", " + p.region() + " " + p.direction(), numbers, cloth));
            } else if (!p.passes()) {
                out.add(new Verdict(
                        CAUTION,
                        p.pose() + ", " + p.region() + " " + p.direction(),
                        numbers + " The hem will creep up or the band will be pulled down.",
                        cloth));
            }
        }
        return out;
    }

    /** For each region and direction the pose that asks most; the others would only say the same again. */
    private static List<Pose> hardest(List<Pose> poses) {
        Map<String, Pose> out = new LinkedHashMap<>();
        for (Pose p : poses) {
            out.merge(p.region() + " " + p.direction(), p, (one, other) -> other.needed() > one.needed() ? other : one);
        }
        return List.copyOf(out.values());
    }

    private static boolean onSkin(LevelFit l, boolean overBoot) {
        return l.level() != Level.Name.BOOT_TOP && !(l.level() == Level.Name.HEM && overBoot);
    }

    private static double pressureAt(List<LevelFit> levels, Level.Name name) {
        return levels.stream()
                .filter(l -> l.level() == name)
                .mapToDouble(LevelFit::pressure)
                .findFirst()
                .orElse(0);
    }

    private static Optional<Verdict> one(FitReport.Severity severity, LevelFit l, String message, String remedy) {
        return Optional.of(new Verdict(severity, l.place(), message, remedy));
    }

    static double percent(double share) {
        return 100 * share;
    }

    static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
