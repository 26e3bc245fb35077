package stretchwright.exchange;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import stretchwright.ground.Point;

/** Reads DXF from scratch, by the pairs of group code and value; knows nothing of how the files are written. */
final class DxfReader {
    record Entity(
            String type, String layer, List<Point> points, boolean closed, String text, Map<Integer, String> tags) {
        double number(int code) {
            return Double.parseDouble(tags.getOrDefault(code, "0"));
        }

        /** One line that another reader's can be compared with. */
        String line() {
            String at = points.stream()
                    .map(p -> String.format(Locale.ROOT, " %.3f %.3f", p.x(), p.y()))
                    .collect(Collectors.joining());
            return type + " " + layer + (closed ? " closed" : "") + at;
        }
    }

    private record Pair(int code, String value) {}

    final Map<String, String> header = new LinkedHashMap<>();
    final List<String> layers = new ArrayList<>();
    final Map<String, List<Entity>> blocks = new LinkedHashMap<>();
    final List<Entity> entities = new ArrayList<>();
    private final List<Pair> pairs = new ArrayList<>();
    private int next;

    private DxfReader() {}

    static DxfReader read(byte[] bytes) {
        for (byte b : bytes) {
            if (b < 0) {
                throw new IllegalArgumentException("not plain ASCII");
            }
        }
        String text = new String(bytes, StandardCharsets.US_ASCII);
        String[] lines = text.split("\r\n", -1);
        DxfReader it = new DxfReader();
        for (int i = 0; i + 1 < lines.length; i += 2) {
            if (lines[i + 1].chars().anyMatch(c -> c < 0x20)) {
                throw new IllegalArgumentException("a control character in line " + (i + 2));
            }
            it.pairs.add(new Pair(Integer.parseInt(lines[i].strip()), lines[i + 1]));
        }
        if (lines.length % 2 != 1 || !lines[lines.length - 1].isEmpty()) {
            throw new IllegalArgumentException("the file does not end with a whole pair");
        }
        it.sections();
        return it;
    }

    private void sections() {
        while (!at(0, "EOF")) {
            expect(0, "SECTION");
            String name = take().value();
            while (!at(0, "ENDSEC")) {
                switch (name) {
                    case "HEADER" -> header.put(take().value(), take().value());
                    case "TABLES" -> table();
                    case "BLOCKS" -> block();
                    case "ENTITIES" -> entities.add(entity());
                    default -> throw new IllegalArgumentException("section " + name);
                }
                while (name.equals("HEADER") && pairs.get(next).code() != 9 && !at(0, "ENDSEC")) {
                    take();
                }
            }
            take();
        }
        take();
        if (next != pairs.size()) {
            throw new IllegalArgumentException("something follows the end");
        }
    }

    private void table() {
        Pair pair = take();
        if (pair.code() == 0 && pair.value().equals("LAYER")) {
            layers.add(take().value());
        }
    }

    private void block() {
        Entity head = entity();
        if (!head.type().equals("BLOCK")) {
            throw new IllegalArgumentException("no block but " + head.type());
        }
        List<Entity> inside = new ArrayList<>();
        while (!at(0, "ENDBLK")) {
            inside.add(entity());
        }
        entity();
        if (blocks.put(head.tags().get(2), inside) != null) {
            throw new IllegalArgumentException("two blocks of one name");
        }
    }

    private Entity entity() {
        Pair type = take();
        if (type.code() != 0) {
            throw new IllegalArgumentException("no entity begins with " + type);
        }
        Map<Integer, String> tags = new LinkedHashMap<>();
        while (pairs.get(next).code() != 0) {
            Pair pair = take();
            if (tags.put(pair.code(), pair.value()) != null) {
                throw new IllegalArgumentException(type + " has code " + pair.code() + " twice");
            }
        }
        List<Point> points = new ArrayList<>();
        if (type.value().equals("POLYLINE")) {
            while (at(0, "VERTEX")) {
                points.addAll(entity().points());
            }
            Entity end = entity();
            if (!end.type().equals("SEQEND")) {
                throw new IllegalArgumentException("a polyline ends with " + end.type());
            }
        } else {
            for (int code = 10; tags.containsKey(code); code++) {
                points.add(new Point(Double.parseDouble(tags.get(code)), Double.parseDouble(tags.get(code + 10))));
            }
        }
        boolean closed =
                type.value().equals("POLYLINE") && tags.getOrDefault(70, "0").equals("1");
        return new Entity(
                type.value(), tags.getOrDefault(8, ""), List.copyOf(points), closed, tags.getOrDefault(1, ""), tags);
    }

    private boolean at(int code, String value) {
        return pairs.get(next).equals(new Pair(code, value));
    }

    private void expect(int code, String value) {
        if (!at(code, value)) {
            throw new IllegalArgumentException(pairs.get(next) + " where " + value + " is expected");
        }
        next++;
    }

    private Pair take() {
        return pairs.get(next++);
    }
}
