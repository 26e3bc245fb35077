package stretchwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.fabric.Laplace;
import stretchwright.fit.FitReport;
import stretchwright.ground.Unit;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Pattern;

/** What the fit check found as tables of text, the same on paper and on the page; empty ones are left out. */
public final class FitTables {
    private FitTables() {}

    /** One table: the first cell of a row names it. */
    public record Table(String caption, List<String> heads, List<List<String>> rows) {
        public Table {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    public static List<Table> of(FitReport fit, Pattern pattern, Unit unit) {
        List<Table> all = new ArrayList<>();
        add(
                all,
                "Levels, lengths in " + unit.symbol(),
                List.of("level", "girth", "width", "across", "along", "mmHg", "kPa", "wanted mmHg", "bound by"),
                fit.levels().stream().map(l -> level(l, pattern, unit)).toList());
        add(
                all,
                "Openings, lengths in " + unit.symbol(),
                List.of("opening", "at rest", "must pass", "needed", "allowed", "result"),
                fit.openings().stream().map(o -> opening(o, unit)).toList());
        add(
                all,
                "Poses: stretch needed",
                List.of("pose", "region", "direction", "sliding", "sticking", "cloth has", "result"),
                fit.poses().stream().map(FitTables::pose).toList());
        add(
                all,
                "Seams in the worst pose",
                List.of("seam", "standing", "needed", "pose", "stitch", "stands", "result"),
                fit.seams().stream().map(FitTables::seam).toList());
        add(
                all,
                "Growth of the cloth, and what shows through",
                List.of("region", "pose", "grows in area by", "g/m\u00B2 then", "card showed at", "result"),
                fit.covers().stream().map(FitTables::cover).toList());
        add(
                all,
                "After washing, " + unit.symbol(),
                List.of("what", "direction", "cut", "washed"),
                fit.lengths().stream()
                        .map(l -> List.of(l.what(), l.direction(), mm(l.cut(), unit), mm(l.washed(), unit)))
                        .toList());
        add(
                all,
                "If the tape slipped, " + unit.symbol(),
                List.of("measure", "by", "what changes"),
                slips(fit.slips(), unit));
        return List.copyOf(all);
    }

    private static void add(List<Table> all, String caption, List<String> heads, List<List<String>> rows) {
        if (!rows.isEmpty()) {
            all.add(new Table(caption, heads, rows));
        }
    }

    private static List<String> level(FitReport.LevelFit l, Pattern pattern, Unit unit) {
        Optional<LevelHold> hold = pattern.holds().stream()
                .filter(h ->
                        h.level() == l.level() && (h.leg().isEmpty() || h.leg().equals(l.leg())))
                .findFirst();
        String sign = l.assumed() ? " ~" : l.beyondReadings() ? " >" : "";
        return List.of(
                l.place() + (l.level().wholeBody() ? " (whole)" : ""),
                mm(l.girth(), unit),
                mm(l.width(), unit),
                Amounts.percent(l.across()),
                Amounts.percent(l.along()),
                Amounts.number(Laplace.toMmHg(l.pressure()), 1) + sign,
                Amounts.number(l.pressure(), 2) + sign,
                hold.filter(h -> h.wanted().isPresent())
                        .map(h -> Amounts.number(Laplace.toMmHg(h.wanted().getAsDouble()), 1))
                        .orElse("-"),
                hold.map(h -> h.bound() == LevelHold.Bound.NONE
                                ? "-"
                                : h.bound().words())
                        .orElse("-"));
    }

    /** What the signs in the column of pressures mean. */
    public static String signs() {
        return "~ from an assumed load curve: an indication only. > beyond the last reading. wanted: the pressure asked for"
                + " there; bound by: what kept the width from giving it.";
    }

    /** "tried, and it helps: a cuff 12 mm wider. Then: ...". */
    public static String tried(FitReport.Tried t) {
        return (t.turns() ? "tried, and it helps: " : "tried, not enough: ")
                + t.change()
                + (t.after().isEmpty() ? "" : ". Then: " + t.after());
    }

    private static List<String> opening(FitReport.Opening o, Unit unit) {
        return List.of(
                o.opening(),
                mm(o.relaxed(), unit),
                mm(o.mustPass(), unit),
                Amounts.percent(o.needed()),
                Amounts.percent(o.allowed()),
                o.passes() ? "passes" : "does not pass");
    }

    private static List<String> pose(FitReport.Pose p) {
        return List.of(
                p.pose(),
                p.region(),
                p.direction(),
                Amounts.percent(p.needed()),
                Amounts.percent(p.neededIfStuck()),
                Amounts.percent(p.available()),
                p.passes() ? "goes" : "too tight");
    }

    private static List<String> seam(FitReport.SeamFit s) {
        return List.of(
                s.seam(),
                Amounts.percent(s.standing()),
                Amounts.percent(s.needed()),
                s.pose(),
                s.stitch() + " " + s.stitchName(),
                Amounts.percent(s.stands()),
                (s.holds() ? "holds" : "breaks")
                        + (s.reinforcement().isEmpty() ? "" : "; besides: " + s.reinforcement()));
    }

    private static List<String> cover(FitReport.Cover c) {
        return List.of(
                c.region(),
                c.pose(),
                Amounts.percent(c.areal()),
                c.weight().isPresent() ? Amounts.number(c.weight().getAsDouble(), 0) : "not known",
                c.limit().isPresent() ? Amounts.percent(c.limit().getAsDouble()) : "not tested",
                c.limit().isEmpty() ? "-" : c.shows() ? "shows through" : "covers");
    }

    /** Slips that change something; of the others only how many they are. */
    private static List<List<String>> slips(List<FitReport.Slip> slips, Unit unit) {
        List<List<String>> rows = new ArrayList<>();
        for (FitReport.Slip s : slips) {
            if (!s.changes().isEmpty()) {
                rows.add(List.of(s.measure(), (s.by() > 0 ? "+" : "") + mm(s.by(), unit), s.changes()));
            }
        }
        int others = slips.size() - rows.size();
        if (others > 0) {
            rows.add(List.of(others + (rows.isEmpty() ? "" : " other") + " slips of the usual size", "", "nothing"));
        }
        return rows;
    }

    private static String mm(double mm, Unit unit) {
        return Amounts.number(unit.fromMm(mm), unit == Unit.MM ? 0 : unit == Unit.CM ? 1 : 2);
    }
}
