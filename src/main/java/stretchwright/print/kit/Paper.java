package stretchwright.print.kit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stretchwright.ground.Grid;
import stretchwright.ground.Unit;

/**
 * A sheet, upright, in mm, with the margin its printer leaves and how far sheets overlap; for a roll the height is the
 * longest sheet and what is not needed is left off.
 *
 * <p>Sizes: ISO 216 and the US office sizes, trade-values section 7.2. A PDF page ends at 200 in = 5080 mm (ISO
 * 32000-1, annex C), so a roll's sheet ends at 5000.
 */
public record Paper(String name, double width, double height, double margin, double overlap) {
    /** Laser printers leave 4 to 6 mm, ink printers up to 13 at the tail; 10 is common practice, no source. */
    static final double MARGIN = 10;

    static final double OVERLAP = 10;

    /** Two test squares with their lettering and the margins have to fit. */
    static final double NARROWEST = 160;

    private static final double LONGEST = 5000;
    private static final List<Paper> SHEETS = List.of(
            new Paper("A4", 210, 297),
            new Paper("A3", 297, 420),
            new Paper("A2", 420, 594),
            new Paper("A1", 594, 841),
            new Paper("A0", 841, 1189),
            new Paper("Letter", 215.9, 279.4),
            new Paper("Tabloid", 279.4, 431.8));
    private static final String SIDE = "(\\d{1,4}(?:\\.\\d{1,2})?)";
    private static final String UNIT = "\\s*(mm|cm|in)";
    private static final Pattern ROLL = Pattern.compile("roll\\s+" + SIDE + UNIT);
    private static final Pattern OTHER = Pattern.compile(SIDE + "\\s*x\\s*" + SIDE + UNIT);

    /** With the margin and the overlap that are usual. */
    Paper(String name, double width, double height) {
        this(name, width, height, MARGIN, OVERLAP);
    }

    public Paper {
        if (!(width >= NARROWEST && width <= LONGEST && height >= NARROWEST && height <= LONGEST)) {
            throw new IllegalArgumentException("paper " + name + " of " + width + " x " + height + " mm; " + NARROWEST
                    + " to " + LONGEST + " mm each way");
        }
    }

    /**
     * The same sheet for a printer that leaves another margin, and for sheets that overlap by another length; an overlap of
     * 0 is edge to edge. Empty where the test squares would not fit between.
     */
    public Optional<Paper> with(double printerMargin, double sheetOverlap) {
        double room = Math.min(width, height) - 2 * (printerMargin + TestSquares.inset(sheetOverlap));
        boolean fits = printerMargin >= 0 && sheetOverlap >= 0 && room >= TestSquares.SIDE;
        return fits ? Optional.of(new Paper(name, width, height, printerMargin, sheetOverlap)) : Optional.empty();
    }

    /** "A4", "letter", "roll 914 mm", "13 x 19 in": the paper of that name or of that size, in any mix of capitals. */
    public static Optional<Paper> of(String words) {
        String word = words.strip().toLowerCase(Locale.ROOT);
        Matcher roll = ROLL.matcher(word);
        if (roll.matches()) {
            return sized("roll " + roll.group(1) + " " + roll.group(2), mm(roll.group(1), roll.group(2)), LONGEST);
        }
        Matcher other = OTHER.matcher(word);
        if (other.matches()) {
            String unit = other.group(3);
            return sized(
                    other.group(1) + " x " + other.group(2) + " " + unit,
                    mm(other.group(1), unit),
                    mm(other.group(2), unit));
        }
        return SHEETS.stream()
                .filter(p -> p.name.toLowerCase(Locale.ROOT).equals(word))
                .findFirst();
    }

    private static double mm(String number, String unit) {
        return Grid.snap(Unit.of(unit).orElseThrow().toMm(Double.parseDouble(number)));
    }

    private static Optional<Paper> sized(String name, double width, double height) {
        boolean fits = Math.min(width, height) >= NARROWEST && Math.max(width, height) <= LONGEST;
        return fits ? Optional.of(new Paper(name, width, height)) : Optional.empty();
    }

    /** Those that have a name of their own, the home papers first. */
    public static List<String> names() {
        return Stream.concat(
                        Stream.of("A4", "Letter"),
                        SHEETS.stream().map(Paper::name).filter(n -> !n.equals("A4") && !n.equals("Letter")))
                .toList();
    }

    public static Paper named(String word) {
        return of(word).orElseThrow();
    }

    public boolean isRoll() {
        return name.startsWith("roll ");
    }

    /** The sheet that an office has where this paper is used. */
    public Paper office() {
        return named(name.equals("Letter") || name.equals("Tabloid") ? "Letter" : "A4");
    }

    /** Lying on its side. */
    public Paper turned() {
        return new Paper(name, height, width, margin, overlap);
    }

    /** The same width, cut to what is needed. */
    public Paper cutTo(double length) {
        return new Paper(name, width, Math.min(height, Math.max(NARROWEST, length)), margin, overlap);
    }
}
