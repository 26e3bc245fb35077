package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fabric.Layers;
import stretchwright.fabric.Strain;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.settle.LegShape;

/** Strain, tension and pressure standing, level by level. */
final class Levels {
    private Levels() {}

    static List<FitReport.LevelFit> of(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        List<FitReport.LevelFit> out = new ArrayList<>();
        LegShape shape = new LegShape(pattern, body, boot, style);
        for (Level level : pattern.levels()) {
            double girth = shape.girth(level);
            double across = Strain.of(level.width(), girth);
            double along = shape.along(level.name());
            double layers = shape.isDouble(level.name()) ? Layers.TWO : 1;
            // tension per metre as worn: the cloth is longer along than at rest, so the same pull is spread thinner
            double tension = layers * fabric.test().loadAcross().tension(across) / (1 + along);
            out.add(new FitReport.LevelFit(
                    level.name(),
                    level.leg(),
                    girth,
                    level.width(),
                    across,
                    along,
                    tension,
                    Laplace.kilopascals(tension, girth),
                    fabric.test().loadAcross().isAssumed(),
                    !fabric.test().loadAcross().covers(Math.max(0, across))));
        }
        return out;
    }
}
