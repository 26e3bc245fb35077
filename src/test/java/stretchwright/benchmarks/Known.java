package stretchwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Densities published or asked, read from best-known.md beside the instances: tables A (published) and E (bars). The
 * sources stand there.
 */
final class Known {
    static final List<String> HEADINGS = List.of("bar 60 s", "bar 600 s", "best before 2025", "best 2025");
    private static final String NONE = "-";

    private final Map<String, String> published = new HashMap<>();
    private final Map<String, String> bars = new HashMap<>();

    private Known() {}

    static Known in(Path folder) throws IOException {
        Known known = new Known();
        Path file = folder.resolve("best-known.md");
        String table = "";
        for (String line : Files.exists(file) ? Files.readAllLines(file) : List.<String>of()) {
            table = line.startsWith("## ") ? line.substring(3, 4) : table;
            List<String> cells =
                    Arrays.stream(line.split("\\|")).map(String::strip).toList();
            if (table.equals("A") && cells.size() > 6) {
                known.published.put(cells.get(1), first(cells.get(5)) + " | " + first(cells.get(4)));
            } else if (table.equals("E") && cells.size() > 6) {
                known.bars.put(cells.get(1), first(cells.get(5)) + " | " + first(cells.get(6)));
            }
        }
        return known;
    }

    private static String first(String cell) {
        return cell.split(" ")[0];
    }

    /** The cells under the headings. */
    String cells(String instance) {
        String none = NONE + " | " + NONE;
        return bars.getOrDefault(instance, none) + " | " + published.getOrDefault(instance, none);
    }
}
