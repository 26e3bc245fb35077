package stretchwright.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.lay.nest.Effort;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Piece;

/**
 * Many garments laid together on one roll.
 *
 * <p>In: the garments, the cloth they share, what the lay has to keep to, and how long a table is, where there is one.
 * Out: one lay for each table. A garment is never split between two tables, so its pieces lie within the table's length of
 * each other. Tables are filled in the order of the garments, one after another: docs/maths/lay.md.
 */
public final class ClubLay {
    /** One garment more is searched for only where the first lay is no longer than this times the table; a limit of our own. */
    private static final double HOPE = 1.2;

    private static final String OF = ": ";

    private final Fabric fabric;
    private final LayTerms terms;
    private final double length;
    private final SearchWork work;
    private final Findings findings;

    private ClubLay(Fabric fabric, LayTerms terms, double length, SearchWork work, Findings findings) {
        this.fabric = fabric;
        this.terms = terms;
        this.length = length;
        this.work = work;
        this.findings = findings;
    }

    /** @param name no two garments share one */
    public record Garment(String name, List<Piece> pieces) {
        public Garment {
            pieces = List.copyOf(pieces);
        }

        /** Its pieces, named so that they are known apart from those of other garments. */
        public List<Piece> named() {
            return pieces.stream().map(p -> p.named(name + OF + p.name())).toList();
        }

        private double area() {
            return pieces.stream().mapToDouble(p -> p.clothArea() * p.cut()).sum();
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

    /** The piece's own name: "leg" of "Rowan: leg". */
    public static String ownName(String piece) {
        int at = piece.lastIndexOf(OF);
        return at < 0 ? piece : piece.substring(at + OF.length());
    }

    /**
     * Empty, with findings, where a piece is wider than the cloth or a garment longer than the table.
     *
     * @param table its length, mm; empty where the cloth is spread in one go
     * @param work of each search; a table may be searched for a few times
     */
    public static List<Table> lay(
            List<Garment> garments,
            Fabric fabric,
            LayTerms terms,
            OptionalDouble table,
            SearchWork work,
            Findings findings) {
        double length = table.orElse(Double.POSITIVE_INFINITY);
        return new ClubLay(fabric, terms, length, work, findings).tables(garments);
    }

    /** Fills one table after another with as many garments, in their order, as lie on it. */
    private List<Table> tables(List<Garment> garments) {
        List<Table> out = new ArrayList<>();
        double spent = 0;
        for (int next = 0; next < garments.size(); ) {
            List<Garment> left = garments.subList(next, garments.size());
            Firsts firsts = new Firsts(left);
            Optional<Table> first = first(firsts);
            double until = spent + (1 - spent) / tablesFor(left, first);
            Optional<Table> filled = findings.isEmpty() ? searched(firsts, first, spent, until) : Optional.empty();
            if (filled.isEmpty()) {
                tooShort(left.get(0), firsts);
                return List.of();
            }
            out.add(filled.get());
            next += filled.get().garments().size();
            spent = until;
        }
        return out;
    }

    private void tooShort(Garment garment, Firsts firsts) {
        if (findings.isEmpty()) {
            boolean never = firsts.of(1).floor() > length;
            findings.add(
                    "--table",
                    never
                            ? Tell.said("table.longer", Part.text(garment.name()), Part.length(length))
                            : Tell.said("table.no-lay", Part.text(garment.name()), Part.length(length)),
                    never ? Tell.said("table.longer-or-wider") : Tell.said("table.longer-or-seconds"));
        }
    }

    /** How many tables are still to come, this one included, filled like the first lay of this one; for the clock. */
    private static double tablesFor(List<Garment> left, Optional<Table> first) {
        double all = left.stream().mapToDouble(Garment::area).sum();
        double here = first.map(t -> area(t.garments())).orElse(all);
        return Math.max(1, Math.ceil(all / here - 1e-9));
    }

    private static double area(List<Garment> garments) {
        return garments.stream().mapToDouble(Garment::area).sum();
    }

    /** The first lays of the garments that are left, by their count; each is laid once. */
    private final class Firsts {
        private final List<Garment> left;
        private final Map<Integer, Ways> ways = new HashMap<>();

        Firsts(List<Garment> left) {
            this.left = left;
        }

        Ways of(int count) {
            return ways.computeIfAbsent(
                    count,
                    c -> ways(
                            left.subList(0, c),
                            Optional.empty(),
                            new SearchWork(work.seed(), Effort.NONE, work.clock())));
        }
    }

    /** As many as the first lays, not searched on, bring onto the table. */
    private Optional<Table> first(Firsts firsts) {
        int tooMany = byArea(firsts.left) + 1;
        Optional<Table> fitting = Optional.empty();
        for (int count = tooMany - 1; count >= 1 && count < tooMany && findings.isEmpty(); ) {
            Ways ways = firsts.of(count);
            if (ways.fitting().isPresent()) {
                fitting = ways.fitting();
                count++;
            } else {
                tooMany = count;
                int likely = (int) Math.ceil(count * length / ways.shortest());
                count = fitting.isPresent() ? tooMany : Math.max(1, Math.min(count - 1, likely));
            }
        }
        return fitting;
    }

    /** The time is halved for each try with one garment more; what is left of it goes to the number that fits. */
    private Optional<Table> searched(Firsts firsts, Optional<Table> first, double from, double to) {
        if (work.effort().equals(Effort.NONE) || stopped()) {
            return first;
        }
        Optional<Table> best = first;
        double now = from;
        int count = first.map(t -> t.garments().size()).orElse(0);
        while (!stopped() && count < byArea(firsts.left) && firsts.of(count + 1).shortest() <= HOPE * length) {
            double until = (now + to) / 2;
            Optional<Table> more = search(firsts, count + 1, now, until);
            now = until;
            if (more.isEmpty()) {
                break;
            }
            best = more;
            count++;
        }
        if (best.isEmpty()) {
            return best;
        }
        Optional<Table> last = search(firsts, count, now, to);
        return Stream.of(last, best)
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(t -> t.lay().length()));
    }

