package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import stretchwright.ground.Path;
import stretchwright.ground.Point;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.LowerEnd.Hem;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;

/** The cover of a boot: as wide and as high as what it goes round. */
class BootCoverTest extends HemStyles {
    /** By hand: sole 2 (270 - 95) + pi 95 = 648.45 round; less 10.71 % and halved 289.5; 80 - 25 + 135 - 8 = 182 high. */
    @Test
    void aCoverGoesHalfWayRoundTheSoleAndUpToTheLeg() {
        Pattern pattern = small(style(Hem.WHOLE_BOOT));
        Piece cover = pattern.piece(PieceName.of(PieceKind.BOOT_COVER));
        assertThat(cover.cut()).isEqualTo(4);
        assertThat(cover.edge(EdgeName.LOWER_EDGE).length()).isCloseTo(648.45 / 2 / 1.12, within(0.05));
        double flat = 1 - pattern.reductions().along();
        assertThat(cover.edge(EdgeName.BACK_EDGE).length()).isCloseTo(182 * flat, within(0.02));
        assertThat(cover.edge(EdgeName.UPPER_EDGE).length())
                .isCloseTo(
                        pattern.piece(PieceName.of(PieceKind.LEG))
                                        .edge(EdgeName.HEM)
                                        .length()
                                / 2,
                        within(0.02));
    }

    /** The way round heel and instep is that of the boot, where a smooth front can be brought to it, else the nearest. */
    @Test
    void theCoverIsAsWideRoundHeelAndInstepAsTheBoot() {
        Point collar = new Point(-134, 173);
        Point toe = new Point(-289, 0);
        for (double half : new double[] {185, 190, 200}) {
            assertThat(CoverFront.nearest(CoverFront.between(collar, toe, half), Point.ORIGIN))
                    .isCloseTo(half, within(0.01));
        }
        assertThat(CoverFront.nearest(CoverFront.between(collar, toe, 150), Point.ORIGIN))
                .isCloseTo(CoverFront.nearest(CoverFront.between(collar, toe, 160), Point.ORIGIN), within(0.01))
                .isGreaterThan(160);
    }

    /** The leg's front edge turns neither way twice, and each half is upright where it is joined. */
    @Test
    void theCoversFrontIsSmoothAndUprightAtBothEnds() {
        Path front = small(style(Hem.WHOLE_BOOT))
                .piece(PieceName.of(PieceKind.BOOT_COVER))
                .edge(EdgeName.FRONT_EDGE)
                .line();
        for (double along : new double[] {0, front.length()}) {
            assertThat(Math.abs(front.directionAt(along).x())).isLessThan(0.06);
        }
        for (int i = 1; i < front.points().size(); i++) {
            assertThat(front.points().get(i).y())
                    .isLessThan(front.points().get(i - 1).y());
            assertThat(front.points().get(i).x())
                    .isLessThanOrEqualTo(front.points().get(i - 1).x());
        }
    }
}
