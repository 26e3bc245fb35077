package stretchwright.many;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import stretchwright.fit.FitReport;
import stretchwright.ground.Document;
import stretchwright.ground.Numbers;
import stretchwright.ground.Point;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Nest;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Seam;
import stretchwright.report.Report;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The files of a nest that are read and not looked at: nest.json, sizes.csv, grade.csv (docs/formats.md). All in mm. */
final class SizesText {
    private SizesText() {}

    static Document json(MakeFile make, Nest nest, List<Sizes.Size> sizes) {
        ObjectNode root = Report.node();
        root.put("stretchwright", MakeFile.VERSION);
        root.put("name", make.name());
        ObjectNode out = root.putObject("nest");
        ArrayNode names = out.putArray("sizes");
        Voice voice = Voice.of(make.unit());
        for (Sizes.Size size : sizes) {
            ObjectNode one = names.addObject();
            one.put("name", size.name());
            one.put("row", size.row().line());
            one.put("figure", size.row().body().figure().word());
            ArrayNode verdicts = one.putArray("verdicts");
            for (FitReport.Verdict v : size.fit().verdicts()) {
                verdicts.addObject()
                        .put("severity", v.severity().word())
                        .put("about", voice.say(v.about()))
                        .put("message", voice.say(v.message()))
                        .put("remedy", voice.say(v.remedy()));
            }
        }
        ArrayNode pieces = out.putArray("pieces");
        nest.pieces().forEach(p -> piece(pieces.addObject(), p));
        return new Document("nest.json", "nested pattern", 1, Report.text(root).getBytes(StandardCharsets.UTF_8));
    }

    private static void piece(ObjectNode out, Nest.Nested piece) {
        out.put("name", piece.name().word());
        points(out.putArray("anchors"), piece.anchors());
        ArrayNode corners = out.putArray("corners");
        for (Nest.Corner c : piece.corners()) {
            ObjectNode corner = corners.addObject();
            corner.put("before", c.before().word()).put("after", c.after().word());
            points(corner.putArray("at"), c.at());
            points(corner.putArray("moves"), c.moves());
        }
        ArrayNode runs = out.putArray("runs");
        for (Nest.Run r : piece.runs()) {
            ObjectNode run = runs.addObject();
            run.put("edge", r.edge().word()).put("from", end(r.from())).put("to", end(r.to()));
            ArrayNode lengths = run.putArray("lengths");
            r.lengths().forEach(l -> lengths.add(Numbers.mm(l)));
            ArrayNode shares = run.putArray("shares");
            // halves of halves: exact in so many decimals that they are written as they are
            r.shares().forEach(s -> shares.add(new java.math.BigDecimal(s)));
            ArrayNode lines = run.putArray("lines");
            r.lines().forEach(l -> points(lines.addArray(), l.points()));
        }
        ArrayNode cuts = out.putArray("cutLines");
        piece.cutLines().forEach(c -> points(cuts.addArray(), c.points()));
    }

    private static String end(Optional<NotchName> notch) {
        return notch.map(NotchName::word).orElse("corner");
    }

    private static void points(ArrayNode out, List<Point> points) {
        points.forEach(p -> out.addArray().add(Numbers.mm(p.x())).add(Numbers.mm(p.y())));
    }

    /** One size a row: the verdicts, every edge, every level's width, every seam as sewn, the shares taken off the body. */
    static Document dimensions(Nest nest, List<Sizes.Size> sizes) {
        List<String> head = new ArrayList<>(List.of("size", "figure", "stops", "cautions"));
        for (Nest.Nested piece : nest.pieces()) {
            edges(piece).forEach(e -> head.add(piece.name().word() + " " + e.word()));
        }
        for (Level level : sizes.get(0).pattern().levels()) {
            head.add("width " + level.name().word());
        }
        for (Seam seam : sizes.get(0).pattern().seams()) {
            head.add("seam " + seam.name());
        }
        head.addAll(List.of("taken across", "taken along", "taken crotch", "taken waistband", "taken hem"));
        StringBuilder csv = new StringBuilder(String.join(",", head)).append('\n');
        for (int i = 0; i < sizes.size(); i++) {
            csv.append(String.join(",", row(nest, sizes.get(i), i))).append('\n');
        }
        return table("sizes.csv", "dimensions per size", csv);
    }

    private static List<String> row(Nest nest, Sizes.Size size, int index) {
        List<String> cells = new ArrayList<>();
        cells.add(CsvLines.cell(size.name()));
        cells.add(size.row().body().figure().word());
        cells.add(Long.toString(count(size, FitReport.Severity.STOP)));
        cells.add(Long.toString(count(size, FitReport.Severity.CAUTION)));
        for (Nest.Nested piece : nest.pieces()) {
            for (EdgeName edge : edges(piece)) {
                double length = piece.runs().stream()
                        .filter(r -> r.edge() == edge)
                        .mapToDouble(r -> r.lengths().get(index))
                        .sum();
                cells.add(mm(length));
            }
        }
        size.pattern().levels().forEach(l -> cells.add(mm(l.width())));
        size.pattern().seams().forEach(s -> cells.add(mm(s.length())));
        Pattern.Reductions taken = size.pattern().reductions();
        Stream.of(taken.across(), taken.along(), taken.crotch(), taken.waistband(), taken.hem())
                .forEach(share -> cells.add(String.format(Locale.ROOT, "%.4f", share)));
        return cells;
    }

    private static List<EdgeName> edges(Nest.Nested piece) {
        return piece.runs().stream().map(Nest.Run::edge).distinct().toList();
    }

    private static long count(Sizes.Size size, FitReport.Severity severity) {
        return size.fit().verdicts().stream()
                .filter(v -> v.severity() == severity)
                .count();
    }

    /** One corner a row: where it lies in the first size, from the anchor, and how it moves to each next size. */
    static Document grade(Nest nest) {
        StringBuilder csv = new StringBuilder("piece,corner");
        for (int i = 0; i < nest.sizes().size(); i++) {
            String to = CsvLines.cell((i == 0 ? "at " : "to ") + nest.sizes().get(i) + " x");
            csv.append(',').append(to).append(',');
            csv.append(CsvLines.cell((i == 0 ? "at " : "to ") + nest.sizes().get(i) + " y"));
        }
        csv.append('\n');
        for (Nest.Nested piece : nest.pieces()) {
            for (Nest.Corner c : piece.corners()) {
                csv.append(piece.name().word())
                        .append(',')
                        .append(c.before().word())
                        .append(" / ")
                        .append(c.after().word());
                List<Point> cells = new ArrayList<>(List.of(c.at().get(0)));
                cells.addAll(c.moves());
                cells.forEach(p -> csv.append(',').append(mm(p.x())).append(',').append(mm(p.y())));
                csv.append('\n');
            }
        }
        return table("grade.csv", "grade", csv);
    }

    private static Document table(String name, String kind, StringBuilder csv) {
        return new Document(name, kind, 1, csv.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String mm(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.equals("-0.00") ? "0.00" : text;
    }
}
