package stretchwright.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stretchwright.body.Figure;
import stretchwright.body.Measure;
import stretchwright.pattern.Machine;

/**
 * The fields of the form, in the order of the page; filled in with the make of examples/evening-practice.yaml. Words
 * for people stand here; what a value may be is known to the make room only.
 */
public final class Fields {
    static final String BOOT = "boot";
    static final String MACHINES = "machines";

    private Fields() {}

    static final List<Group> GROUPS = List.of(
            new Group(
                    "This make",
                    "",
                    List.of(
                            Field.text("name", "Name of this make", "", "", "Evening practice"),
                            Field.choice("unit", "Unit of every bare number", "", List.of("mm", "cm", "in"), "cm"))),
            new Group(
                    "Wearer",
                    "",
                    List.of(
                            Field.text("wearer.name", "Name or code", "May be left empty.", "", "Rowan"),
                            Field.choice(
                                    "wearer.figure",
                                    "Figure",
                                    "Chooses the survey that fills in what was not measured.",
                                    Arrays.stream(Figure.values())
                                            .map(Figure::word)
                                            .toList(),
                                    "woman"),
                            Field.text("wearer.age", "Age", "Needed for a child.", "years", "31"))),
            new Group(
                    "Measures of the wearer",
                    "What you leave empty is estimated and marked so. Heights are from the floor, without shoes."
                            + " A value may carry its own unit: 13 1/2 in.",
                    measures()),
            new Group(
                    "Fabric",
                    "Along = parallel to the selvage. Across = from selvage to selvage; it goes round the leg.",
                    fabric()),
            new Group("Boot", "Measured on the laced boot.", boot()),
            new Group("Style", "", style()),
            new Group(
                    "Machines and paper",
                    "",
                    List.of(
                            new Field(
                                    MACHINES,
                                    "Machines at hand",
                                    "None ticked: sewn by hand.",
                                    Field.Kind.MANY,
                                    "",
                                    Arrays.stream(Machine.values())
                                            .filter(m -> m != Machine.HAND)
                                            .map(Machine::word)
                                            .toList(),
                                    "overlocker; coverstitch"),
                            Field.choice(
                                    "print.paper",
                                    "Paper",
                                    "A4 and Letter are always made as well.",
                                    List.of("A4", "A3", "A2", "A1", "A0", "Letter", "Tabloid", "roll 914 mm"),
                                    "A4"))));

    /** A part of the form. */
    public record Group(String name, String hint, List<Field> fields) {}

    static List<Field> all() {
        return GROUPS.stream().flatMap(g -> g.fields().stream()).toList();
    }

    private static List<Field> measures() {
        List<Field> fields = new ArrayList<>();
        for (Measure m : Measure.values()) {
            String[] words = words(m);
            String label = m.term().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                    + m.term().substring(1);
            fields.add(Field.length("wearer.measurements." + m.term(), label, words[0], words[1]));
        }
        return List.copyOf(fields);
    }

    /** Where the tape goes, in plain words (ISO 8559-1 says it in full), and the example. */
    private static String[] words(Measure m) {
        return switch (m) {
            case STATURE -> new String[] {"height, standing, without shoes", "162.7"};
            case WAIST_GIRTH -> new String[] {"round where you bend sideways", "74.2"};
            case HIP_GIRTH -> new String[] {"round the fullest part of the seat", "96.1"};
            case THIGH_GIRTH -> new String[] {"round the top of the thigh, just below the seat", "57.0"};
            case MID_THIGH_GIRTH -> new String[] {"round, halfway between crotch and knee", "48.0"};
            case KNEE_GIRTH -> new String[] {"round the middle of the knee, leg straight", "36.5"};
            case CALF_GIRTH -> new String[] {"round the fullest part of the calf", "35.0"};
            case ANKLE_GIRTH -> new String[] {"round the smallest place above the ankle bones", "21.5"};
            case WAIST_HEIGHT -> new String[] {"floor to waist", "103.0"};
            case HIP_HEIGHT -> new String[] {"floor to the fullest part of the seat", "83.0"};
            case CROTCH_HEIGHT -> new String[] {"inner leg down to the floor", "77.2"};
            case KNEE_HEIGHT -> new String[] {"floor to the middle of the knee", "46.0"};
            case CALF_HEIGHT -> new String[] {"floor to where the calf was measured", "33.0"};
            case ANKLE_HEIGHT -> new String[] {"floor to where the ankle was measured", "10.0"};
            case ANKLE_BONE_HEIGHT -> new String[] {"floor to the outer ankle bone", ""};
            case TOTAL_CROTCH_LENGTH -> new String[] {"front waist, through the legs, to the back waist", "70.0"};
            case BACK_CROTCH_LENGTH -> new String[] {"the back part of that length", "38.0"};
            case HEEL_GIRTH -> new String[] {"round heel and instep, bare foot", "30.5"};
            case FOOT_LENGTH -> new String[] {"heel to the longest toe", ""};
        };
    }

