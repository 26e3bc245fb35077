package stretchwright.intake;

import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.body.Measured;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Learnt;
import stretchwright.fabric.LoadCurve;
import stretchwright.fabric.Usual;

/** The fabric from what was given. */
final class FabricReader {
    private FabricReader() {}

    /** The wearer's own girths and lengths say what a wrap test and a pose mean; empty where they could not be read. */
    static Optional<Fabric> read(Given given, Optional<Measured> wearer) {
        RollKeys roll = RollKeys.FABRIC;
        // what is wrong there is a finding already, and no reason to ask for more
        boolean usual = given.get(FabricKeys.USUAL).orElse(given.has(FabricKeys.USUAL));
        boolean usualWidth = usual && !given.has(roll.width);
        Optional<Double> width =
                usualWidth ? Optional.of(Usual.usableWidth(Row.unboxed(given.get(roll.selvage)))) : width(given, roll);
        ClothShape shape = ClothShapeReader.read(given, roll, Row.unboxed(width), Optional.empty());
        HangingReader.Found hung = HangingReader.read(given);
        Optional<StretchReader.Found> found =
                given.isRead(FabricKeys.FABRIC) ? new StretchReader(given, wearer, usual).read() : Optional.empty();
        if (width.isEmpty() || found.isEmpty()) {
            return Optional.empty();
        }
        StretchReader.Found stretch = found.get();
        Learnt learnt = LearntKeys.read(given);
        OptionalDouble weight = Row.unboxed(given.get(FabricKeys.WEIGHT));
        return Optional.of(new Fabric(
                        new Fabric.Quality(
                                weight,
                                given.orUsual(FabricKeys.SHRINKAGE_ACROSS),
                                given.orUsual(FabricKeys.SHRINKAGE_ALONG)),
                        new Fabric.Roll(
                                given.get(FabricKeys.NAME).orElse(""),
                                width.get(),
                                ClothShapeReader.onHand(given, roll, shape),
                                given.get(roll.oneWay).orElse(true),
                                given.get(roll.repeat).orElse(0.0),
                                given.get(roll.price).map(Fabric.Price::new),
                                shape),
                        new Fabric.Test(
                                stretch.across(),
                                stretch.along(),
                                hung.across()
                                        .orElseGet(() -> LoadCurve.assumed(stretch.across(), weight))
                                        .times(learnt.of(Learnt.What.PULL_ACROSS, 1)),
                                hung.along()
                                        .orElseGet(() -> LoadCurve.assumed(stretch.along(), weight))
                                        .times(learnt.of(Learnt.What.PULL_ALONG, 1)),
                                stretch.recovery(),
                                Row.unboxed(given.get(FabricKeys.SHOWS_THROUGH)),
                                stretch.wrapped(),
                                stretch.assumed(),
                                hung.hung()))
                .with(learnt)
                .with(new Usual(
                        usualWidth, stretch.usual().across(), stretch.usual().along())));
    }

    private static Optional<Double> width(Given given, RollKeys roll) {
        if (given.isRead(FabricKeys.FABRIC) && given.isSection(FabricKeys.FABRIC) && !given.has(roll.width)) {
            given.missing(roll.width);
        }
        return given.get(roll.width);
    }
}
