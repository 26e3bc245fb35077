package stretchwright.print.steps;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Phrases;
import stretchwright.sewing.Joined;
import stretchwright.sewing.SewingPlan.Operation;

/**
 * The pieces of one step with their edges lettered, and which letters meet.
 *
 * @param meets each a list of letters for one side of a seam and for the other
 */
record StepPanels(Operation operation, List<StepPanel> panels, List<Meeting> meets, Deed deed) {

    private static final Set<Seam.Role> RINGS =
            Set.of(Seam.Role.WAISTBAND_JOIN, Seam.Role.CUFF_JOIN, Seam.Role.COVER_JOIN);

    /** What is done to the edges. */
    enum Deed {
        /** Sewn to each other. */
        JOIN,
        /** Sewn to each other in an earlier step, now sewn over. */
        OVER,
        /** Turned and sewn down. */
        TURN,
        /** A band folded along its middle. */
        FOLD,
        /** Marked, nothing is sewn. */
        MARK
    }

    /** Which edges come onto which. */
    record Meeting(Seam.Role role, List<String> one, List<String> other) {
        String words() {
            return Phrases.of("picture.on", String.join(", ", one), String.join(", ", other));
        }
    }

    static StepPanels of(Job job, Operation operation) {
        Map<String, StepPanel> found = new LinkedHashMap<>();
        Map<Joined, List<String>> letters = new LinkedHashMap<>();
        char letter = 'A';
        for (Joined place : operation.joins()) {
            for (Piece piece : job.pattern().pieces()) {
                for (Edge edge : piece.edges()) {
                    if (place.equals(new Joined(piece.name(), edge.name()))) {
                        String named = String.valueOf(letter++);
                        letters.computeIfAbsent(place, p -> new ArrayList<>()).add(named);
                        add(found, piece, edge, named);
                    }
                }
            }
        }
        List<StepPanel> panels = new ArrayList<>(found.values());
        if (panels.size() == 2 && panels.get(1).mirrored() && panels.get(0).sewnOnLeft()) {
            Collections.reverse(panels);
        }
        return new StepPanels(operation, panels, meetings(job.pattern(), letters), deed(job, operation));
    }

    /** An edge named twice is that of the second piece of the pair, or the other half's of a piece on the fold. */
    private static void add(Map<String, StepPanel> found, Piece piece, Edge edge, String letter) {
        StepPanel first = found.getOrDefault(piece.name().word(), new StepPanel(piece, false, List.of()));
        if (!first.shows(edge) || piece.onFold()) {
            found.put(piece.name().word(), first.with(letter, edge));
            return;
        }
        String again = piece.name().word() + " again";
        found.put(
                again,
                found.getOrDefault(again, new StepPanel(piece, piece.mirrored(), List.of()))
                        .with(letter, edge));
    }

    private static Deed deed(Job job, Operation operation) {
        if (operation.stitch().isEmpty()) {
            return operation.joins().size() == 2 && samePiece(operation) ? Deed.FOLD : Deed.MARK;
        }
        if (operation.seam().startsWith("6.")) {
            return Deed.TURN;
        }
        boolean sewnBefore = job.sewing().operations().stream()
                .filter(o -> o.step() < operation.step())
                .filter(o -> o.stitch().isPresent() && !o.joins().isEmpty())
                .anyMatch(o -> operation.joins().containsAll(o.joins()));
        return sewnBefore ? Deed.OVER : Deed.JOIN;
    }

    private static boolean samePiece(Operation operation) {
        return operation.joins().stream().map(Joined::piece).distinct().count() == 1;
    }

    /** Seam by seam, as often as its edges are named. */
    private static List<Meeting> meetings(Pattern pattern, Map<Joined, List<String>> letters) {
        Map<Joined, List<String>> left = new LinkedHashMap<>();
        letters.forEach((place, named) -> left.put(place, new ArrayList<>(named)));
        List<Meeting> out = new ArrayList<>();
        boolean more = true;
        while (more) {
            more = false;
            for (Seam seam : pattern.seams()) {
                List<String> one = taken(pattern, seam, 0, left);
                List<String> other = one.isEmpty() ? List.of() : taken(pattern, seam, 1, left);
                if (!other.isEmpty()) {
                    out.add(new Meeting(seam.role(), one, other));
                    more = true;
                }
            }
        }
        out.sort((a, b) -> a.one().get(0).compareTo(b.one().get(0)));
        return out;
    }

    /** One letter for every place over which this side runs; none where it has no other side or a place is missing. */
    private static List<String> taken(Pattern pattern, Seam seam, int side, Map<Joined, List<String>> left) {
        if (seam.sides().size() < 2) {
            return List.of();
        }
        Seam.Side here = seam.sides().get(side);
        Joined exactly = new Joined(here.piece(), here.edge());
        // a ring meets the edge of all parts of a leg; elsewhere one part meets another
        List<Joined> places = left.containsKey(exactly) && !RINGS.contains(seam.role())
                ? List.of(exactly)
                : pattern.carrying(here).stream()
                        .map(p -> new Joined(p.name(), here.edge()))
                        .filter(left::containsKey)
                        .toList();
        if (places.isEmpty()
                || places.stream().anyMatch(p -> left.getOrDefault(p, List.of()).isEmpty())) {
            return List.of();
        }
        return places.stream()
                .map(p -> left.getOrDefault(p, new ArrayList<>()).remove(0))
                .toList();
    }

    /** The panel and its edge of that letter. */
    StepPanel panel(String letter) {
        return panels.stream()
                .filter(p -> p.sewn().stream().anyMatch(s -> s.letter().equals(letter)))
                .findFirst()
                .orElseThrow();
    }

    StepPanel.Sewn sewn(String letter) {
        return panel(letter).sewn().stream()
                .filter(s -> s.letter().equals(letter))
                .findFirst()
                .orElseThrow();
    }

    /** Names of the notches in the order met; one number each, wherever the same name stands. */
    List<String> notches() {
        return panels.stream()
                .flatMap(p -> p.sewn().stream())
                .flatMap(s -> s.ticks().stream())
                .map(StepPanel.Tick::name)
                .distinct()
                .toList();
    }
}
