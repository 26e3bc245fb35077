package stretchwright.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;

/** Reads the contrasts: the fabric's own quality in another colour or print, so only what may differ is asked for. */
public final class ContrastReader {
    public static final String KEY = "contrasts";
    private static final String PIECES = "pieces";
    private static final List<String> KEYS = List.of(
            "name",
            PIECES,
            "usable width",
            ClothShapeReader.SELVAGE,
            "on hand",
            "flaws",
            "one way",
            "repeat along",
            "price");
    private static final String EXAMPLE = "[{name: Rust, pieces: [cuff, waistband], usable width: 147}]";
    private static final int MOST = 4;
    /** More than any style has; a limit of our own. */
    private static final int MOST_PIECES = 60;

    private ContrastReader() {}

    /** Empty where the fabric itself could not be read, for nothing can be taken from it then. */
    static List<Contrast> read(Section section, Optional<Fabric> fabric) {
        List<Contrast> out = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Section s : section.sections(KEY, KEYS, MOST, EXAMPLE)) {
            s.require(PIECES, "[cuff, waistband]");
            List<String> pieces = s.texts(PIECES, "[cuff, waistband]");
            if (pieces.isEmpty() && s.has(PIECES)) {
                s.add(PIECES, "names no piece.", "Name those cut from this cloth, for example [cuff, waistband].");
            }
            if (pieces.size() > MOST_PIECES) {
                s.add(PIECES, "names " + pieces.size() + " pieces.", "No pattern has more than " + MOST_PIECES + ".");
                return out;
            }
            pieces.stream()
                    .filter(p -> !taken.add(p))
                    .distinct()
                    .forEach(p -> s.add(PIECES, Echo.quoted(p) + " is named twice.", "Cut each piece from one cloth."));
            Optional<String> name = s.name("name");
            OptionalDouble own = s.length("usable width", Limits.USABLE_WIDTH);
            OptionalDouble width = own.isPresent()
                    ? own
                    : fabric.stream().mapToDouble(cloth -> cloth.roll().usableWidth()).findFirst();
            ClothShape shape = ClothShapeReader.read(
                    s, width, fabric.map(f -> f.roll().shape().selvage()).filter(v -> own.isEmpty()));
            OptionalDouble onHand = ClothShapeReader.onHand(s, shape);
            Optional<Boolean> oneWay = s.yes("one way");
            OptionalDouble repeat = s.length("repeat along", Limits.REPEAT);
            Optional<Fabric.Price> price = FabricReader.price(s);
            fabric.map(f -> f.with(new Fabric.Roll(
                            name.orElse("Contrast " + (out.size() + 1)),
                            width.orElse(f.roll().usableWidth()),
                            onHand,
                            oneWay.orElse(f.roll().oneWay()),
                            repeat.orElse(0),
                            price,
                            shape)))
                    .ifPresent(f -> out.add(new Contrast(f, pieces)));
        }
        return out;
    }
}
