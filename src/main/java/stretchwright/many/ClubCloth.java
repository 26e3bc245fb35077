package stretchwright.many;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Finding;
import stretchwright.ground.Numbers;
import stretchwright.ground.Unit;
import stretchwright.intake.ClothShapeReader;
import stretchwright.intake.LayReader;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.LayTerms;

/** Whether all makes of a club can lie on one roll: what of the cloth and of the lay has to be the same in all files. */
final class ClubCloth {
    private ClubCloth() {}

    /** @param shown its value, in the maker's unit */
    private record Same(String key, Function<MakeFile, Object> value, Function<MakeFile, String> shown) {}

    private static Same cloth(String key, Function<Fabric, Object> value, Function<MakeFile, String> shown) {
        return new Same("fabric." + key, m -> value.apply(m.fabric()), shown);
    }

    private static Same terms(String key, Function<LayTerms, Object> value) {
        return new Same(
                "style.lay" + key,
                m -> value.apply(m.style().lay()),
                m -> String.valueOf(value.apply(m.style().lay())));
    }

    private static final List<Same> ALL = List.of(
            cloth("usable width", cloth -> cloth.roll().usableWidth(), m -> length(m.fabric().roll().usableWidth(), m.unit())),
            cloth(
                    ClothShapeReader.SELVAGE,
                    f -> f.roll().shape().selvage(),
                    m -> length(m.fabric().roll().shape().selvage(), m.unit())),
            cloth("one way", cloth -> cloth.roll().oneWay(), m -> String.valueOf(m.fabric().roll().oneWay())),
            cloth("repeat along", cloth -> cloth.roll().repeatAlong(), m -> length(m.fabric().roll().repeatAlong(), m.unit())),
            cloth(
                    "shrinkage across",
                    cloth -> cloth.quality().shrinkageAcross(),
                    m -> percent(m.fabric().quality().shrinkageAcross())),
            cloth(
                    "shrinkage along",
                    cloth -> cloth.quality().shrinkageAlong(),
                    m -> percent(m.fabric().quality().shrinkageAlong())),
            cloth(
                    "flaws",
                    f -> f.roll().shape().flaws(),
                    m -> m.fabric().roll().shape().flaws().size() + " of them"),
            cloth(
                    "on hand.outline",
                    f -> f.roll().shape().outline(),
                    m -> m.fabric().roll().shape().outline().isPresent() ? "a remnant's outline" : "none"),
            terms("", t -> LayReader.word(t.way())),
            new Same(
                    "style.lay.scissor gap",
                    m -> m.style().lay().gap(),
                    m -> length(m.style().lay().gap(), m.unit())),
            terms(".grain tolerance", LayTerms::tilt),
            terms(".match print at", t -> t.matchAt().orElse("nothing")));

    /** What differs from the first file: the first such key of each other file. */
    static List<Finding> findings(List<MakeFile> makes) {
        List<Finding> out = new ArrayList<>();
        MakeFile first = makes.get(0);
        for (MakeFile other : makes) {
            ALL.stream()
                    .filter(s -> !s.value().apply(first).equals(s.value().apply(other)))
                    .findFirst()
                    .map(s -> new Finding(
                            other.file(),
                            s.key(),
                            "is " + s.shown().apply(other) + ", but "
                                    + s.shown().apply(first) + " in " + first.file() + "; one roll is laid in one way.",
                            "Write the same in both files, or lay them apart."))
                    .filter(f -> !out.contains(f))
                    .ifPresent(out::add);
        }
        return out;
    }

    private static String length(double mm, Unit unit) {
        return String.format(Locale.ROOT, "%s %s", Numbers.plain(unit.fromMm(mm)), unit.symbol());
    }

    private static String percent(double share) {
        return Numbers.plain(share * 100) + " %";
    }
}
