package stretchwright.make;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Measure;
import stretchwright.pattern.TopEnd;

/** Reads how the leggings end above: rise and waistband. */
final class TopReader {
    private final Section s;
    private final Optional<WearerReader.Wearer> wearer;

    TopReader(Section style, Optional<WearerReader.Wearer> wearer) {
        this.s = style;
        this.wearer = wearer;
    }

    TopEnd read() {
        return TopEnd.band(band()).dropped(rise());
    }

    private double rise() {
        Optional<String> word = s.text("rise");
        if (word.isEmpty() || word.get().equals("waist")) {
            return 0;
        }
        if (word.get().equals("hip")) {
            return waistToHip();
        }
        if (!word.get().chars().anyMatch(Character::isDigit)) {
            s.add(
                    "rise",
                    Echo.quoted(word.get()) + " is not a rise that is known here.",
                    "Write waist, hip, or a length below the waist such as 4 cm.");
            return 0;
        }
        return s.length("rise", Limits.DROP).orElse(0);
    }

    /**
     * The top of the hips, halfway from the waist to the fullest part (the usual top-hip level lies 75 to 100 mm below
     * the waist), where both heights were measured; an estimate would decide the whole top edge.
     */
    private double waistToHip() {
        Map<Measure, Double> given = wearer.map(w -> w.measured().means()).orElse(Map.of());
        Double waist = given.get(Measure.WAIST_HEIGHT);
        Double hip = given.get(Measure.HIP_HEIGHT);
        if (waist == null || hip == null) {
            s.add(
                    "rise",
                    "\"hip\" needs the waist height and the hip height, measured.",
                    "Give both under wearer.measurements, or write a length below the waist such as 10 cm.");
            return 0;
        }
        return Math.max(0, (waist - hip) / 2);
    }

    private double band() {
        Optional<Section> band = s.section("waistband", List.of("shape", "height", "elastic"));
        band.ifPresent(b -> {
            StyleReader.only(b, "shape", List.of("straight"), List.of("straight", "contoured"));
            Optional<String> elastic = b.text("elastic");
            if (elastic.isPresent() && !elastic.get().equals("none")) {
                b.add("elastic", MakeReader.notYet(elastic.get(), List.of("none")), "");
            }
        });
        return band.map(b -> b.length("height", Limits.BAND_HEIGHT))
                .orElse(OptionalDouble.empty())
                .orElse(Limits.USUAL_BAND);
    }
}
