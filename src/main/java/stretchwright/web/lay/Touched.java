package stretchwright.web.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import stretchwright.ground.Said;
import stretchwright.lay.Lay;
import stretchwright.lay.Placed;
import stretchwright.workroom.jobs.PlacedText;

/**
 * What a maker did to a lay by hand and has not kept: it goes from page to page with the form, and is nowhere else.
 *
 * @param cloth its number among the make's lays, from 0
 * @param placed where the pieces were put; empty where none was moved
 * @param pinned which ones the search is to leave where they are
 * @param picked the one that is held; may be none
 */
public record Touched(int cloth, Optional<Placed> placed, Set<String> pinned, String picked) {
    /** More pieces than one garment has. */
    private static final int MOST = 300;

    /** So far a piece may lie beside the cloth, or be moved at once, mm. */
    private static final double FAR = 3000;

    private static final String NUMBER = "-?[0-9]{1,5}(\\.[0-9]{1,3})?";

    public Touched {
        pinned = Set.copyOf(pinned);
    }

    /** Why something sent cannot be done. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient Said why;

        Refused(String key) {
            this.why = Tell.said(key);
        }

        Said why() {
            return why;
        }
    }

    /** How a piece is turned by half a turn where it lies. */
    interface Turning {
        /** @throws Refused where the cloth does not let it */
        Placed.Spot turned(Placed.Spot spot);
    }

    static Touched none(int cloth, String picked) {
        return new Touched(cloth, Optional.empty(), Set.of(), picked);
    }

    /**
     * As the form has it.
     *
     * @param standing the lay on that cloth, as it is kept
     */
    static Touched of(Map<String, List<String>> form, int cloth, Lay standing) {
        Placed stands = Placed.of(standing);
        Optional<Placed> placed = one(form, "placed").map(Touched::read);
        Set<String> pinned = new LinkedHashSet<>(form.getOrDefault("pinned", List.of()));
        String picked = one(form, "piece").orElse("");
        if (placed.filter(p -> !ofSamePieces(p, stands)).isPresent()) {
            throw new Refused("lay.other-pieces");
        }
        Placed now = placed.orElse(stands);
        Set<String> named = new LinkedHashSet<>(pinned);
        if (!picked.isEmpty()) {
            named.add(picked);
        }
        if (!now.strangers(named).isEmpty()) {
            throw new Refused("lay.no-piece");
        }
        return new Touched(cloth, placed, pinned, picked);
    }

    /** A hand moves and turns the pieces of the lay that stands, no more. */
    private static boolean ofSamePieces(Placed one, Placed other) {
        return one.method() == other.method()
                && one.doubled() == other.doubled()
                && cuttings(one).equals(cuttings(other));
    }

    /** Each as if it lay at the corner. */
    private static List<Placed.Spot> cuttings(Placed placed) {
        return placed.spots().stream()
                .map(s -> s.at(0, 0, 0))
                .sorted(Comparator.comparing(Placed.Spot::id))
                .toList();
    }

    private static Optional<String> one(Map<String, List<String>> form, String key) {
        return form.getOrDefault(key, List.of()).stream()
                .filter(v -> !v.isBlank())
                .findFirst();
    }

    private static Placed read(String text) {
        try {
            Placed placed = PlacedText.read(text);
            boolean near = placed.spots().size() <= MOST
                    && Math.abs(placed.doubled()) < 1e4
                    && placed.spots().stream().allMatch(Touched::near);
            if (near) {
                return placed.byHand(true);
            }
        } catch (IllegalArgumentException e) {
            throw new Refused("lay.not-read");
        }
        throw new Refused("lay.too-far");
    }

    private static boolean near(Placed.Spot s) {
        return Math.abs(s.x()) < 1e4 && Math.abs(s.y()) < 1e5 && Math.abs(s.rotation()) <= 360;
    }

    /** As text for the form; empty where nothing was moved. */
    public String placedText() {
        return placed.map(p -> PlacedText.text(p).replaceAll("\\n\\s*", "")).orElse("");
    }

    public boolean touched() {
        return placed.isPresent() || !pinned.isEmpty();
    }

    /** What a button or a key asks of the piece that is held. */
    Touched done(String what, Map<String, List<String>> form, Lay standing, Turning turning) {
        if (picked.isEmpty()) {
            throw new Refused("lay.pick-first");
        }
        double by = one(form, "by").map(Touched::millimetres).orElse(1.0);
        return switch (what) {
            case "left" -> moved(standing, -by, 0);
            case "right" -> moved(standing, by, 0);
            case "far" -> moved(standing, 0, by);
            case "near" -> moved(standing, 0, -by);
            case "move" ->
                moved(
                        standing,
                        one(form, "dx").map(Touched::millimetres).orElse(0.0),
                        one(form, "dy").map(Touched::millimetres).orElse(0.0));
            case "turn" -> with(standing, turning::turned);
            case "pin" -> pinned(true);
            case "unpin" -> pinned(false);
            case "back" -> back(standing);
            default -> throw new Refused("lay.not-read");
        };
    }

    private static double millimetres(String text) {
        if (!text.matches(NUMBER)) {
            throw new Refused("lay.not-read");
        }
        double mm = Double.parseDouble(text);
        if (Math.abs(mm) > FAR) {
            throw new Refused("lay.too-far");
        }
        return mm;
    }

    private Touched moved(Lay standing, double dx, double dy) {
        return with(standing, s -> s.at(s.x() + dx, s.y() + dy, s.rotation()));
    }

    private Touched back(Lay standing) {
        Placed.Spot was = spot(Placed.of(standing));
        Touched there = with(standing, s -> was);
        boolean none =
                there.placed.orElseThrow().spots().equals(Placed.of(standing).spots());
        return new Touched(cloth, none ? Optional.empty() : there.placed, pinned, picked);
    }

    private Placed.Spot spot(Placed in) {
        return in.spots().stream()
                .filter(s -> s.id().equals(picked))
                .findFirst()
                .orElseThrow();
    }

    private Touched with(Lay standing, UnaryOperator<Placed.Spot> change) {
        Placed now = placed.orElseGet(() -> Placed.of(standing));
        List<Placed.Spot> spots = new ArrayList<>();
        for (Placed.Spot s : now.spots()) {
            spots.add(s.id().equals(picked) ? change.apply(s) : s);
        }
        Placed.Spot there =
                spots.stream().filter(s -> s.id().equals(picked)).findFirst().orElseThrow();
        boolean near = Math.abs(there.x()) < standing.fabricWidth() + FAR
                && Math.abs(there.y()) < standing.spreadLength() + FAR;
        if (!near) {
            throw new Refused("lay.too-far");
        }
        return new Touched(cloth, Optional.of(now.put(spots)), pinned, picked);
    }

    private Touched pinned(boolean pin) {
        Set<String> all = pinned.stream().filter(p -> !p.equals(picked)).collect(Collectors.toSet());
        if (pin) {
            all.add(picked);
        }
        return new Touched(cloth, placed, all, picked);
    }
}
