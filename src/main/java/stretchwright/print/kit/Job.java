package stretchwright.print.kit;

import java.util.List;
import org.jspecify.annotations.Nullable;
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

/**
 * Everything that goes onto paper for one make; lengths are written in mm and, where it helps, in the maker's unit. Of a make
 * that is drafted and no more, only the pattern can be drawn: whoever asks for what was not made has made a mistake.
 */
public final class Job {
    private final String makeName;
    private final String wearerName;
    private final Unit unit;
    private final Pattern pattern;
    private final List<CutFrom> cloths;
    private final Paper paper;
    private final @Nullable Results results;

    /** Which pieces are cut from which cloth, the make's own fabric first. */
    public record CutFrom(Fabric fabric, List<Piece> pieces) {
        public CutFrom {
            pieces = List.copyOf(pieces);
        }
    }

    private record Results(FitReport fit, List<ClothLay> lays, SewingPlan sewing) {}

    private Job(
            String makeName,
            String wearerName,
            Unit unit,
            Pattern pattern,
            List<CutFrom> cloths,
            Paper paper,
            @Nullable Results results) {
        this.makeName = makeName;
        this.wearerName = wearerName;
        this.unit = unit;
        this.pattern = pattern;
        this.cloths = List.copyOf(cloths);
        this.paper = paper;
        this.results = results;
    }

    /** A pattern, neither judged nor laid. */
    public Job(String makeName, String wearerName, Unit unit, Pattern pattern, List<CutFrom> cloths, Paper paper) {
        this(makeName, wearerName, unit, pattern, cloths, paper, null);
    }

    /** What is judged and planned and not laid: all but its lays can be drawn. */
    public Job unlaid(FitReport fit, SewingPlan sewing) {
        return new Job(makeName, wearerName, unit, pattern, cloths, paper, new Results(fit, List.of(), sewing));
    }

    public Job(
            String makeName,
            String wearerName,
            Unit unit,
            Pattern pattern,
            FitReport fit,
            List<ClothLay> lays,
            SewingPlan sewing,
            Paper paper) {
        this(
                makeName,
                wearerName,
                unit,
                pattern,
                lays.stream().map(l -> new CutFrom(l.fabric(), l.pieces())).toList(),
                paper,
                new Results(fit, List.copyOf(lays), sewing));
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

    public String makeName() {
        return makeName;
    }

    public String wearerName() {
        return wearerName;
    }

    public Unit unit() {
        return unit;
    }

    public Pattern pattern() {
        return pattern;
    }

    public Paper paper() {
        return paper;
    }

    public FitReport fit() {
        return results().fit;
    }

    public List<ClothLay> lays() {
        return results().lays;
    }

    public SewingPlan sewing() {
        return results().sewing;
    }

    private Results results() {
        if (results == null) {
            throw new IllegalStateException("the make was only drafted");
        }
        return results;
    }

    /** Words what the rooms say, in the maker's unit. */
    public Voice voice() {
        return Voice.of(unit);
    }

    /** The same job for one of its cloths alone. */
    public Job on(ClothLay cloth) {
        return new Job(makeName, wearerName, unit, pattern, fit(), List.of(cloth), sewing(), paper);
    }

    /** The make's own fabric, its lay and what follows from it. */
    public Fabric fabric() {
        return cloths.get(0).fabric();
    }

    public Lay lay() {
        return lays().get(0).lay();
    }

    public ClothUse use() {
        return lays().get(0).use();
    }

    /** The cloth that a piece is cut from. */
    public String clothOf(Piece piece) {
        return cloths.stream()
                .filter(l -> l.pieces().stream().anyMatch(p -> p.name().equals(piece.name())))
                .findFirst()
                .map(l -> ClothName.of(l.fabric()))
                .orElseGet(this::cloth);
    }

    public LaidCloth laid() {
        return new LaidCloth(unit, fabric(), lay(), use(), lays().get(0).pieces());
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
        boolean cloth = !ClothName.whole(fabric()).isBlank();
        if (wearerName.isBlank()) {
            return cloth ? Phrases.of("job.cloth", cloth()) : "";
        }
        return cloth ? Phrases.of("job.wearer-cloth", wearer(), cloth()) : Phrases.of("job.wearer", wearer());
    }

    public String cloth() {
        return ClothName.of(fabric());
    }

    public String around() {
        return LaidCloth.around(fabric());
    }

    /** The office paper nearest to the paper wanted, for what is read and not traced. */
    public Paper office() {
        return paper.office();
    }
}
