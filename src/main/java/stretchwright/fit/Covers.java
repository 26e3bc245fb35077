package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** How the cloth grows in area and thins, region by region and pose by pose; a pose known in one direction only is left out. */
final class Covers {
    /** Light that passes the cloth at rest in the example that ranks it, as a share (W15). */
    private static final double AT_REST = 0.01;

    /** Under this weight as worn a pale cloth shows, g/m2; 200 for middling and 170 for dark ones (common practice). */
    static final double PALE = 230;

    private static final Subject SUBJECT = Subject.of(Subject.Kind.SHOW_THROUGH, Tell.said("about.show-through"));

    private Covers() {}

    static List<Cover> of(List<Pose> poses, Fabric fabric) {
        List<Cover> out = new ArrayList<>();
        for (Pose across : poses) {
            poses.stream()
                    .filter(along -> across.direction() == Direction.ACROSS
                            && along.direction() == Direction.ALONG
                            && across.pose() == along.pose()
                            && across.region() == along.region())
                    .findFirst()
                    .ifPresent(along -> {
                        double areal = Strain.then(across.local(), along.local());
                        out.add(new Cover(
                                across.region(),
                                across.pose(),
                                areal,
                                fabric.quality().weight().isPresent()
                                        ? OptionalDouble.of(thinned(
                                                fabric.quality().weight().getAsDouble(), areal))
                                        : OptionalDouble.empty(),
                                fabric.test().showsThroughAt()));
                    });
        }
        return out;
    }

    /** Weight of stretched cloth, g/m2: the same yarn on a larger area. */
    static double thinned(double weight, double areal) {
        return weight / (1 + areal);
    }

    /**
     * Light through stretched cloth: transmittance to the power 1 / L, as constant absorption per gram gives (Beer and
     * Lambert). For ranking only: no published data on knits are known to us.
     */
    static double through(double atRest, double areal) {
        return Math.pow(atRest, 1 / (1 + areal));
    }

    /** One verdict, naming each region with the pose that shows most. */
    static List<Verdict> judged(List<Cover> covers) {
        Map<Region, Cover> worst = new LinkedHashMap<>();
        covers.stream()
                .filter(Cover::shows)
                .forEach(c -> worst.merge(c.region(), c, (one, other) -> other.areal() > one.areal() ? other : one));
        if (worst.isEmpty()) {
            return thin(covers);
        }
        List<Cover> shown = worst.values().stream()
                .sorted(Comparator.comparingDouble((Cover c) -> -c.areal()))
                .toList();
        double limit = shown.get(0).limit().orElseThrow();
        Said message = Tell.said("cover.shows", Part.share(limit));
        for (Cover c : shown) {
            message = message.and(where(c, limit));
        }
        Part light = Part.share(through(AT_REST, shown.get(0).areal()), 1);
        return List.of(new Verdict(
                CAUTION, SUBJECT, message.and(Tell.said("cover.light", light)), Tell.said("cover.shows-help")));
    }

    private static Said where(Cover c, double limit) {
        Part region = new Part.Capital(c.region().said());
        Part grows = Part.share(c.areal());
        Part past = Part.number(100 * (c.areal() - limit), 0);
        return c.weight().isPresent()
                ? Tell.said("cover.grows-and-thins", region, c.pose().said(), grows, past, grams(c))
                : Tell.said("cover.grows", region, c.pose().said(), grows, past);
    }

    private static Part grams(Cover c) {
        return Part.number(c.weight().orElseThrow(), 0);
    }

    /** Where no card was tried and the weight alone leaves a doubt, standing. */
    private static List<Verdict> thin(List<Cover> covers) {
        return covers.stream()
                .filter(c -> c.pose() == PoseName.STANDING && c.limit().isEmpty())
                .filter(c -> c.weight().orElse(PALE) < PALE)
                .max(Comparator.comparingDouble(Cover::areal))
                .map(c -> List.of(new Verdict(
                        NOTE,
                        SUBJECT,
                        Tell.said("cover.thin", grams(c), c.region().said()),
                        Tell.said("cover.thin-help"))))
                .orElse(List.of());
    }
}
