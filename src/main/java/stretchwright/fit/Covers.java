package stretchwright.fit;

import static stretchwright.fit.FitReport.Severity.CAUTION;
import static stretchwright.fit.FitReport.Severity.NOTE;
import static stretchwright.fit.Judge.percent;
import static stretchwright.fit.Judge.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Strain;
import stretchwright.fit.FitReport.Cover;
import stretchwright.fit.FitReport.Pose;
import stretchwright.fit.FitReport.Verdict;

/** How the cloth grows in area and thins, region by region and pose by pose; a pose known in one direction only is left out. */
final class Covers {
    /** Light that passes the cloth at rest in the example that ranks it, as a share (W15). */
    private static final double AT_REST = 0.01;

    /** Under this weight as worn a pale cloth shows, g/m2; 200 for middling and 170 for dark ones (common practice). */
    static final double PALE = 230;

    private static final Subject SUBJECT = Subject.of(Subject.Kind.SHOW_THROUGH, "show-through");

    private Covers() {}

    static List<Cover> of(List<Pose> poses, Fabric fabric) {
        List<Cover> out = new ArrayList<>();
        for (Pose across : poses) {
            poses.stream()
                    .filter(along -> across.direction().equals("across")
                            && along.direction().equals("along")
                            && across.pose().equals(along.pose())
                            && across.region().equals(along.region()))
                    .findFirst()
                    .ifPresent(along -> {
                        double areal = Strain.then(across.needed(), along.needed());
                        out.add(new Cover(
                                across.region(),
                                across.pose(),
                                areal,
                                fabric.quality().weight().isPresent()
                                        ? OptionalDouble.of(
                                                thinned(fabric.quality().weight().getAsDouble(), areal))
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
        Map<String, Cover> worst = new LinkedHashMap<>();
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
        String where = shown.stream()
                .map(c -> text(
                        "%s, %s: the cloth grows by %.0f %% in area, %.0f points past that%s",
                        Judge.capital(c.region()),
                        c.pose(),
                        percent(c.areal()),
                        percent(c.areal() - limit),
                        c.weight().isPresent()
                                ? text(", and thins to %.0f g/m2", c.weight().getAsDouble())
                                : ""))
                .collect(Collectors.joining(". "));
        return List.of(new Verdict(
                CAUTION,
                SUBJECT,
                text(
                        "The test card showed at %.0f %%. %s. As a rough rank, where 1 %% of the light passes at rest %.1f %%"
                                + " would pass there.",
                        percent(limit),
                        where,
                        percent(through(AT_REST, shown.get(0).areal()))),
                "Choose denser cloth, or line this place."));
    }

    /** Where no card was tried and the weight alone leaves a doubt, standing. */
    private static List<Verdict> thin(List<Cover> covers) {
        return covers.stream()
                .filter(c -> c.pose().equals("standing") && c.limit().isEmpty())
                .filter(c -> c.weight().orElse(PALE) < PALE)
                .max(Comparator.comparingDouble(Cover::areal))
                .map(
                        c -> List.of(
                                new Verdict(
                                        NOTE,
                                        SUBJECT,
                                        text(
                                                "Standing, the cloth thins to %.0f g/m2 at the %s; as worn pale cloth wants 230, middling 200"
                                                        + " and dark 170 or more (common practice).",
                                                c.weight().orElseThrow(), c.region()),
                                        "Stretch it over a printed card until it shows and write the areal stretch as \"shows through at\".")))
                .orElse(List.of());
    }
}
