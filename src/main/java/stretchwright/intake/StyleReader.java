package stretchwright.intake;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.boot.Boot;
import stretchwright.pattern.Hold;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Seam;
import stretchwright.pattern.Stitch;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/**
 * Reads the style. What is left out takes the usual value named in docs/formats.md.
 */
final class StyleReader {
    private static final List<String> KEYS = keys(
            "leg",
            "rise",
            "front waist",
            "back waist",
            "back",
            "waistband",
            "hem",
            "hem drop",
            "cuff",
            "strap",
            "growth",
            "hold",
            "ease",
            "seam allowance",
            "lay");
    private static final List<String> LEGS = List.of("over boot", "ankle", "stirrup", "calf", "knee", "short");
    private static final Map<String, List<Seam.Role>> SEAMS = seams();

    private final Section top;
    private final Optional<WearerReader.Wearer> wearer;
    private final Optional<Boot> boot;
    private final Set<Machine> machines;

    StyleReader(Section top, Optional<WearerReader.Wearer> wearer, Optional<Boot> boot, Set<Machine> machines) {
        this.top = top;
        this.wearer = wearer;
        this.boot = boot;
        this.machines = machines;
    }

    private static List<String> keys(String... own) {
        List<String> keys = new java.util.ArrayList<>(List.of(own));
        keys.addAll(PartsReader.KEYS);
        return List.copyOf(keys);
    }

    private static Map<String, List<Seam.Role>> seams() {
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

    Optional<Style> read() {
        Optional<Section> section = top.has("style") ? top.section("style", KEYS) : Optional.of(nothingSaid());
        return section.map(this::read);
    }

    private static Section nothingSaid() {
        return new Section(
                new Tree.Keys(Map.of(), 1), "style", new stretchwright.ground.Findings(""), Optional.empty(), KEYS);
    }

    private Style read(Section s) {
        Style.Leg leg = leg(s);
        Parts parts = PartsReader.read(s);
        TopEnd topEnd = new TopReader(s, wearer, parts).read();
        LowerEnd lower = LowerReader.read(s, leg, boot);
        Hold hold = HoldReader.read(s);
        Map<Seam.Role, Double> allowances = new EnumMap<>(Seam.Role.class);
        if (lower.cuffHeight().isEmpty()) {
            allowances.put(Seam.Role.HEM, lower.turnUp());
        }
        double allowance = allowance(s, allowances);
        return new Style(leg, lower, topEnd, parts, hold, allowance, allowances, LayReader.read(s), HoldReader.ease(s));
    }

    /** As written in the make file: "over boot". */
    static String legWord(Style.Leg leg) {
        return word(leg).replace('_', ' ');
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private Style.Leg leg(Section s) {
        Optional<String> word = s.choice("leg", LEGS, w -> w);
        if (word.isEmpty()) {
            return boot.isPresent() ? Style.Leg.OVER_BOOT : Style.Leg.ANKLE;
        }
        if (word.get().equals("over boot") && !top.has("boot")) {
            s.add(
                    "leg",
                    "\"over boot\" needs a boot, and the file has no boot section.",
                    "Measure the laced boot (top, heel, hem girth, ankle to hem), or choose leg: ankle.");
        }
        return switch (word.get()) {
            case "over boot" -> Style.Leg.OVER_BOOT;
            case "stirrup" -> Style.Leg.STIRRUP;
            case "calf" -> Style.Leg.CALF;
            case "knee" -> Style.Leg.KNEE;
            case "short" -> Style.Leg.SHORT;
            default -> Style.Leg.ANKLE;
        };
    }

    private double allowance(Section s, Map<Seam.Role, Double> exceptions) {
        double usual = Machine.forSeam(machines) == Stitch.OVERLOCK_4
                ? Limits.ALLOWANCE_OVERLOCKED
                : Limits.ALLOWANCE_OTHERWISE;
        if (!s.isSection("seam allowance")) {
            return s.length("seam allowance", Limits.ALLOWANCE).orElse(usual);
        }
        List<String> known = new java.util.ArrayList<>(List.of("default"));
        known.addAll(SEAMS.keySet());
        Section each = s.section("seam allowance", known).orElseThrow();
        SEAMS.forEach((name, roles) -> {
            OptionalDouble mm = each.length(name, name.equals("hem") ? Limits.HEM_ALLOWANCE : Limits.ALLOWANCE);
            if (mm.isPresent()) {
                roles.forEach(role -> exceptions.put(role, mm.getAsDouble()));
            }
        });
        return each.length("default", Limits.ALLOWANCE).orElse(usual);
    }
}
