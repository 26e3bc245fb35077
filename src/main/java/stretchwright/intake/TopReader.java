package stretchwright.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Measure;
import stretchwright.pattern.Parts;
import stretchwright.pattern.TopEnd;

/** Reads how the leggings end above: rise, its front and back, the shape of the back, the waistband. */
final class TopReader {
    private static final List<String> BACKS = List.of("plain", "darts", "shaped seam");

    private final Section s;
    private final Optional<WearerReader.Wearer> wearer;
    private final Parts parts;

    TopReader(Section style, Optional<WearerReader.Wearer> wearer, Parts parts) {
        this.s = style;
        this.wearer = wearer;
        this.parts = parts;
    }

    TopEnd read() {
        double drop = rise();
        return new TopEnd(
                drop,
                s.signedLength("front waist", Limits.RAISE).orElse(0),
                s.signedLength("back waist", Limits.RAISE).orElse(0),
                BandReader.read(s, wearer, drop),
                back());
    }

    private TopEnd.BackShape back() {
        String word = s.choice("back", BACKS, w -> w).orElse("plain");
        if (!word.equals("plain") && parts.sideSeam() == Parts.SideSeam.SHAPED) {
            s.add(
                    "back",
                    Echo.quoted(word) + " and side seam \"shaped\" would both take in the same surplus at the waist.",
                    "Choose one: back: plain with the shaped side seam, or side seam: none.");
        }
        return switch (word) {
            case "darts" -> TopEnd.BackShape.DARTS;
            case "shaped seam" -> TopEnd.BackShape.SHAPED_SEAM;
            default -> TopEnd.BackShape.PLAIN;
        };
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
}
