package stretchwright.intake;

import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import stretchwright.pattern.LayTerms;
import stretchwright.sewing.SeveralPairs;

/**
 * The range of each value of a make file, and why. Wide on purpose: they catch slips of unit and comma, not unusual
 * people or cloths; whether measures agree with each other is judged by the body room. Reasons marked "common
 * practice" have no source.
 */
public final class Limits {
    private Limits() {}

    /** From least to most (both allowed), in mm or as a share; why is shown to the person. */
    public record Range(double least, double most, String why) {
        public boolean holds(double value) {
            return value >= least && value <= most;
        }

        /** What is wrong with a value that was read from a text; null where nothing is. */
        @Nullable
        String whatIsWrong(String text, OptionalDouble value, String what) {
            String lower = text.toLowerCase(Locale.ROOT);
            if (lower.matches("[+-]?\\.?(inf|infinity|nan)\\b.*")) {
                return Echo.quoted(text) + " cannot be measured.";
            }
            if (value.isEmpty()) {
                return Echo.quoted(text) + " is not " + what + ".";
            }
            double v = value.getAsDouble();
            if (v < 0) {
                return Echo.quoted(text) + " is negative.";
            }
            if (v == 0 && least > 0) {
                return Echo.quoted(text) + " is zero.";
            }
            return holds(v) ? null : Echo.quoted(text) + " is out of range.";
        }
    }

    /** The tallest person on record stood 2720 mm (from memory); nothing on a leg is under 10 mm. */
    public static final Range MEASUREMENT = new Range(10, 2750, "no body has such a measure");

    public static final Range AGE = new Range(1, 110, "years of a person who skates");

    /** A remnant of 200 mm to the widest cloths sold, 4 m curtain widths (common practice). */
    static final Range USABLE_WIDTH = new Range(200, 4000, "cloth is not sold like that");

    static final Range ON_HAND = new Range(50, 200_000, "a roll holds about 100 m");
    static final Range PRINT_MARGIN = new Range(3, 50, "no printer leaves less white, and the test squares need room");
    static final Range PRINT_OVERLAP = new Range(0, 40, "sheets are glued edge to edge or over a strip");
    static final Range CONVERSION = new Range(0, 240, "minutes to convert one machine");
    static final Range MINUTES = new Range(0.1, 240, "minutes for one step");
    static final Range THREAD = new Range(10_000, 20_000_000, "thread is sold on spools and cones of that length");
    static final Range STITCH_LENGTH = new Range(0.2, 6, "no machine for knits sews shorter or longer stitches");
    static final Range FEED = new Range(0.5, 3, "differential feeds go from 0.7 to 2 or a little beyond");
    static final Range PAIRS = new Range(1, SeveralPairs.MOST_PAIRS, "so many pairs are planned at most");
    static final Range SCISSOR_GAP = new Range(0, LayTerms.MOST_GAP, "room for the scissors between two pieces");
    static final Range GRAIN_TOLERANCE = new Range(
            0, LayTerms.MOST_TILT, "degrees; a leg cut farther off grain twists (common practice, no source)");
    /** Of a remnant's corners and of flaws, from the edge of the usable width or from the cut end. */
    static final Range ON_CLOTH = new Range(0, 200_000, "a place on the cloth");

    static final Range FLAW = new Range(1, 10_000, "width or length of a place to lay round");
    static final Range SELVAGE = new Range(0, 100, "the strip at one selvage that cannot be used");
    static final Range REPEAT = new Range(0, 2000, "print repeats are shorter");

    /** g/m2; leg wear is 120 to 400 (trade values 1.3), the ends leave room. */
    static final Range WEIGHT = new Range(40, 900, "no stretch knit weighs that");

    /** Above 0: without stretch nothing here can be worn. Rib reaches 100 % in the textbooks, loose tubes 200 %. */
    static final Range STRETCH = new Range(0.01, 3.00, "100 mm that pull to 160 mm are 60 %");

    /** Marks on folded cloth: 100 mm or 4 in usual, pulled at most fourfold. */
    static final Range FOLD = new Range(20, 2000, "100 mm or 4 in are marked on the fold");

    /** From top of thigh to shin on a small child, to ankle and ankle of a tall adult (common practice). */
    static final Range POSE_LENGTH = new Range(100, 3000, "a tape over the body, standing and in the pose");

    static final Range LOAD_EXTENSION = new Range(0.01, 3.00, "100 mm that pull to 120 mm are 20 %");

    /** N on a strip of 50 mm: 200 N is a heavy suitcase; leg wear stays under 15 (trade values 1.3). */
    static final Range LOAD_FORCE = new Range(0.01, 200, "on a strip of 50 mm; 100 g pull with 0.98 N");

    /** Handbooks take up to 20 % off (trade values 2.1); a third off is half as wide again as anything worn. */
    static final Range FIXED_REDUCTION = new Range(0, 0.35, "share taken off every girth; handbooks take 5 to 20 %");

    /** Signed, mm on the flat width; makers let out 10 to 20 mm after wearing (makers' troubles 1.1). */
    public static final Range EASE =
            new Range(-40, 60, "added to the flat width of one leg, or of the whole garment at the hip");