    private boolean stopped() {
        return work.clock().beside().stop();
    }

    /** Goes on from the shortest way of the first lay; the other ways would share the time with it. */
    private Optional<Table> search(Firsts firsts, int count, double from, double to) {
        Ways known = firsts.of(count);
        List<Garment> garments = firsts.left.subList(0, count);
        return ways(garments, known.method(), work.within(from, to)).fitting();
    }

    /**
     * @param method of the lay that fits, else of the shortest
     * @param shortest spread of any way, mm; infinite where there is none
     * @param floor no spread of any way is shorter, mm
     */
    private record Ways(Optional<Table> fitting, Optional<Lay.Method> method, double shortest, double floor) {}

    private Ways ways(List<Garment> garments, Optional<Lay.Method> only, SearchWork spent) {
        List<Piece> pieces = garments.stream().flatMap(g -> g.named().stream()).toList();
        List<Lay> lays = Laying.ways(pieces, fabric, terms, only, spent, findings);
        Optional<Lay> fitting =
                lays.stream().filter(l -> l.spreadLength() <= length).findFirst();
        Optional<Lay> least = lays.stream().min(Comparator.comparingDouble(Lay::spreadLength));
        return new Ways(
                fitting.map(l -> new Table(garments, l)),
                fitting.or(() -> least).map(Lay::method),
                least.map(Lay::spreadLength).orElse(Double.POSITIVE_INFINITY),
                lays.stream()
                        .mapToDouble(l -> l.floor() * l.spreadLength() / l.length())
                        .min()
                        .orElse(0));
    }

    /** No more than this many can lie on the table, their areas being what they are; at least one. */
    private int byArea(List<Garment> left) {
        int layers = new Permitted(List.of(), fabric, terms).crosswise() ? 2 : 1;
        double cloth = layers * fabric.roll().usableWidth() * length;
        double area = 0;
        int count = 0;
        while (count < left.size()) {
            area += left.get(count).area();
            if (area > cloth) {
                break;
            }
            count++;
        }
        return Math.max(1, count);
    }
}
