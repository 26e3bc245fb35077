package stretchwright.settle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stretchwright.balance.Balance;
import stretchwright.balance.Motion;
import stretchwright.balance.Pose;
import stretchwright.balance.Settled;
import stretchwright.balance.Tube;
import stretchwright.body.Body;
import stretchwright.boot.Boot;
import stretchwright.fabric.Fabric;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;

/**
 * Where the edges of a garment come to lie on its wearer, mm below the places that were asked for, and what pulls and grips
 * there, N of the whole garment.
 *
 * @param waist of the waist edge, standing, mean of front and back
 * @param backStanding of its centre back
 * @param back of its centre back in a deep bend
 * @param backAfter of its centre back, standing again after ten deep bends
 * @param backSpin of its centre back in a sit spin
 * @param hemUp how far the hem rises, standing or in a deep bend
 * @param pull grip that would hold the waist edge at its place in a deep bend
 * @param settled whether every pose found its balance
 */
public record Settles(
        double waist,
        double backStanding,
        double back,
        double backAfter,
        double backSpin,
        double hemUp,
        double pullStanding,
        double pull,
        double grip,
        double hemPull,
        double hemGrip,
        boolean settled) {
    /** How often the body goes into a deep bend and up again. */
    private static final int BENDS = 10;

    /** All of it by the middle guess. */
    public static Settles of(Pattern pattern, Body body, Fabric fabric, Optional<Boot> boot, Style style) {
        return of(new HalfGarment(pattern, body, fabric, boot, style, HalfGarment.APART));
    }

    static Settles of(HalfGarment half) {
        return of(half, half.guess(), BENDS);
    }

    /** With any top, standing and in one deep bend: pulls are told as 0, standing again and the sit spin as in the bend. */
    static Settles slides(HalfGarment half, Guess guess, TopTrial top) {
        return of(states(half, guess, top, List.of()));
    }

    /** Standing and in one deep bend; sought near others of the same garment, if there are some. */
    static List<Settled> states(HalfGarment half, Guess guess, TopTrial top, List<Settled> near) {
        Tube tube = half.tube(guess, top);
        return Balance.slides(tube, List.of(half.standing(tube, guess), half.moved(tube, guess, guess.bend())), near);
    }

    static Settles of(List<Settled> all) {
        Settled first = all.get(0);
        Settled squat = all.get(1);
        double back = squat.waist().back();
        return new Settles(
                first.waist().side(),
                first.waist().back(),
                back,
                back,
                back,
                most(all, s -> -s.hem().side()),
                0,
                0,
                2 * first.waist().grip(),
                0,
                first.hem().grip(),
                all.stream().allMatch(Settled::isSettled));
    }

    /** @param bends deep bends before the last standing pose */
    static Settles of(HalfGarment half, Guess guess, int bends) {
        Tube tube = half.tube(guess, half.top());
        Pose standing = half.standing(tube, guess);
        Pose bent = half.moved(tube, guess, guess.bend());
        List<Pose> poses = new ArrayList<>(List.of(standing));
        for (int i = 0; i < bends; i++) {
            poses.add(bent);
            poses.add(standing);
        }
        poses.add(half.moved(tube, guess, Motion.SIT_SPIN));
        List<Settled> pulled = Balance.through(tube, List.of(standing, bent));
        List<Settled> all = Balance.slides(tube, poses);
        Settled first = pulled.get(0);
        Settled squat = pulled.get(1);
        Settled after = all.get(2 * bends);
        Settled spin = all.get(all.size() - 1);
        return new Settles(
                first.waist().side(),
                first.waist().back(),
                squat.waist().back(),
                after.waist().back(),
                spin.waist().back(),
                most(pulled, s -> -s.hem().side()),
                2 * first.waist().pull(),
                2 * squat.waist().pull(),
                2 * first.waist().grip(),
                most(pulled, s -> -s.hem().pull()),
                first.hem().grip(),
                all.stream().allMatch(Settled::isSettled));
    }

    private static double most(List<Settled> all, ToDoubleFunction<Settled> what) {
        return all.stream().mapToDouble(what).max().orElseThrow();
    }

    Settles withHemOf(Settles other) {
        return new Settles(
                waist,
                backStanding,
                back,
                backAfter,
                backSpin,
                other.hemUp,
                pullStanding,
                pull,
                grip,
                other.hemPull,
                other.hemGrip,
                settled && other.settled);
    }
}
