package stretchwright.print;

import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport;
import stretchwright.ground.Unit;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothUse;
import stretchwright.lay.Lay;
import stretchwright.pattern.Pattern;
import stretchwright.sewing.SewingPlan;

/** Everything that goes onto paper for one make; lengths are written in mm and, where it helps, in the maker's unit. */
public record Job(
        String makeName,
        String wearerName,
        Unit unit,
        Pattern pattern,
        Fabric fabric,
        FitReport fit,
        Lay lay,
        ClothUse use,
        SewingPlan sewing,
        Paper paper) {

    /** With what follows from the lay alone: nothing was tried for the cloth at hand. */
    public Job(
            String makeName,
            String wearerName,
            Unit unit,
            Pattern pattern,
            Fabric fabric,
            FitReport fit,
            Lay lay,
            SewingPlan sewing,
            Paper paper) {
        this(
                makeName,
                wearerName,
                unit,
                pattern,
                fabric,
                fit,
                lay,
                ClothUse.of(lay, pattern.pieces(), fabric, Buying.Counter.of(unit), Optional.empty()),
                sewing,
                paper);
    }

    LaidCloth laid() {
        return new LaidCloth(unit, fabric, lay, use, pattern.pieces());
    }

    /** The make's name as it stands on paper. */
    String make() {
        return Letters.shortened(makeName, Letters.LONGEST_NAME);
    }

    String wearer() {
        return Letters.shortened(wearerName, Letters.LONGEST_NAME);
    }

    /** "For Rowan, in Ink knit."; of what has no name nothing is said. */
    String forWhom() {
        String in = fabric.name().isBlank() ? "" : "in " + cloth();
        if (wearerName.isBlank()) {
            return in.isEmpty() ? "" : "I" + in.substring(1) + ".";
        }
        return "For " + wearer() + (in.isEmpty() ? "" : ", " + in) + ".";
    }

    String cloth() {
        return Letters.shortened(fabric.name(), Letters.LONGEST_NAME);
    }

    String around() {
        return laid().around();
    }

    /** The office paper nearest to the paper wanted, for what is read and not traced. */
    Paper office() {
        return Paper.named(paper.name().equals("Letter") || paper.name().equals("Tabloid") ? "Letter" : "A4");
    }
}
