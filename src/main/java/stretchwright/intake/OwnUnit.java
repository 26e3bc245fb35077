package stretchwright.intake;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stretchwright.ground.Finding;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;

/**
 * Words the rooms' sentences in the maker's own unit: the rooms speak millimetres, and this is the door where "961 mm"
 * becomes "96.1 cm" or "37.8 in". A bracket of bare numbers behind a length, "572 mm (542 to 602)", goes with it.
 */
public final class OwnUnit {
    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern LENGTH = Pattern.compile(
            NUMBER + "(?: to " + NUMBER + ")? mm\\b(?: \\((give or take )?" + NUMBER + "(?: to " + NUMBER + ")?\\))?");

    private OwnUnit() {}

    public static String text(String millimetres, Unit unit) {
        if (unit == Unit.MM) {
            return millimetres;
        }
        Matcher m = LENGTH.matcher(millimetres);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            StringBuilder own = new StringBuilder(number(m.group(1), unit));
            if (m.group(2) != null) {
                own.append(" to ").append(number(m.group(2), unit));
            }
            own.append(' ').append(unit.symbol());
            if (m.group(4) != null) {
                own.append(" (").append(m.group(3) == null ? "" : m.group(3)).append(number(m.group(4), unit));
                own.append(m.group(5) == null ? "" : " to " + number(m.group(5), unit))
                        .append(')');
            }
            m.appendReplacement(out, Matcher.quoteReplacement(own.toString()));
        }
        return m.appendTail(out).toString();
    }

    private static String number(String mm, Unit unit) {
        return String.format(Locale.ROOT, unit == Unit.IN ? "%.2f" : "%.1f", unit.fromMm(Double.parseDouble(mm)));
    }

    public static List<Finding> findings(List<Finding> all, Unit unit) {
        return all.stream()
                .map(f -> new Finding(f.file(), f.key(), f.row(), own(f.wrong(), unit), own(f.right(), unit), unit))
                .toList();
    }

    /** Sentences by key are worded in the unit of the finding; only those without a key speak millimetres still. */
    private static Said own(Said said, Unit unit) {
        return said.room().isEmpty() ? Said.unworded(text(said.key(), unit)) : said;
    }
}
