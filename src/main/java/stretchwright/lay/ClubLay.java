package stretchwright.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;

/**
 * Many garments laid together on one roll.
 *
 * <p>In: the garments, the cloth they share, what the lay has to keep to, and how long a table is, where there is one.
 * Out: one lay for each table. A garment is never split between two tables, so its pieces lie within the table's length of
 * each other.
 */
public final class ClubLay {
    private final Fabric fabric;
    private final LayTerms terms;
    private final long seed;
    private final Effort effort;
    private final LayClock clock;

    private ClubLay(Fabric fabric, LayTerms terms, long seed, Effort effort, LayClock clock) {
        this.fabric = fabric;
        this.terms = terms;
        this.seed = seed;
        this.effort = effort;
        this.clock = clock;
    }

    /** @param name no two garments share one */
    public record Garment(String name, List<Piece> pieces) {
        public Garment {
            pieces = List.copyOf(pieces);
        }

        /** Its pieces, named so that they are known apart from those of other garments. */
        public List<Piece> named() {
            return pieces.stream().map(p -> p.named(name + ": " + p.name())).toList();
        }
    }

    /** One spread of cloth, cut at a time. */
    public record Table(List<Garment> garments, Lay lay) {
        public Table {
            garments = List.copyOf(garments);
        }

        public List<Piece> pieces() {
            return garments.stream().flatMap(g -> g.named().stream()).toList();
        }
    }

    /**
     * Empty, with findings, where a piece is wider than the cloth or a garment longer than the table.
     *
     * @param table its length, mm; empty where the cloth is spread in one go
     */
    public static List<Table> lay(
            List<Garment> garments,
            Fabric fabric,
            LayTerms terms,
            OptionalDouble table,
            long seed,
            Effort effort,
            LayClock clock,
            Findings findings) {
        ClubLay club = new ClubLay(fabric, terms, seed, effort, clock);
        return table.isEmpty()
                ? club.table(garments, findings).stream().toList()
                : club.tables(garments, table.getAsDouble(), findings);
    }

    private Optional<Table> table(List<Garment> garments, Findings findings) {
        List<Piece> pieces = garments.stream().flatMap(g -> g.named().stream()).toList();
        return Laying.ways(pieces, fabric, terms, seed, effort, clock, findings).stream()
                .findFirst()
                .map(lay -> new Table(garments, lay));
    }

    /** Fills one table after another with as many garments, in their order, as lie on it. */
    private List<Table> tables(List<Garment> garments, double length, Findings findings) {
        List<Table> out = new ArrayList<>();
        int next = 0;
        while (next < garments.size()) {
            Optional<Table> filled = filled(garments.subList(next, garments.size()), length, findings);
            if (filled.isEmpty()) {
                if (findings.isEmpty()) {
                    findings.add(
                            "--table",
                            garments.get(next).name() + " alone is longer than the table.",
                            "Give a longer table, or wider cloth.");
                }
                return List.of();
            }
            out.add(filled.get());
            next += filled.get().garments().size();
        }
        return out;
    }

    /** Grows the number of garments while they fit, starting from what the area allows. */
    private Optional<Table> filled(List<Garment> left, double length, Findings findings) {
        int most = byArea(left, length);
        Optional<Table> fitting = Optional.empty();
        for (int count = most; count >= 1 && fitting.isEmpty() && findings.isEmpty(); count--) {
            fitting =
                    table(left.subList(0, count), findings).filter(t -> t.lay().spreadLength() <= length);
        }
        return fitting;
    }

    /** No more than this many can lie on the table, their areas being what they are; at least one. */
    private int byArea(List<Garment> left, double length) {
        double cloth = fabric.usableWidth() * length;
        double area = 0;
        int count = 0;
        for (Garment garment : left) {
            area += garment.pieces().stream()
                    .mapToDouble(p -> p.clothArea() * p.cut())
                    .sum();
            if (area > cloth) {
                break;
            }
            count++;
        }
        return Math.max(1, count);
    }
}
