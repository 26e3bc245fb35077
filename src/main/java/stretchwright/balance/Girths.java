package stretchwright.balance;

import java.util.List;
import stretchwright.ground.MonotoneCubic;

/**
 * Girth of what one half of the garment goes round, smooth over the place: half the trunk, or one leg.
 *
 * @param places mm below the waist along the skin of the standing body, rising
 * @param girths mm
 * @param levelFrom from here to levelTo the slope counts as none: where trunk turns into leg there is no cone to slide on
 */
public record Girths(List<Double> places, List<Double> girths, double levelFrom, double levelTo) {
    public Girths {
        places = List.copyOf(places);
        girths = List.copyOf(girths);
        Need.size("girths", girths, places.size());
        if (places.size() < 2) {
            throw new IllegalArgumentException("girths need two places at least: " + places);
        }
        Need.rising("places", places);
        girths.forEach(g -> Need.positive("girth", g));
        Need.finite("level from", levelFrom);
        Need.finite("level to", levelTo);
    }

    public static Girths of(List<Double> places, List<Double> girths) {
        return new Girths(places, girths, 0, 0);
    }

    MonotoneCubic curve() {
        return new MonotoneCubic(places, girths);
    }

    boolean isLevel(double place) {
        return place > levelFrom && place < levelTo;
    }
}
