package stretchwright.body;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** The rows of one survey file: named columns, blank cells as NaN. Female is 0 and male 1 in the column "sex". */
record Rows(Map<String, Integer> columns, List<double[]> rows) {

    /** Where the surveys lie: beside the project folder, or where the property says. */
    static Path folder() {
        return Path.of(System.getProperty("stretchwright.shared", "../shared"), "data", "bodies");
    }

    static Rows read(String file) {
        try {
            List<String> lines = Files.readAllLines(folder().resolve(file));
            Map<String, Integer> columns = new HashMap<>();
            String[] head = lines.get(0).split(",", -1);
            for (int i = 0; i < head.length; i++) {
                columns.put(head[i], i);
            }
            List<double[]> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                rows.add(numbers(line.split(",", -1)));
            }
            return new Rows(columns, rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double[] numbers(String[] cells) {
        double[] row = new double[cells.length];
        for (int i = 0; i < row.length; i++) {
            row[i] = switch (cells[i]) {
                case "" -> Double.NaN;
                case "F" -> 0;
                case "M" -> 1;
                default -> Double.parseDouble(cells[i]);
            };
        }
        return row;
    }

    double cell(double[] row, String column) {
        Integer at = columns.get(column);
        return at == null ? Double.NaN : row[at];
    }

    Rows where(Predicate<double[]> wanted) {
        return new Rows(columns, rows.stream().filter(wanted).toList());
    }

    Rows fold(int fold, int of, boolean inside) {
        List<double[]> some = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if ((i % of == fold) == inside) {
                some.add(rows.get(i));
            }
        }
        return new Rows(columns, some);
    }

    /** Natural logs of the columns, of the rows that have them all. */
    double[][] logs(List<String> wanted) {
        return rows.stream()
                .map(row ->
                        wanted.stream().mapToDouble(c -> Math.log(cell(row, c))).toArray())
                .filter(Rows::complete)
                .toArray(double[][]::new);
    }

    static boolean complete(double[] values) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                return false;
            }
        }
        return true;
    }
}
