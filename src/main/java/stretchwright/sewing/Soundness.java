package stretchwright.sewing;

import stretchwright.ground.Findings;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;

/** Whether a pattern can be sewn at all: every seam has a length and its edges exist, every piece is in a seam. */
final class Soundness {
    private Soundness() {}

    static void check(Pattern pattern) {
        Findings findings = new Findings("pattern");
        if (pattern.seams().isEmpty()) {
            findings.add("seams", "The pattern has no seam.", "Say which edges are sewn together.");
        }
        for (Seam seam : pattern.seams()) {
            seam.sides().forEach(side -> check(pattern, seam, side, findings));
        }
        for (Piece piece : pattern.pieces()) {
            boolean sewn = pattern.seams().stream()
                    .flatMap(s -> s.sides().stream())
                    .anyMatch(side -> side.piece().equals(piece.name()));
            if (!sewn) {
                findings.add(
                        "pieces." + piece.name(),
                        "The piece is in no seam.",
                        "Say what it is sewn to, or leave the piece out.");
            }
        }
        findings.throwIfAny();
    }

    private static void check(Pattern pattern, Seam seam, Seam.Side side, Findings findings) {
        String key = "seams." + seam.name();
        if (!(side.length() > 0 && Double.isFinite(side.length()))) {
            findings.add(
                    key,
                    "The side " + Words.place(side) + " is " + side.length() + " mm long.",
                    "A seam must be longer than 0 mm.");
        }
        boolean there = pattern.pieces().stream()
                .filter(p -> p.name().equals(side.piece()))
                .flatMap(p -> p.edges().stream())
                .anyMatch(e -> e.name().equals(side.edge()));
        if (!there) {
            findings.add(
                    key,
                    "The seam names " + Words.place(side) + ", which is not on the pattern.",
                    "Add the piece and the edge, or leave the seam out.");
        }
    }
}