    /** mmHg; the comfort limits of the program are stricter (trade values 2.3). */
    static final Range PRESSURE = new Range(0.5, 60, "mmHg; clothes for sport stay under 25");

    static final Range RECOVERY = new Range(0.01, 1.00, "nothing returns more than it gave");
    static final Range SHRINKAGE = new Range(0, 0.4999, "half the cloth would be lost; usual is up to 5 %");
    static final Range SHOWS_THROUGH = new Range(0.01, 8.00, "areal stretch at which the card showed");
    static final Range PRICE = new Range(0, 100_000, "per metre or per yard");

    /** Boots of small children to the bulkiest hinged cuffs (makers' practice; no table of boots was found). */
    static final Range BOOT_TOP = new Range(120, 700, "round the boot's top edge");

    static final Range BOOT_HEEL = new Range(150, 800, "the longest loop round heel and instep, boot on");
    static final Range BOOT_HEM = new Range(120, 800, "round the boot where the hem will sit");

    /** Ankle bone to the ice is about 75 mm bare (trade values 9.1) and up to 110 mm more with heel and blade. */
    static final Range ANKLE_TO_HEM = new Range(0, 250, "from the ankle bone down; the ground comes first");

    static final Range ANKLE_TO_TOP = new Range(0, 450, "from the ankle bone up to the boot's top edge");

    /** Round heel, blade guard or wheels and instep: blade and guard add up to some 100 mm each way (common practice). */
    static final Range BOOT_GUARD = new Range(150, 1000, "round heel, guard or wheels, and instep");

    /** The bone stands about 75 mm over the floor bare (trade values 9.1); heel block and sole add up to 80 mm. */
    static final Range ANKLE_TO_SOLE = new Range(20, 220, "from the ankle bone down to the sole's lower edge");

    /** A foot of 130 to 330 mm and the boot's shell (common practice). */
    static final Range SOLE_LENGTH = new Range(120, 400, "the sole, heel to toe");

    static final Range SOLE_WIDTH = new Range(25, 160, "across the sole");
    static final Range MOUNT_GAP = new Range(0, 250, "free length between front and rear mount");
    static final Range PLATE = new Range(80, 450, "plate or blade under the sole, end to end");

    /** Makers lower the back by 30 to 60 mm (makers' troubles 5.2, common practice); a little either way is let through. */
    static final Range HEM_DROP = new Range(20, 70, "back of the hem lower than its front; usual is 30 to 60 mm");

    /** Firm elastic of 20 to 25 mm (makers' troubles 5.2, common practice). */
    static final Range STRAP = new Range(20, 25, "firm elastic under the arch of a boot");

    /** A narrower strap cuts into the arch, a wider one folds (common practice). */
    static final Range STIRRUP = new Range(20, 70, "a strap of cloth under the arch of the bare foot");

    /** With the deepest usual turn a hem stays under 80 mm; a child's leg grows some 30 to 40 mm a year. */
    static final Range GROWTH = new Range(0, 50, "more than a year's growth of leg is better cut anew");

    public static final Range DROP = new Range(0, 300, "further down it would not stay up");

    /** High bands are 110 to 140 mm (trade values 5); 8 mm is the narrowest that can be folded and sewn. */
    public static final Range BAND_HEIGHT = new Range(8, 250, "finished height of the folded band");

    /** Waist elastics are sold from 6 to 60 mm (common practice, no source). */
    static final Range ELASTIC = new Range(6, 60, "width of a waist elastic");

    /** A key is about 25 mm wide; wider than 150 mm is no key pocket (common practice, no source). */
    static final Range KEY_POCKET = new Range(35, 150, "finished width of a key pocket");

    /** Signed: sway backs take 6 to 25 mm off, full seats and seated wearers add up to 50 (makers' troubles). */
    public static final Range RAISE = new Range(-50, 60, "higher (+) or lower (-) than usual at the centre");

    static final Range CUFF_HEIGHT = new Range(8, 200, "finished height of the folded cuff");
    static final Range ALLOWANCE = new Range(3, 40, "stitches need 3 mm; more than 40 mm is cut off again");
    static final Range HEM_ALLOWANCE = new Range(3, 80, "the depth of the turned hem");

    /** Finished width of a strip along the side: narrower cannot be sewn, wider is no strip (common practice). */
    static final Range PANEL = new Range(10, 300, "finished width of the strip along the side");

    static final Range GUSSET = new Range(20, 400, "finished length or width of the diamond");

    /** A key is smaller, a shin pad larger than what is sewn onto a legging (common practice). */
    static final Range POCKET = new Range(30, 400, "width or height of the pocket or its pad");

    /** Gel pads are about 5 mm, foam about 13 (makers-troubles 5.3); 60 mm is a cushion. */
    static final Range PAD_THICKNESS = new Range(0, 60, "thickness of what is worn in the pocket");

    /** Four-thread overlock: its own bite, about 7 mm (trade values 4.3, seen in a thread maker's leaflet). */
    static final double ALLOWANCE_OVERLOCKED = 7;

    /** Zigzag or other seams: room for the stitch and the hand (common practice, no source). */
    static final double ALLOWANCE_OTHERWISE = 10;

    /** Finished waistband where none is given: the lower end of a middle band (common practice, no source). */
    static final double USUAL_BAND = 60;
}
