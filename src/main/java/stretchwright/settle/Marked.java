package stretchwright.settle;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stretchwright.balance.Balance;
import stretchwright.balance.Girths;
import stretchwright.balance.Pose;
import stretchwright.balance.Ring;
import stretchwright.balance.Settled;
import stretchwright.balance.Tube;
import stretchwright.fabric.Fabric;
import stretchwright.ground.MonotoneCubic;

/** What each mark on a garment would read in a squat, by a guess. */
final class Marked {
    private final HalfGarment half;
    private final Guess guess;
    private final Tube tube;
    private final Pose squat;
    private final Settled settled;

    private Marked(HalfGarment half, Guess guess) {
        this.half = half;
        this.guess = guess;
        tube = half.tube(guess, half.top());
        squat = half.moved(tube, guess, guess.bend());
        settled =
                Balance.slides(tube, List.of(half.standing(tube, guess), squat)).get(1);
    }

    /** @param bandPull N/m on each layer of the band on rods */
    static Map<Mark, Double> of(HalfGarment half, Guess guess, Fabric fabric, double bandPull) {
        Marked at = new Marked(half, guess);
        Map<Mark, Double> out = new EnumMap<>(Mark.class);
        out.put(Mark.BACK_RISE, at.backRise());
        out.put(Mark.KNEE_ALONG, at.frontAlong(half.knee()));
        out.put(Mark.KNEE_ACROSS, at.across(half.knee()));
        out.put(Mark.BACK_EDGE, at.settled.waist().back());
        out.put(Mark.THIGH_ALONG, at.frontAlong(half.midThigh()));
        out.put(Mark.BAND, fabric.test().loadAcross().extension(bandPull / guess.across()));
        out.put(Mark.HEM_RISE, -at.settled.hem().side());
        return out;
    }

    /** Of the line beside the centre back seam, from the waist edge to the crotch point. */
    private double backRise() {
        List<Ring> rings = rings();
        double ratio =
                squat.skinBack().get(0) / (rings.get(1).place() - rings.get(0).place());
        double body =
                squat.riseBack() - settled.passed() - ratio * settled.back().get(0);
        return body / tube.rise().orElseThrow().sewnBack() - 1;
    }

    private List<Ring> rings() {
        return java.util.stream.Stream.concat(tube.trunk().stream(), tube.leg().stream())
                .toList();
    }

    private int above(double place) {
        List<Ring> rings = rings();
        int k = tube.trunk().size();
        while (k < rings.size() - 2 && rings.get(k + 1).place() < place) {
            k++;
        }
        return k;
    }

    private double frontAlong(double place) {
        int k = above(place);
        double skin = squat.skinFront().get(k)
                + ratio(k + 1) * settled.front().get(k + 1)
                - ratio(k) * settled.front().get(k);
        return skin / tube.restFront().get(k) - 1;
    }

    /** Skin in the pose over standing skin at a ring of the leg, mean of front and back. */
    private double ratio(int ring) {
        List<Ring> rings = rings();
        int from = ring - 1;
        int to = Math.min(rings.size() - 1, ring + 1);
        double posed = 0;
        for (int k = from; k < to; k++) {
            posed += (squat.skinFront().get(k) + squat.skinBack().get(k)) / 2;
        }
        return posed / (rings.get(to).place() - rings.get(from).place());
    }

    private double across(double place) {
        Girths girths = tube.legGirths();
        MonotoneCubic curve = new MonotoneCubic(girths.places(), girths.girths());
        List<Ring> rings = rings();
        int k = above(place);
        if (k + 1 < rings.size()
                && rings.get(k + 1).place() - place < place - rings.get(k).place()) {
            k++;
        }
        Ring ring = rings.get(k);
        double girth = curve.value(ring.place())
                + curve.slope(ring.place()) * settled.front().get(k);
        return girth * (1 + squat.growth().get(k)) / ring.restWidth() - 1;
    }
}
