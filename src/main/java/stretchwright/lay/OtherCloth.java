package stretchwright.lay;

import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;

/** The same cloth, whole, wider or narrower, with or without a direction: to lay on, before it is bought. */
final class OtherCloth {
    private OtherCloth() {}

    static Fabric of(Fabric f, double usableWidth, boolean oneWay) {
        return new Fabric(
                f.name(),
                usableWidth,
                f.onHand(),
                f.weight(),
                f.stretchAcross(),
                f.stretchAlong(),
                f.loadAcross(),
                f.loadAlong(),
                f.recovery(),
                f.shrinkageAcross(),
                f.shrinkageAlong(),
                oneWay,
                f.repeatAlong(),
                f.showsThroughAt(),
                f.price(),
                f.wrapped(),
                f.assumed(),
                ClothShape.WHOLE);
    }
}
