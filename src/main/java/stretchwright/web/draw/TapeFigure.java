package stretchwright.web.draw;

import stretchwright.body.Body;
import stretchwright.body.GirthProfile;
import stretchwright.body.Measure;
import stretchwright.ground.Point;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;

/**
 * Where the tape goes: one drawing for every measure, on a body as its numbers make it. Two forms and not one that is
 * scaled: letters and lines keep their px, and the narrow one comes close to the place, so that a phone shows it as large
 * as a desk does.
 */
public final class TapeFigure {
    /** px at which it is shown. */
    public enum Size {
        WIDE(560, 720),
        NARROW(390, 330);

        private final double width;
        private final double height;

        Size(double width, double height) {
            this.width = width;
            this.height = height;
        }
    }

    private final Measure measure;
    private final Body body;
    private final Size size;
    private final Voice voice;

    private TapeFigure(Measure measure, Body body, Size size, Voice voice) {
        this.measure = measure;
        this.body = body;
        this.size = size;
        this.voice = voice;
    }

    public static Drawing of(Measure measure, Body body, Size size, Voice voice) {
        TapeFigure figure = new TapeFigure(measure, body, size, voice);
        return new Drawing(
                voice.say(Tell.said("tape.title", measure.said())),
                voice.say(described(measure)),
                size.width,
                size.height,
                figure.inside());
    }

    private static Said described(Measure measure) {
        return switch (measure) {
            case STATURE -> Tell.said("tape.stature");
            case WAIST_GIRTH -> Tell.said("tape.waist-girth");
            case HIP_GIRTH -> Tell.said("tape.hip-girth");
            case THIGH_GIRTH -> Tell.said("tape.thigh-girth");
            case MID_THIGH_GIRTH -> Tell.said("tape.mid-thigh-girth");
            case KNEE_GIRTH -> Tell.said("tape.knee-girth");
            case CALF_GIRTH -> Tell.said("tape.calf-girth");
            case ANKLE_GIRTH -> Tell.said("tape.ankle-girth");
            case WAIST_HEIGHT -> Tell.said("tape.waist-height");
            case HIP_HEIGHT -> Tell.said("tape.hip-height");
            case CROTCH_HEIGHT -> Tell.said("tape.crotch-height");
            case KNEE_HEIGHT -> Tell.said("tape.knee-height");
            case CALF_HEIGHT -> Tell.said("tape.calf-height");
            case ANKLE_HEIGHT -> Tell.said("tape.ankle-height");
            case ANKLE_BONE_HEIGHT -> Tell.said("tape.ankle-bone-height");
            case TOTAL_CROTCH_LENGTH -> Tell.said("tape.total-crotch-length");
            case BACK_CROTCH_LENGTH -> Tell.said("tape.back-crotch-length");
            case HEEL_GIRTH -> Tell.said("tape.heel-girth");
            case FOOT_LENGTH -> Tell.said("tape.foot-length");
        };
    }

    /** The part of a figure that is shown, mm above the floor. */
    record Window(double low, double high, double width, double height) {
        private static final double EDGE = 16;

        /** A pen for it with the point of that x in the middle, no larger than what is so wide can be shown. */
        Pen pen(double middle, double wide) {
            return pen(middle, wide, 0);
        }

        /** The same so many px further to the left, for words on the right. */
        Pen pen(double middle, double wide, double aside) {
            double scale = Math.min((height - 2 * EDGE) / (high - low), (width - 2 * EDGE) / wide);
            double spare = height - 2 * EDGE - scale * (high - low);
            return new Pen(
                    new Point(width / 2 - aside - scale * middle, height - EDGE - spare / 2 + scale * low), scale);
        }
    }

    private String inside() {
        Window window = window();
        return switch (measure) {
            case STATURE -> TapeLengths.stature(body, window, voice);
            case TOTAL_CROTCH_LENGTH -> TapeLengths.crotch(body, window, voice, true);
            case BACK_CROTCH_LENGTH -> TapeLengths.crotch(body, window, voice, false);
            case HEEL_GIRTH -> TapeLengths.heel(body, window);
            case FOOT_LENGTH -> TapeLengths.foot(body, window, voice);
            case ANKLE_BONE_HEIGHT -> TapeHeights.bone(body, window, voice);
            case CROTCH_HEIGHT -> TapeHeights.innerLeg(body, window, voice);
            case WAIST_HEIGHT, HIP_HEIGHT, KNEE_HEIGHT, CALF_HEIGHT, ANKLE_HEIGHT ->
                TapeHeights.beside(measure, body, window, voice);
            case WAIST_GIRTH, HIP_GIRTH, THIGH_GIRTH, MID_THIGH_GIRTH, KNEE_GIRTH, CALF_GIRTH, ANKLE_GIRTH ->
                TapeGirths.of(measure, body, window, voice);
        };
    }

    private Window window(double low, double high) {
        return new Window(low, high, size.width, size.height);
    }

    private Window window() {
        double top = body.mm(Measure.WAIST_HEIGHT) + 0.055 * body.mm(Measure.STATURE);
        double crotch = body.mm(Measure.CROTCH_HEIGHT);
        double knee = body.mm(Measure.KNEE_HEIGHT);
        double calf = body.mm(Measure.CALF_HEIGHT);
        double floor = -0.02 * crotch;
        boolean near = size == Size.NARROW;
        return switch (measure) {
            case STATURE -> window(floor, 1.03 * body.mm(Measure.STATURE));
            case WAIST_GIRTH -> window(near ? crotch - 0.04 * top : floor, top);
            case HIP_GIRTH -> window(near ? GirthProfile.furrow(body) - 0.10 * crotch : floor, top);
            case TOTAL_CROTCH_LENGTH, BACK_CROTCH_LENGTH -> window(near ? crotch - 0.16 * crotch : floor, top);
            case THIGH_GIRTH -> window(near ? (crotch + knee) / 2 : floor, near ? 1.18 * crotch : top);
            case MID_THIGH_GIRTH -> window(near ? 0.88 * knee : floor, near ? 1.06 * crotch : top);
            case KNEE_GIRTH -> window(near ? calf : floor, near ? (crotch + knee) / 2 : crotch * 0.96);
            case CALF_GIRTH -> window(near ? 0.45 * calf : floor, near ? 1.12 * knee : crotch * 0.8);
            case ANKLE_GIRTH -> window(floor, near ? 0.8 * calf : 1.2 * knee);
            case WAIST_HEIGHT, HIP_HEIGHT, CROTCH_HEIGHT -> window(floor, top);
            case KNEE_HEIGHT -> window(floor, near ? 1.3 * knee : 0.96 * crotch);
            case CALF_HEIGHT -> window(floor, near ? 1.08 * knee : 1.3 * knee);
            case ANKLE_HEIGHT, ANKLE_BONE_HEIGHT -> window(floor, near ? 0.75 * calf : 1.2 * calf);
            case HEEL_GIRTH -> window(-0.17 * crotch, near ? 0.7 * calf : 1.1 * calf);
            case FOOT_LENGTH -> window(-0.06 * crotch, near ? 0.6 * calf : 1.1 * calf);
        };
    }
}
