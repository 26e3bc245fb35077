package stretchwright.many;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.ground.Unit;
import stretchwright.lay.ClubLay;
import stretchwright.lay.Lay;
import stretchwright.print.cloth.ClothWords;
import stretchwright.print.kit.Amounts;

/** A club in a few lines, as a maker wants to know it first. */
final class ClubText {
    private ClubText() {}

    static List<String> summary(Club club) {
        List<String> lines = new ArrayList<>();
        lines.add("Club of " + Amounts.counted(club.members().size(), "garment") + " on "
                + Amounts.counted(club.tables().size(), "table"));
        for (int i = 0; i < club.tables().size(); i++) {
            lines.add(table(i + 1, club.tables().get(i), club.unit()));
        }
        lines.addAll(buying(club));
        club.onHand()
                .ifPresent(h -> lines.add(
                        "  on hand        " + cloth(h.have(), club.unit()) + ": " + ClothWords.onHand(h, club.unit())));
        String contrasts = club.contrasts();
        if (!contrasts.isEmpty()) {
            lines.add("  not on it      what is cut from " + contrasts + ": make lays that for each pair");
        }
        lines.add(String.format(
                Locale.ROOT,
                "  one by one     %s of lay (estimated): together %.1f %% %s",
                cloth(club.alone(), club.unit()),
                Math.abs(club.saved()) * 100,
                club.saved() >= 0 ? "less" : "more"));
        return lines;
    }

    private static List<String> buying(Club club) {
        if (club.fabric().roll().shape().outline().isPresent()) {
            return List.of("  fabric         the remnant on hand");
        }
        return List.of(
                String.format(
                        Locale.ROOT,
                        "  fabric to buy  %s of a cloth %.1f %s wide between the selvages",
                        Amounts.bought(club.buying()),
                        club.unit().fromMm(club.fabric().roll().usableWidth()),
                        club.unit().symbol()),
                "  that is        " + ClothWords.sum(club.buying(), club.unit()));
    }

    private static String table(int number, ClubLay.Table table, Unit unit) {
        Lay lay = table.lay();
        return String.format(
                Locale.ROOT,
                "  %-14s %s, %s, %.0f %% of it used, %.1f %% above the floor: %s",
                "table " + number,
                cloth(lay.length(), unit),
                lay.method().word(),
                lay.use() * 100,
                lay.aboveFloor() * 100,
                table.garments().stream().map(ClubLay.Garment::name).collect(Collectors.joining(", ")));
    }

    private static String cloth(double mm, Unit unit) {
        Unit shown = unit == Unit.IN ? Unit.YD : Unit.M;
        return String.format(Locale.ROOT, "%.2f %s", shown.fromMm(mm), shown.symbol());
    }
}
