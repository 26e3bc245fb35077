package stretchwright.make;

import java.util.List;
import java.util.Optional;
import stretchwright.advice.Trials;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothLay;
import stretchwright.lay.ClothUse;
import stretchwright.lay.Lay;
import stretchwright.lay.OnHand;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.print.Printable;
import stretchwright.sewing.SewingPlan;

/** The rooms that a make goes through, in the order of the job; an empty answer leaves at least one finding. */
public interface Stages extends Trials {
    Optional<Lay> lay(List<Piece> pieces, Fabric fabric, MakeFile make, Findings findings);

    /** What follows from the lay; lays are tried again only where the cloth at hand is short. */
    default ClothUse cloth(List<Piece> pieces, Fabric fabric, MakeFile make, Lay lay) {
        return ClothUse.of(
                lay,
                pieces,
                fabric,
                make.style().lay().matchAt(),
                Buying.Counter.of(make.unit()),
                OnHand.of(lay, pieces, fabric, make.style().lay(), make.seed(), LayClock.NONE));
    }

    /** In the order of the least time; findings, thrown, where the sewer's own steps cannot be kept. */
    SewingPlan sewing(Pattern pattern, MakeFile make, FitReport fit);

    /** What can be drawn of the pattern alone, each file by its name: among those that can be had of the whole make. */
    List<Printable> drawn(MakeFile make, Pattern pattern);

    /** What can be drawn of the sewing before anything is laid: among those that can be had of the whole make. */
    default List<Printable> steps(MakeFile make, Pattern pattern, FitReport fit, SewingPlan sewing) {
        return List.of();
    }

    /** What can be had of the make, each file by its name. */
    List<Printable> printables(MakeFile make, Pattern pattern, FitReport fit, List<ClothLay> lays, SewingPlan sewing);
}
