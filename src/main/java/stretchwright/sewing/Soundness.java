package stretchwright.sewing;

import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Seam;

/** Whether a pattern can be sewn at all: every seam has a length and its edges exist, every piece is in a seam. */
final class Soundness {
    private Soundness() {}

    static void check(Pattern pattern) {
        Findings findings = new Findings("pattern");
        if (pattern.seams().isEmpty()) {
            findings.add("seams", Tell.said("wrong.no-seam"), Tell.said("right.no-seam"));
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
                        Tell.said("wrong.piece-in-no-seam"),
                        Tell.said("right.piece-in-no-seam"));
            }
        }
        findings.throwIfAny();
    }

    private static void check(Pattern pattern, Seam seam, Seam.Side side, Findings findings) {
        String key = "seams." + seam.name();
        if (!(side.length() > 0 && Double.isFinite(side.length()))) {
            findings.add(
                    key,
                    Tell.said("wrong.no-length", Joined.of(side).said(), Part.length(side.length())),
                    Tell.said("right.no-length", Part.length(0)));
        }
        boolean there = pattern.pieces().stream()
                .filter(p -> p.name().equals(side.piece()))
                .flatMap(p -> p.edges().stream())
                .anyMatch(e -> e.name().equals(side.edge()));
        if (!there) {
            findings.add(key, Tell.said("wrong.no-such-edge", Joined.of(side).said()), Tell.said("right.no-such-edge"));
        }
    }
}
