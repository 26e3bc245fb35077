package stretchwright.print.kit;

import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothLay;
import stretchwright.lay.ClothUse;
import stretchwright.lay.Lay;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.sewing.SewingPlan;

/** Everything that goes onto paper for one make; lengths are written in mm and, where it helps, in the maker's unit. */
public record Job(
        String makeName,
        String wearerName,
        Unit unit,
        Pattern pattern,
        FitReport fit,
        List<ClothLay> lays,
        SewingPlan sewing,
        Paper paper) {
    public Job {
        lays = List.copyOf(lays);
    }

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
                fit,
                List.of(ClothLay.of(fabric, pattern.pieces(), lay, Buying.Counter.of(unit))),
                sewing,
                paper);
    }

    /** Words what the rooms say, in the maker's unit. */
    public Voice voice() {
        return Voice.of(unit);
    }

    /** The same job for one of its cloths alone. */
    public Job on(ClothLay cloth) {
        return new Job(makeName, wearerName, unit, pattern, fit, List.of(cloth), sewing, paper);
    }

    /** The make's own fabric, its lay and what follows from it. */
    public Fabric fabric() {
        return lays.get(0).fabric();
    }

    public Lay lay() {
        return lays.get(0).lay();
    }

    public ClothUse use() {
        return lays.get(0).use();
    }

    /** The cloth that a piece is cut from. */
    public String clothOf(Piece piece) {
        return lays.stream()
                .filter(l -> l.pieces().stream().anyMatch(p -> p.name().equals(piece.name())))
                .findFirst()
                .map(l -> Letters.shortened(l.fabric().roll().name(), Letters.LONGEST_NAME))
                .orElseGet(this::cloth);
    }

    public LaidCloth laid() {
        return new LaidCloth(unit, fabric(), lay(), use(), pattern.pieces());
    }

    /** The make's name as it stands on paper. */
    public String make() {
        return Letters.shortened(makeName, Letters.LONGEST_NAME);
    }

    public String wearer() {
        return Letters.shortened(wearerName, Letters.LONGEST_NAME);
    }

    /** "For Rowan, in Ink knit."; of what has no name nothing is said. */
    public String forWhom() {
        boolean cloth = !fabric().roll().name().isBlank();
        if (wearerName.isBlank()) {
            return cloth ? Phrases.of("job.cloth", cloth()) : "";
        }
        return cloth ? Phrases.of("job.wearer-cloth", wearer(), cloth()) : Phrases.of("job.wearer", wearer());
    }

    public String cloth() {
        return Letters.shortened(fabric().roll().name(), Letters.LONGEST_NAME);
    }

    public String around() {
        return laid().around();
    }

    /** The office paper nearest to the paper wanted, for what is read and not traced. */
    public Paper office() {
        return paper.office();
    }
}
