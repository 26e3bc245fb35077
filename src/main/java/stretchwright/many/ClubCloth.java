package stretchwright.many;

import stretchwright.intake.Echo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.ground.Finding;
import stretchwright.ground.Numbers;
import stretchwright.ground.Unit;
import stretchwright.intake.ClothShapeReader;
import stretchwright.intake.LayReader;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.LayTerms;

/**
 * Whether all makes of a club can lie on one roll: what of the cloth and of the lay has to be the same in all files.
 *
 * <p>Of the cloth's quality only what both files tell is held against each other: what is left out, or assumed from the
 * wearer's own wrap test or pose, is no other cloth. Prices, and how much is on hand, may differ.
 */
final class ClubCloth {
    private static final String FABRIC = "fabric.";
    /** Shares are compared as they are shown, to a tenth of a percent. */
    private static final double SHARE = 0.0005;
    /** g/m2: an ounce per square yard is told to a tenth, 1.7 either way. */
    private static final double WEIGHT = 2;
    /** N/m: a force is told to a tenth of a newton, on a strip of 50 mm. */
    private static final double TENSION = 1.01;

    private ClubCloth() {}

    /** @param shown its value, in the maker's unit */
    private record Same(String key, BiPredicate<MakeFile, MakeFile> differs, Function<MakeFile, String> shown) {
        String told(MakeFile first, MakeFile other) {
            return "is " + shown.apply(other) + ", but " + shown.apply(first);
        }
    }

    private static Same cloth(String key, Function<Fabric, Object> value, Function<MakeFile, String> shown) {
        return new Same(
                FABRIC + key,
                (a, b) -> !value.apply(a.fabric()).equals(value.apply(b.fabric())),
                shown);
    }

    private static Same terms(String key, Function<LayTerms, Object> value, Function<MakeFile, String> shown) {
        return new Same(
                "style.lay" + key,
                (a, b) -> !value.apply(a.style().lay()).equals(value.apply(b.style().lay())),
                shown);
    }

    private static Same terms(String key, Function<LayTerms, Object> value) {
        return terms(key, value, m -> String.valueOf(value.apply(m.style().lay())));
    }

    /** A share that both must tell. */
    private static Same told(String key, Function<Fabric, OptionalDouble> value) {
        return told(key, value, SHARE, f -> percent(value.apply(f).orElse(0)));
    }

    private static Same told(
            String key, Function<Fabric, OptionalDouble> value, double within, Function<Fabric, String> shown) {
        return new Same(
                FABRIC + key,
                (a, b) -> value.apply(a.fabric()).isPresent()
                        && value.apply(b.fabric()).isPresent()
                        && Math.abs(value.apply(a.fabric()).getAsDouble()
                                        - value.apply(b.fabric()).getAsDouble())
                                > within,
                m -> shown.apply(m.fabric()));
    }

    private static Same measured(String key, ToDoubleFunction<Fabric> stretch, Predicate<Fabric> assumed) {
        return told(
                key,
                f -> assumed.test(f) ? OptionalDouble.empty() : OptionalDouble.of(stretch.applyAsDouble(f)));
    }

    private static Same load(String key, Function<Fabric, LoadCurve> curve) {
        return new Same(
                FABRIC + key,
                (a, b) -> !alike(curve.apply(a.fabric()), curve.apply(b.fabric())),
                m -> shown(curve.apply(m.fabric())));
    }

    private static boolean alike(LoadCurve a, LoadCurve b) {
        if (a.isAssumed() || b.isAssumed()) {
            return true;
        }
        boolean alike = a.readings().size() == b.readings().size();
        for (int i = 0; i < a.readings().size() && alike; i++) {
            LoadCurve.Reading one = a.readings().get(i);
            LoadCurve.Reading two = b.readings().get(i);
            alike = Math.abs(one.extension() - two.extension()) <= SHARE
                    && Math.abs(one.tension() - two.tension()) <= TENSION;
        }
        return alike;
    }

