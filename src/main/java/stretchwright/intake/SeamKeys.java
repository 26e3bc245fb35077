package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Style;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Rows of the seam allowances: one for all seams, and exceptions. */
public final class SeamKeys {
    /** Four-thread overlock: its own bite, about 7 mm (trade values 4.3, seen in a thread maker's leaflet). */
    static final double OVERLOCKED = 7;

    /** Zigzag or other seams: room for the stitch and the hand (common practice, no source). */
    static final double OTHERWISE = 10;

    private static final String ALL = "style.seam allowance";
    private static final Map<String, List<Seam.Role>> ROLES = roles();

    static final Key<Boolean> ALLOWANCES = Row.sectionOr(ALL, "default", "{default: {7}, inseam: {10}}")
            .also("seam allowances", "allowance")
            .in(Lens.reading(m -> Optional.of(true)))
            .echoed(Echoed.as("allowances", m -> Optional.of(told(m.style()))));

    public static final Key<Double> ALLOWANCE = Row.length(ALL + ".default", 3, 40, "why.allowance", 4, 26, "{7}")
            .in(Row.ofStyle(s -> Optional.of(s.allowance()), (s, mm) -> s.with(mm, s.allowances())))
            .echoed(Echoed.as("allowance"));

    private static final Map<String, Key<Double>> SEAMS = new LinkedHashMap<>();

    static {
        ROLES.forEach((seam, roles) -> SEAMS.put(seam, seam(seam, roles)));
    }

    private SeamKeys() {}

    static List<Key<?>> rows() {
        List<Key<?>> rows = new ArrayList<>(List.of(ALLOWANCES, ALLOWANCE));
        rows.addAll(SEAMS.values());
        return rows;
    }

    /** The exceptions of a file, by the role of the seam. */
    static Map<Seam.Role, Double> exceptions(Given given) {
        Map<Seam.Role, Double> out = new EnumMap<>(Seam.Role.class);
        SEAMS.forEach((seam, key) -> given.get(key)
                .ifPresent(mm -> ROLES.getOrDefault(seam, List.of()).forEach(r -> out.put(r, mm))));
        return out;
    }

    private static Key<Double> seam(String seam, List<Seam.Role> roles) {
        Key<Double> key = seam.equals("hem")
                ? Row.length(ALL + "." + seam, 3, 80, "why.hem-allowance", 8, 60, "{20}")
                : Row.length(ALL + "." + seam, 3, 40, "why.allowance", 4, 26, "{10}");
        return key.worded("style.seam-allowance.seam", Part.text(seam))
                .in(Row.ofStyle(
                        s -> Optional.ofNullable(s.allowances().get(roles.get(0))), (s, mm) -> with(s, roles, mm)))
                .untold();
    }

    private static Style with(Style style, List<Seam.Role> roles, double mm) {
        Map<Seam.Role, Double> all = new EnumMap<>(Seam.Role.class);
        all.putAll(style.allowances());
        roles.forEach(r -> all.put(r, mm));
        return style.with(style.allowance(), all);
    }

    private static JsonNode told(Style style) {
        ObjectNode out = Schemas.node();
        new TreeMap<>(style.allowances()).forEach((role, mm) -> out.put(ChoiceKind.lower(role), Numbers.mm(mm)));
        return out;
    }

    private static Map<String, List<Seam.Role>> roles() {
        Map<String, List<Seam.Role>> seams = new LinkedHashMap<>();
        seams.put("front rise", List.of(Seam.Role.FRONT_RISE));
        seams.put("back rise", List.of(Seam.Role.BACK_RISE));
        seams.put("inseam", List.of(Seam.Role.INSEAM));
        seams.put("waistband", List.of(Seam.Role.WAISTBAND_JOIN, Seam.Role.WAISTBAND_ENDS, Seam.Role.WAISTBAND_TOP));
        seams.put("cuff", List.of(Seam.Role.CUFF_JOIN, Seam.Role.CUFF_ENDS));
        seams.put("side seam", List.of(Seam.Role.SIDE_SEAM));
        seams.put("panel", List.of(Seam.Role.PANEL));
        seams.put("gusset", List.of(Seam.Role.GUSSET));
        seams.put("pocket", List.of(Seam.Role.POCKET));
        seams.put("hem", List.of(Seam.Role.HEM));
        return seams;
    }
}
