package stretchwright.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Part;

/** The contrasts from what was given: the fabric's own quality in another colour or print. */
final class ContrastReader {
    /** More than any style has; a limit of our own. */
    private static final int MOST_PIECES = 60;

    private ContrastReader() {}

    /** Empty where the fabric itself could not be read, for nothing can be taken from it then. */
    static List<Contrast> read(Given given, Optional<Fabric> fabric) {
        List<Contrast> out = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Given one : given.each(ContrastKeys.CONTRASTS)) {
            List<String> pieces = one.get(ContrastKeys.PIECES).orElse(List.of());
            if (pieces.size() > MOST_PIECES) {
                one.add(
                        ContrastKeys.PIECES,
                        Tell.said("pieces.many", Part.count(pieces.size())),
                        Tell.said("pieces.most", Part.count(MOST_PIECES)));
                return out;
            }
            named(one, pieces, taken);
            contrast(one, pieces, fabric, out.size() + 1).ifPresent(out::add);
        }
        return out;
    }

    private static void named(Given one, List<String> pieces, Set<String> taken) {
        if (pieces.isEmpty() && one.get(ContrastKeys.PIECES).isPresent()) {
            one.add(ContrastKeys.PIECES, Tell.said("pieces.none"), Tell.said("pieces.name"));
        }
        pieces.stream()
                .filter(p -> !taken.add(p))
                .distinct()
                .forEach(p -> one.add(
                        ContrastKeys.PIECES, Tell.said("pieces.twice", Tell.quoted(p)), Tell.said("pieces.once")));
    }

    private static Optional<Contrast> contrast(Given one, List<String> pieces, Optional<Fabric> fabric, int number) {
        RollKeys roll = RollKeys.CONTRAST;
        Optional<Double> own = one.get(roll.width);
        OptionalDouble width = own.isPresent()
                ? Row.unboxed(own)
                : fabric.stream()
                        .mapToDouble(cloth -> cloth.roll().usableWidth())
                        .findFirst();
        ClothShape shape = ClothShapeReader.read(
                one, roll, width, fabric.map(f -> f.roll().shape().selvage()).filter(v -> own.isEmpty()));
        return fabric.map(f -> f.with(new Fabric.Roll(
                        one.get(ContrastKeys.NAME).orElse("Contrast " + number),
                        width.orElse(f.roll().usableWidth()),
                        ClothShapeReader.onHand(one, roll, shape),
                        one.get(roll.oneWay).orElse(f.roll().oneWay()),
                        one.get(roll.repeat).orElse(0.0),
                        one.get(roll.price).map(Fabric.Price::new),
                        shape)))
                .map(f -> new Contrast(f, pieces));
    }
}
