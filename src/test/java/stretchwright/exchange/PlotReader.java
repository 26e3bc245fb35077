package stretchwright.exchange;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stretchwright.ground.Point;

/** Follows the pen of a HP-GL file, in mm; refuses what a pattern needs no pen for. */
final class PlotReader {
    record Stroke(int pen, List<Point> points) {}

    record Lettering(Point at, double width, double height, String words) {}

    final List<Stroke> strokes = new ArrayList<>();
    final List<Lettering> labels = new ArrayList<>();
    private final String text;
    private int next;
    private int pen;
    private Point at = Point.ORIGIN;
    private List<Point> stroke = new ArrayList<>();
    private List<Double> size = List.of(0.0, 0.0);

    private PlotReader(String text) {
        this.text = text;
    }

    static PlotReader read(byte[] bytes) {
        PlotReader it = new PlotReader(new String(bytes, StandardCharsets.ISO_8859_1));
        if (!it.text.startsWith("IN;") || !it.text.endsWith(";SP0;\n")) {
            throw new IllegalArgumentException("no start or no end");
        }
        while (it.next < it.text.length()) {
            it.instruction();
        }
        it.lift();
        return it;
    }

    private void instruction() {
        if (text.charAt(next) == '\n') {
            next++;
            return;
        }
        String name = text.substring(next, next + 2);
        next += 2;
        if (name.equals("LB")) {
            label();
            return;
        }
        int end = text.indexOf(';', next);
        List<Double> values = new ArrayList<>();
        for (String v : text.substring(next, end).split(",")) {
            if (!v.isEmpty()) {
                values.add(Double.parseDouble(v));
            }
        }
        next = end + 1;
        switch (name) {
            case "IN", "PA", "DI" -> lift();
            case "SI" -> size = values;
            case "SP" -> {
                lift();
                pen = values.get(0).intValue();
            }
            case "PU" -> {
                lift();
                at = points(values).get(0);
            }
            case "PD" -> {
                if (stroke.isEmpty()) {
                    stroke.add(at);
                }
                stroke.addAll(points(values));
            }
            default -> throw new IllegalArgumentException("instruction " + name);
        }
    }

    private void label() {
        int end = text.indexOf('\u0003', next);
        String words = text.substring(next, end);
        if (words.chars().anyMatch(c -> c < 0x20 || c > 0x7E)) {
            throw new IllegalArgumentException("a label with other than printable ASCII: " + words);
        }
        labels.add(new Lettering(at, size.get(0) * 10, size.get(1) * 10, words));
        next = end + 1;
        if (text.charAt(next) != ';') {
            throw new IllegalArgumentException("no end behind a label");
        }
        next++;
    }

    private void lift() {
        if (!stroke.isEmpty()) {
            strokes.add(new Stroke(pen, stroke));
            stroke = new ArrayList<>();
        }
    }

    /** In plotter units: whole, 40 per mm. */
    private static List<Point> points(List<Double> values) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i + 1 < values.size(); i += 2) {
            if (values.get(i) != Math.rint(values.get(i)) || values.get(i) < 0 || values.get(i + 1) < 0) {
                throw new IllegalArgumentException("off the paper or no whole unit: " + values);
            }
            out.add(new Point(values.get(i) * 0.025, values.get(i + 1) * 0.025));
        }
        return out;
    }
}