    private static List<Field> fabric() {
        return List.of(
                Field.text("fabric.name", "Name", "May be left empty.", "", "Heavy performance knit, ink"),
                Field.length(
                        "fabric.usable width", "Usable width", "between the selvage strips that cannot be used", "147"),
                Field.text("fabric.on hand", "On hand", "length you own; may be left empty", Field.LENGTH, "1.6 m"),
                Field.text("fabric.weight", "Weight", "may be left empty", "g/m2", "260"),
                Field.text(
                        "fabric.stretch across",
                        "Stretch across",
                        "100 mm that pull to 160 mm are 60 %; or give the fold test",
                        "%",
                        "60"),
                Field.text("fabric.stretch along", "Stretch along", "", "%", "45"),
                fold("fabric.fold across", "Fold test across"),
                fold("fabric.fold along", "Fold test along"),
                readings("fabric.load across", "Load across", "20 % = 3.1 N; 40 % = 6.9 N; 60 % = 13 N"),
                readings("fabric.load along", "Load along", "20 % = 4.0 N; 40 % = 9.5 N"),
                Field.text(
                        "fabric.recovery",
                        "Recovery",
                        "share of the stretch that comes back; may be left empty",
                        "%",
                        "95"),
                Field.text("fabric.shrinkage across", "Shrinkage across", "after washing; empty = 0", "%", "1"),
                Field.text("fabric.shrinkage along", "Shrinkage along", "empty = 0", "%", "2"),
                Field.check("fabric.one way", "One way: print, nap or sheen has a direction", "", true),
                Field.length("fabric.repeat along", "Print repeat along", "empty or 0 = none", "0"),
                Field.text(
                        "fabric.shows through at",
                        "Shows through at",
                        "area stretch at which a test card under it showed; may be left empty",
                        "%",
                        "130"),
                Field.text(
                        "fabric.price",
                        "Price",
                        "such as 14.50 per m, or 12 per yd; may be left empty",
                        "per m",
                        "14.50"));
    }

    private static Field fold(String key, String label) {
        String hint =
                "relaxed; pulled; rested for a minute, such as 100 mm; 160 mm; 102.5 mm. Gives stretch and recovery.";
        return new Field(key, label, hint, Field.Kind.LENGTHS, "", List.of(), "");
    }

    private static Field readings(String key, String label, String example) {
        String hint = "weights hung on a strip 50 mm wide, such as 20 % = 3.1 N; 40 % = 700 g. Empty = assumed.";
        return new Field(key, label, hint, Field.Kind.READINGS, "", List.of(), example);
    }

    private static List<Field> boot() {
        return List.of(
                Field.check(BOOT, "There is a boot", "Off: the fields below are not used.", true),
                Field.text("boot.kind", "Kind", "a label only", "", "figure skate"),
                Field.length("boot.top girth", "Round the top edge", "", "29.0"),
                Field.length("boot.heel girth", "Round heel and instep", "the longest loop, boot on", "40.0"),
                Field.length("boot.hem girth", "Round, where the hem will sit", "", "38.5"),
                Field.length("boot.ankle to hem", "Ankle bone down to the hem", "", "14.0"),
                Field.length("boot.ankle to top", "Ankle bone up to the top edge", "empty = assumed", ""),
                Field.length(
                        "boot.ankle to sole", "Ankle bone down to the sole's lower edge", "for strap or cover", ""),
                Field.length("boot.sole length", "Sole, heel to toe", "for a cover", ""),
                Field.length("boot.sole width", "Sole at its widest", "for a cover", ""),
                Field.length("boot.arch width", "Sole under the arch", "for a strap", ""),
                Field.length("boot.gap between mounts", "Gap between front and rear mount", "for a strap", ""),
                Field.length("boot.plate length", "Plate or blade, end to end", "for a cover pulled over it", ""),
                Field.length("boot.guard girth", "Round heel, guard and instep", "if pulled over the laced boot", ""),
                Field.choice(
                        "boot.dressing",
                        "Dressing",
                        "leg first: rolled down after lacing",
                        List.of("leg first", "over the laced boot"),
                        "leg first"));
    }

    private static List<Field> style() {
        return List.of(
                Field.choice(
                        "style.leg",
                        "Leg ends",
                        "",
                        List.of("over boot", "ankle", "stirrup", "calf", "knee", "short"),
                        "over boot"),
                Field.choice(
                        "style.hem",
                        "Hem on the boot",
                        "only for a leg over the boot; over the heel and whole boot take no cuff",
                        List.of("inside the boot", "to the collar", "over the laces", "over the heel", "whole boot"),
                        "over the laces"),
                Field.length("style.hem drop", "Back lower than front", "only over the heel; empty = usual", ""),
                Field.length("style.growth", "Kept for growth", "in a plain turned hem; empty = none", ""),
                Field.choice(
                        "style.hold", "Hold", "how firmly it is to hold", List.of("light", "medium", "firm"), "medium"),
                Field.text("style.rise", "Top edge", "waist, hip, or a length below the waist", Field.LENGTH, "waist"),
                Field.length("style.waistband.height", "Waistband height", "finished", "6.5"),
                Field.length(
                        "style.cuff.height", "Cuff height", "finished; empty = no cuff, a plain turned hem", "3.2"),
                Field.length("style.seam allowance", "Seam allowance", "empty = usual for your machines", "0.7"),
                Field.choice(
                        "style.lay",
                        "Lay",
                        "how the cloth may lie for cutting",
                        List.of("any", "folded", "open", "part folded", "folded off the middle", "folded crosswise"),
                        "any"));
    }
}
