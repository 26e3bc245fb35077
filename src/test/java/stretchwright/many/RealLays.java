package stretchwright.many;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Box;
import stretchwright.ground.Findings;
import stretchwright.lay.Lay;
import stretchwright.lay.Laying;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/**
 * Lays of real bodies against the plain folded lay that a leaflet shows: cloth folded lengthwise, the leg cut through both
 * layers, the band on the fold after it, the cuffs beside the band, or after it where they have no room. Run by
 * benchmarks/real-lays; what came out stands in benchmarks/README.md.
 */
public final class RealLays {
    private static final List<String> TABLES = List.of(
            "ansur2_female.csv",
            "ansur2_male.csv",
            "ansur1988_female.csv",
            "ansur1988_male.csv",
            "snyder1977_children.csv");

    private RealLays() {}

    /** @param args the folder of body tables, how many pairs in all, the usable width in mm */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        if (!Files.isDirectory(folder)) {
            System.out.println("real-lays: skipped, no body tables in " + folder);
            return;
        }
        int each = Integer.parseInt(args[1]) / TABLES.size();
        double width = Double.parseDouble(args[2]);
        List<Pattern> patterns = new ArrayList<>();
        SurveyCase style = SurveyCase.usual().get(0);
        for (String table : TABLES) {
            BodyRows rows = BodyRows.of(table, Files.readAllBytes(folder.resolve(table)), Optional.empty());
            int step = Math.max(1, rows.rows().size() / (2 * each));
            int taken = 0;
            for (int i = 0; i < rows.rows().size() && taken < each; i += step) {
                Optional<Pattern> pattern =
                        SurveyTrial.draft(rows.rows().get(i).body(), style, new Findings("real lays"));
                pattern.ifPresent(patterns::add);
                taken += pattern.isPresent() ? 1 : 0;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d pairs over the boot with band and cuffs, cloth %.0f mm wide%n%n",
                patterns.size(),
                width);
        System.out.println("| | 10 % | 25 % | median | 75 % | 90 % | least, greatest |");
        System.out.println("|---|---|---|---|---|---|---|");
        for (boolean oneWay : new boolean[] {true, false}) {
            run(patterns, width, oneWay);
        }
    }

    private static void run(List<Pattern> patterns, double width, boolean oneWay) {
        Fabric cloth = SampleFabric.with(width, 0.6, 0.45, oneWay);
        LayTerms any = LayTerms.of(Style.LayWay.ANY);
        List<double[]> out = new ArrayList<>();
        int without = 0;
        for (Pattern pattern : patterns) {
            Optional<Double> plain = plain(pattern.pieces(), width);
            long start = System.nanoTime();
            Optional<Lay> lay = Laying.lay(pattern.pieces(), cloth, any, 1, new Findings("real lays"));
            double seconds = (System.nanoTime() - start) / 1e9;
            if (plain.isEmpty() || lay.isEmpty()) {
                without++;
                continue;
            }
            double estimate = Laying.estimate(pattern.pieces(), cloth, any, 1).orElseThrow();
            double length = lay.get().length();
            out.add(new double[] {
                1 - length / plain.get(),
                length / lay.get().floor() - 1,
                estimate / length - 1,
                seconds,
                1 - lay.get().floor() / plain.get()
            });
        }
        String cloths = oneWay ? "one-way" : "either way";
        row(cloths + ": less cloth than the plain folded lay, %", out, 0, 100);
        row(cloths + ": the most the floor leaves open to save, %", out, 4, 100);
        row(cloths + ": above the floor, %", out, 1, 100);
        row(cloths + ": estimate above the lay, %", out, 2, 100);
        row(cloths + ": seconds", out, 3, 1);
        System.out.printf(
                Locale.ROOT,
                "| %s: longer than the plain lay | %d of %d; %d have no plain lay (a leg wider than half the cloth) |%n",
                cloths,
                out.stream().filter(r -> r[0] < -1e-9).count(),
                out.size(),
                without);
    }

    private static void row(String name, List<double[]> rows, int column, double times) {
        double[] v = rows.stream().mapToDouble(r -> r[column] * times).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f, %.1f |%n",
                name,
                at(v, 0.1),
                at(v, 0.25),
                at(v, 0.5),
                at(v, 0.75),
                at(v, 0.9),
                v[0],
                v[v.length - 1]);
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    /** Length of the plain lay, mm; empty where the leg is wider than the folded cloth. */
    private static Optional<Double> plain(List<Piece> pieces, double width) {
        Box leg = box(pieces, "leg");
        Box band = box(pieces, "waistband");
        Box cuff = box(pieces, "cuff");
        if (Math.max(leg.width(), Math.max(band.width(), cuff.width())) > width / 2) {
            return Optional.empty();
        }
        boolean beside = band.width() + cuff.width() <= width / 2;
        double after = beside ? Math.max(band.height(), cuff.height()) : band.height() + cuff.height();
        return Optional.of(leg.height() + after);
    }

    private static Box box(List<Piece> pieces, String name) {
        return pieces.stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow()
                .cutLine()
                .box();
    }
}