    private static final List<Same> CLOTH = List.of(
            measured("stretch across", Fabric::stretchAcross, f -> f.assumed().across()),
            measured("stretch along", Fabric::stretchAlong, f -> f.assumed().along()),
            load("load across", Fabric::loadAcross),
            load("load along", Fabric::loadAlong),
            told("weight", Fabric::weight, WEIGHT, f -> Numbers.plain(f.weight().orElse(0)) + " g/m2"),
            told("recovery", Fabric::recovery),
            told("shows through at", Fabric::showsThroughAt),
            cloth("one way", Fabric::oneWay, m -> String.valueOf(m.fabric().oneWay())),
            cloth("repeat along", Fabric::repeatAlong, m -> length(m.fabric().repeatAlong(), m.unit())),
            told("shrinkage across", f -> OptionalDouble.of(f.shrinkageAcross())),
            told("shrinkage along", f -> OptionalDouble.of(f.shrinkageAlong())),
            new Same(
                    FABRIC + "name",
                    (a, b) -> !plain(a).isEmpty() && !plain(b).isEmpty() && !plain(a).equals(plain(b)),
                    m -> Echo.quoted(m.fabric().name())),
            cloth("usable width", Fabric::usableWidth, m -> length(m.fabric().usableWidth(), m.unit())),
            cloth(
                    ClothShapeReader.SELVAGE,
                    f -> f.shape().selvage(),
                    m -> length(m.fabric().shape().selvage(), m.unit())),
            cloth(
                    "flaws",
                    f -> f.shape().flaws(),
                    m -> m.fabric().shape().flaws().size() + " of them"),
            cloth(
                    "on hand.outline",
                    f -> f.shape().outline(),
                    m -> m.fabric().shape().outline().isPresent() ? "a remnant's outline" : "none"));

    private static final List<Same> LAY = List.of(
            terms("", t -> LayReader.word(t.way())),
            terms(
                    ".scissor gap",
                    LayTerms::gap,
                    m -> length(m.style().lay().gap(), m.unit())),
            terms(".grain tolerance", LayTerms::tilt),
            terms(".match print at", t -> t.matchAt().orElse("nothing")));

    /**
     * Each file is held against those before it that go together: where it differs from one of them, a finding about the
     * cloth, one about the lay.
     */
    static List<Finding> findings(List<MakeFile> makes) {
        List<Finding> out = new ArrayList<>();
        List<MakeFile> together = new ArrayList<>();
        for (MakeFile other : makes) {
            List<Finding> wrong = together.stream()
                    .map(one -> findings(one, other))
                    .filter(f -> !f.isEmpty())
                    .findFirst()
                    .orElse(List.of());
            if (wrong.isEmpty()) {
                together.add(other);
            } else if (!out.containsAll(wrong)) {
                out.addAll(wrong);
            }
        }
        return out;
    }

    private static List<Finding> findings(MakeFile one, MakeFile other) {
        return Stream.of(
                        finding(
                                CLOTH,
                                one,
                                other,
                                "one roll is one cloth.",
                                "Give both the same fabric, or lay them in two runs."),
                        finding(
                                LAY,
                                one,
                                other,
                                "one roll is laid in one way.",
                                "Write the same in both files, or lay them apart."))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Under the first key that differs; the others follow in its sentence. */
    private static Optional<Finding> finding(
            List<Same> all, MakeFile first, MakeFile other, String why, String remedy) {
        List<Same> differing =
                all.stream().filter(s -> s.differs().test(first, other)).toList();
        if (differing.isEmpty()) {
            return Optional.empty();
        }
        String more = differing.stream()
                .skip(1)
                .map(s -> s.key().replaceFirst("^(fabric|style\\.lay)\\.", "") + " " + s.told(first, other) + "; ")
                .collect(Collectors.joining());
        Same one = differing.get(0);
        return Optional.of(new Finding(
                other.file(), one.key(), one.told(first, other) + " in " + first.file() + "; " + more + why, remedy));
    }

    private static String plain(MakeFile make) {
        return make.fabric().name().strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private static String shown(LoadCurve curve) {
        return curve.readings().stream()
                .map(r -> Numbers.plain(r.tension() * LoadCurve.STRIP_WIDTH) + " N at " + percent(r.extension()))
                .collect(Collectors.joining(", "));
    }

    private static String length(double mm, Unit unit) {
        return String.format(Locale.ROOT, "%s %s", Numbers.plain(unit.fromMm(mm)), unit.symbol());
    }

    private static String percent(double share) {
        return Numbers.plain(share * 100) + " %";
    }
}
