package stretchwright.print.fit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.fabric.ClothKnown;
import stretchwright.fabric.CurveSpread;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Laplace;
import stretchwright.fit.Cover;
import stretchwright.fit.FitReport;
import stretchwright.fit.Reinforcement;
import stretchwright.fit.Told;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.pattern.LevelHold;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.WhichLeg;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Phrases;

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
        Voice voice = Voice.of(unit);
        List<Table> all = new ArrayList<>();
        add(
                all,
                levels(unit),
                List.of(
                        Phrases.of("fit.head.level"),
                        Phrases.of("fit.head.girth"),
                        Phrases.of("fit.head.width"),
                        Phrases.of("fit.head.across"),
                        Phrases.of("fit.head.along"),
                        Phrases.of("fit.head.mmhg"),
                        Phrases.of("fit.head.wanted-mmhg"),
                        Phrases.of("fit.head.bound-by")),
                fit.levels().stream().map(l -> level(l, pattern, unit, voice)).toList());
        add(
                all,
                Phrases.of("fit.table.openings", unit.symbol()),
                List.of(
                        Phrases.of("fit.head.opening"),
                        Phrases.of("fit.head.at-rest"),
                        Phrases.of("fit.head.must-pass"),
                        Phrases.of("fit.head.needed"),
                        Phrases.of("fit.head.allowed"),
                        Phrases.of("fit.head.result")),
                fit.openings().stream().map(o -> opening(o, unit, voice)).toList());
        add(
                all,
                Phrases.of("fit.table.poses"),
                List.of(
                        Phrases.of("fit.head.pose"),
                        Phrases.of("fit.head.region"),
                        Phrases.of("fit.head.direction"),
                        Phrases.of("fit.head.sliding"),
                        Phrases.of("fit.head.sticking"),
                        Phrases.of("fit.head.cloth-has"),
                        Phrases.of("fit.head.result")),
                hardest(fit.poses()).stream().map(p -> pose(p, voice)).toList());
        add(
                all,
                Phrases.of("fit.table.seams"),
                List.of(
                        Phrases.of("fit.head.seam"),
                        Phrases.of("fit.head.standing"),
                        Phrases.of("fit.head.needed"),
                        Phrases.of("fit.head.pose"),
                        Phrases.of("fit.head.stitch"),
                        Phrases.of("fit.head.stands"),
                        Phrases.of("fit.head.result")),
                fit.seams().stream().map(s -> seam(s, voice)).toList());
        add(
                all,
                Phrases.of("fit.table.growth"),
                List.of(
                        Phrases.of("fit.head.region"),
                        Phrases.of("fit.head.pose"),
                        Phrases.of("fit.head.grows-in-area-by"),
                        Phrases.of("fit.head.grams-then"),
                        Phrases.of("fit.head.card-showed-at"),
                        Phrases.of("fit.head.result")),
                fit.covers().stream().map(c -> cover(c, voice)).toList());
        add(
                all,
                Phrases.of("fit.table.washed", unit.symbol()),
                List.of(
                        Phrases.of("fit.head.what"),
                        Phrases.of("fit.head.direction"),
                        Phrases.of("fit.head.cut"),
                        Phrases.of("fit.head.washed")),
                fit.lengths().stream()
                        .map(l -> List.of(
                                voice.say(l.what()),
                                voice.say(l.direction().said()),
                                mm(l.cut(), unit),
                                mm(l.washed(), unit)))
                        .toList());
        add(
                all,
                Phrases.of("fit.table.settles", unit.symbol()),
                List.of(
                        Phrases.of("fit.head.edge"),
                        Phrases.of("fit.head.pose"),
                        Phrases.of("fit.head.moves"),
                        Phrases.of("fit.head.pulled"),
                        Phrases.of("fit.head.held")),
                fit.settles().map(r -> SettleRows.of(r, unit)).orElse(List.of()));
        add(
                all,
                Phrases.of("fit.table.slips", unit.symbol()),
                List.of(Phrases.of("fit.head.measure"), Phrases.of("fit.head.by"), Phrases.of("fit.head.what-changes")),
                slips(fit.slips(), unit, voice));
        return List.copyOf(all);
    }

    /** The caption of the table of levels, below which its signs are told. */
    static String levels(Unit unit) {
        return Phrases.of("fit.table.levels", unit.symbol());
    }

    private static void add(List<Table> all, String caption, List<String> heads, List<List<String>> rows) {
        if (!rows.isEmpty()) {
            all.add(new Table(caption, heads, rows));
        }
    }

    private static List<String> level(FitReport.LevelFit l, Pattern pattern, Unit unit, Voice voice) {
        Optional<LevelHold> hold = pattern.holds().stream()
                .filter(h -> h.level() == l.level() && (h.leg() == WhichLeg.BOTH || h.leg() == l.leg()))
                .findFirst();
        String sign = l.assumed() ? " ~" : l.beyondReadings() ? " >" : "";
        return List.of(
                l.level().wholeBody() ? Phrases.of("fit.whole", voice.say(l.place())) : voice.say(l.place()),
                mm(l.girth(), unit),
                mm(l.width(), unit),
                across(l),
                Amounts.percent(l.along()),
                pressure(l) + sign,
                hold.filter(h -> h.wanted().isPresent())
                        .map(h -> Amounts.number(Laplace.toMmHg(h.wanted().getAsDouble()), 1))
                        .orElse("-"),
                hold.map(h -> h.bound() == LevelHold.Bound.NONE
                                ? "-"
                                : voice.say(h.bound().said()))
                        .orElse("-"));
    }

    /** "14 to 17 %": in whole points, its ends outward. */
    private static String across(FitReport.LevelFit l) {
        return Phrases.of(
                "fit.range-percent",
                Amounts.number(Math.floor(100 * l.likely().strainLow()), 0),
                Amounts.number(Math.ceil(100 * l.likely().strainHigh()), 0));
    }

    /** "3 to 7 (5)", or "up to 6": mmHg. */
    static String pressure(FitReport.LevelFit l) {
        Told told = Told.of(l);
        return told.wide()
                ? Phrases.of("fit.range-up-to", Amounts.number(told.high(), 0))
                : Phrases.of(
                        "fit.range-mmhg",
                        Amounts.number(told.low(), 0),
                        Amounts.number(told.high(), 0),
                        Amounts.number(told.likely(), 0));
    }

    /** What the signs in the column of pressures mean, and how much surer they would be told for one more reading of the cloth. */
    public static String signs(Fabric cloth, Unit unit) {
        String signs = Phrases.of(
                "fit.signs",
                Amounts.number(CurveSpread.HOURS_LATER, 2),
                Amounts.number(CurveSpread.HOURS_LATER_LOW, 2),
                Amounts.number(CurveSpread.HOURS_LATER_HIGH, 2));
        ClothKnown known = ClothKnown.of(cloth);
        return known.next().isEmpty() ? signs : signs + " " + Voice.of(unit).say(known.said());
    }

    /** "tried, and it helps: a cuff 12 mm wider. Then: ...". */
    public static String tried(FitReport.Tried t, Voice voice) {
        String change = voice.say(t.change());
        String tried = t.turns() ? Phrases.of("fit.helps", change) : Phrases.of("fit.not-enough", change);
        return t.after().isNothing() ? tried : Phrases.of("fit.then", tried, voice.say(t.after()));
    }

    private static List<String> opening(FitReport.Opening o, Unit unit, Voice voice) {
        return List.of(
                voice.say(o.opening().said()),
                mm(o.relaxed(), unit),
                mm(o.mustPass(), unit),
                Amounts.percent(o.needed()),
                Amounts.percent(o.allowed()),
                o.passes() ? Phrases.of("fit.passes") : Phrases.of("fit.does-not-pass"));
    }

    private static List<String> pose(FitReport.Pose p, Voice voice) {
        return List.of(
                voice.say(p.pose().said()),
                voice.say(p.region().said()),
                voice.say(p.direction().said()),
                Amounts.percent(p.needed()),
                Amounts.percent(p.neededIfStuck()),
                Amounts.percent(p.available()),
                p.passes() ? Phrases.of("fit.goes") : Phrases.of("fit.too-tight"));
    }

    /** Of each region and direction the pose that asks most: the others would only say less of the same. */
    private static Collection<FitReport.Pose> hardest(List<FitReport.Pose> poses) {
        Map<Said, FitReport.Pose> most = new LinkedHashMap<>();
        poses.forEach(p ->
                most.merge(p.place(), p, (one, other) -> other.neededIfStuck() > one.neededIfStuck() ? other : one));
        return most.values();
    }

    private static List<String> seam(FitReport.SeamFit s, Voice voice) {
        return List.of(
                voice.say(s.seam().said()),
                Amounts.percent(s.standing()),
                Amounts.percent(s.needed()),
                voice.say(s.pose().said()),
                s.stitch().number() + " " + voice.say(s.stitch().said()),
                Amounts.percent(s.stands()),
                seamResult(s, voice));
    }

    private static String seamResult(FitReport.SeamFit s, Voice voice) {
        String result = s.holds() ? Phrases.of("fit.holds") : Phrases.of("fit.breaks");
        List<Said> besides = s.reinforcement().stream().map(Reinforcement::said).toList();
        return besides.isEmpty()
                ? result
                : Phrases.of("fit.besides", result, voice.say(Part.listed(Part.Join.SEMICOLON, besides)));
    }

    private static List<String> cover(Cover c, Voice voice) {
        return List.of(
                voice.say(c.region().said()),
                voice.say(c.pose().said()),
                Amounts.percent(c.areal()),
                c.weight().isPresent() ? Amounts.number(c.weight().getAsDouble(), 0) : Phrases.of("fit.not-known"),
                c.limit().isPresent() ? Amounts.percent(c.limit().getAsDouble()) : Phrases.of("fit.not-tested"),
                c.limit().isEmpty() ? "-" : c.shows() ? Phrases.of("fit.shows") : Phrases.of("fit.covers"));
    }

    /** Slips that change something; of the others only how many they are. */
    private static List<List<String>> slips(List<FitReport.Slip> slips, Unit unit, Voice voice) {
        List<List<String>> rows = new ArrayList<>();
        for (FitReport.Slip s : slips) {
            if (!s.changes().isEmpty()) {
                rows.add(List.of(
                        voice.say(s.measure().said()),
                        (s.by() > 0 ? "+" : "") + mm(s.by(), unit),
                        voice.say(Part.listed(Part.Join.SEMICOLON, s.changes()))));
            }
        }
        int others = slips.size() - rows.size();
        if (others > 0) {
            rows.add(List.of(
                    rows.isEmpty()
                            ? Phrases.of("fit.slips-all", String.valueOf(others))
                            : Phrases.of("fit.slips-other", String.valueOf(others)),
                    "",
                    Phrases.of("fit.slips-nothing")));
        }
        return rows;
    }

    private static String mm(double mm, Unit unit) {
        return Amounts.bare(mm, unit);
    }
}
