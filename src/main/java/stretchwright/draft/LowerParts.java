package stretchwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.pattern.Level;
import stretchwright.pattern.Notion;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;
import stretchwright.pattern.WhichLeg;

/** What is added below the legs beside cuffs: boot covers, straps, what must be bought for them, and why. */
record LowerParts(Order order, List<Piece> pieces, List<Notion> notions, List<Reason> reasons) {

    static LowerParts of(Order order, List<Leg> legs, List<Piece> legPieces, List<Piece> soFar) {
        List<Piece> pieces = new ArrayList<>();
        List<Notion> notions = new ArrayList<>();
        List<Reason> reasons = new ArrayList<>();
        if (Cover.wanted(order.style())) {
            pieces.addAll(Cover.pieces(order, legPieces));
            pieces.forEach(cover -> {
                notions.add(Cover.elastic(cover));
                PieceName leg = cover.name().leg() == WhichLeg.BOTH
                        ? legPieces.get(0).name()
                        : cover.name().with(PieceKind.LEG);
                reasons.addAll(Cover.reasons(order, cover, leg));
            });
        }
        Strap.ofCloth(order).ifPresent(strap -> {
            pieces.add(strap.drawn());
            reasons.addAll(strap.reasons());
        });
        Piece end = soFar.stream()
                .filter(p -> p.name().is(PieceKind.CUFF))
                .findFirst()
                .orElse(legPieces.get(0));
        Strap.elastic(order, end).ifPresent(strap -> {
            notions.add(strap.drawn());
            reasons.addAll(strap.reasons());
        });
        for (int i = 0; i < legs.size(); i++) {
            reasons.addAll(legs.get(i).line().hemReasons(legs.get(i).order(), legPieces.get(i)));
        }
        return new LowerParts(order, pieces, notions, reasons);
    }

    /** The finished hem of a covered boot; other legs carry their own. */
    Optional<Level> hem(int leg, WhichLeg which) {
        if (!Cover.wanted(order.style())) {
            return Optional.empty();
        }
        Piece cover = pieces.get(Math.min(leg, pieces.size() - 1));
        return Optional.of(Cover.level(order, cover, which));
    }
}
