package stretchwright.intake;

import stretchwright.body.Measure;

/** What the table tells of each measure: what it usually is, an example, everyday words. */
final class Measures {
    private Measures() {}

    /** The tallest person on record stood 2720 mm (from memory); nothing on a leg is under 10 mm. */
    private static LengthKind between(double from, double to) {
        return Row.lengthKind(10, 2750, "why.measurement", from, to);
    }

    /** From a child of three to a large adult, with room (common practice, no source): they ask, and refuse nothing. */
    static LengthKind kind(Measure measure) {
        return switch (measure) {
            case STATURE -> between(800, 2200);
            case WAIST_GIRTH -> between(400, 1700);
            case HIP_GIRTH -> between(430, 1800);
            case THIGH_GIRTH -> between(240, 1000);
            case MID_THIGH_GIRTH -> between(210, 850);
            case KNEE_GIRTH -> between(170, 650);
            case CALF_GIRTH -> between(150, 650);
            case ANKLE_GIRTH -> between(100, 400);
            case WAIST_HEIGHT -> between(450, 1400);
            case HIP_HEIGHT -> between(350, 1200);
            case CROTCH_HEIGHT -> between(280, 1100);
            case KNEE_HEIGHT -> between(180, 700);
            case CALF_HEIGHT -> between(120, 520);
            case ANKLE_HEIGHT -> between(40, 220);
            case ANKLE_BONE_HEIGHT -> between(30, 130);
            case TOTAL_CROTCH_LENGTH -> between(320, 1300);
            case BACK_CROTCH_LENGTH -> between(160, 750);
            case HEEL_GIRTH -> between(150, 500);
            case FOOT_LENGTH -> between(110, 350);
        };
    }

    /** Of one invented wearer, the one of examples/evening-practice.yaml. */
    static String example(Measure measure) {
        return switch (measure) {
            case STATURE -> "{1627}";
            case WAIST_GIRTH -> "{742}";
            case HIP_GIRTH -> "{961}";
            case THIGH_GIRTH -> "{570}";
            case MID_THIGH_GIRTH -> "{480}";
            case KNEE_GIRTH -> "{365}";
            case CALF_GIRTH -> "{350}";
            case ANKLE_GIRTH -> "{215}";
            case WAIST_HEIGHT -> "{1030}";
            case HIP_HEIGHT -> "{830}";
            case CROTCH_HEIGHT -> "{772}";
            case KNEE_HEIGHT -> "{460}";
            case CALF_HEIGHT -> "{330}";
            case ANKLE_HEIGHT -> "{100}";
            case ANKLE_BONE_HEIGHT -> "{65}";
            case TOTAL_CROTCH_LENGTH -> "{700}";
            case BACK_CROTCH_LENGTH -> "{380}";
            case HEEL_GIRTH -> "{305}";
            case FOOT_LENGTH -> "{240}";
        };
    }

    static String[] everyday(Measure measure) {
        return switch (measure) {
            case STATURE -> new String[] {"height", "body height"};
            case WAIST_GIRTH -> new String[] {"waist", "waist circumference"};
            case HIP_GIRTH -> new String[] {"hips", "hip", "seat", "hip circumference"};
            case THIGH_GIRTH -> new String[] {"thigh", "upper thigh", "thigh circumference"};
            case MID_THIGH_GIRTH -> new String[] {"mid-thigh", "mid thigh", "mid thigh girth"};
            case KNEE_GIRTH -> new String[] {"knee", "knee circumference"};
            case CALF_GIRTH -> new String[] {"calf", "calf circumference"};
            case ANKLE_GIRTH -> new String[] {"ankle", "ankle circumference"};
            case CROTCH_HEIGHT -> new String[] {"inseam", "inside leg", "inner leg", "inseam length"};
            case TOTAL_CROTCH_LENGTH -> new String[] {"crotch length", "total crotch"};
            case BACK_CROTCH_LENGTH -> new String[] {"back crotch"};
            case HEEL_GIRTH -> new String[] {"heel", "heel circumference"};
            case FOOT_LENGTH -> new String[] {"foot"};
            case WAIST_HEIGHT -> new String[] {"outside leg", "outseam"};
            case HIP_HEIGHT, KNEE_HEIGHT, CALF_HEIGHT, ANKLE_HEIGHT, ANKLE_BONE_HEIGHT -> new String[] {};
        };
    }
}
