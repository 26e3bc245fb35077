package stretchwright.intake;

import stretchwright.ground.Unit;

/** A make of another maker: the same measures, told in another unit. */
public final class InUnit {
    private InUnit() {}

    public static MakeFile of(MakeFile m, Unit unit) {
        return new MakeFile(
                m.file(),
                m.name(),
                unit,
                m.wearer(),
                m.measured(),
                m.fabric(),
                m.contrasts(),
                m.boot(),
                m.style(),
                m.sewing(),
                m.print(),
                m.seed(),
                m.worn(),
                m.answers());
    }
}
