package stretchwright.balance;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Where a garment settles on the body, pose after pose. */
public final class Balance {
    /** An end of the tube that is kept at a slide; empty where it is free. */
    record Hold(OptionalDouble waist, OptionalDouble hem) {
        static final Hold NONE = new Hold(OptionalDouble.empty(), OptionalDouble.empty());
        static final Hold PLACED = new Hold(OptionalDouble.of(0), OptionalDouble.of(0));

        static Hold waist(double slide) {
            return new Hold(OptionalDouble.of(slide), OptionalDouble.empty());
        }

        static Hold hem(double slide) {
            return new Hold(OptionalDouble.empty(), OptionalDouble.of(slide));
        }
    }

    /** Where a tube stands and on what of it friction hangs; empty arrays before the first pose. */
    record State(double[] slides, double[] anchors) {
        static State placed(int unknowns) {
            return new State(new double[unknowns], new double[unknowns]);
        }
    }

    /** A garment goes through the same poses again and again. */
    private record Placed(Placing placing, Net net) {
        static Placed of(Tube tube, Pose pose) {
            Placing placing = new Placing(tube, pose);
            return new Placed(placing, placing.net());
        }
    }

    private Balance() {}

    /** In one pose, from where it was placed. */
    public static Settled settle(Tube tube, Pose pose) {
        return through(tube, List.of(pose)).get(0);
    }

    /** In one pose after the other; each starts from where the one before left the cloth. */
    public static List<Settled> through(Tube tube, List<Pose> poses) {
        return through(tube, poses, true, List.of());
    }

    /** The same without what pulls at the edges, which is told as 0: half the work. */
    public static List<Settled> slides(Tube tube, List<Pose> poses) {
        return through(tube, poses, false, List.of());
    }

    /**
     * The same, sought from where a like tube settled in these poses: sooner found, and no other answer.
     *
     * @param near of a tube of as many rings, pose by pose
     */
    public static List<Settled> slides(Tube tube, List<Pose> poses, List<Settled> near) {
        return through(tube, poses, false, near);
    }

    private static List<Settled> through(Tube tube, List<Pose> poses, boolean pulls, List<Settled> near) {
        if (poses.isEmpty()) {
            throw new IllegalArgumentException("a balance needs a pose");
        }
        List<Settled> all = new ArrayList<>();
        Map<Pose, Placed> places = new IdentityHashMap<>();
        int unknowns =
                places.computeIfAbsent(poses.get(0), p -> Placed.of(tube, p)).net().unknowns;
        State free = State.placed(unknowns);
        State kept = State.placed(unknowns);
        for (Pose pose : poses) {
            Placed placed = places.computeIfAbsent(pose, p -> Placed.of(tube, p));
            Placing placing = placed.placing();
            Net net = placed.net();
            State from = near.isEmpty() ? free : new State(placing.slides(near.get(all.size())), free.anchors());
            Settling settled = run(tube, placing, net, from, Hold.NONE, Settling.GIVE);
            Settling held = pulls ? run(tube, placing, net, kept, Hold.PLACED, Settling.GIVE) : settled;
            free = new State(settled.slides(), settled.anchors());
            kept = new State(held.slides(), held.anchors());
            all.add(Told.of(tube, placing, settled, held));
        }
        return List.copyOf(all);
    }

    /** One pose with ends held, from a state before, and with friction of another give. */
    static Settling run(Tube tube, Placing placing, Net net, State before, Hold hold, double give) {
        boolean[] held = new boolean[net.unknowns];
        double[] slides = before.slides().clone();
        int last = tube.rings().size() - 1;
        for (int side = 0; side < 2; side++) {
            keep(hold.waist(), placing.unknown(0, side), held, slides);
            keep(hold.hem(), placing.unknown(last, side), held, slides);
        }
        List<Ring> rings = tube.rings();
        double length = rings.get(last).place() - rings.get(0).place();
        return new Settling(net, give, slides, before.anchors(), held).settle(length);
    }

    private static void keep(OptionalDouble slide, int unknown, boolean[] held, double[] slides) {
        if (slide.isPresent()) {
            held[unknown] = true;
            slides[unknown] = slide.getAsDouble();
        }
    }
}
