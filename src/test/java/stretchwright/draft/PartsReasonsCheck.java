package stretchwright.draft;

import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.SoftAssertions;
import stretchwright.ground.Path;
import stretchwright.pattern.Dimension;
import stretchwright.pattern.Edge;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.PieceKind;
import stretchwright.pattern.PieceName;
import stretchwright.pattern.Reason;

/** The chains of reasons of the parts: each number is drawn, each chain can be followed. */
final class PartsReasonsCheck {
    private final SoftAssertions softly;
    private final String who;
    private final Pattern pattern;

    private PartsReasonsCheck(SoftAssertions softly, String who, Pattern pattern) {
        this.softly = softly;
        this.who = who;
        this.pattern = pattern;
    }

    static void check(SoftAssertions softly, String who, Pattern pattern) {
        new PartsReasonsCheck(softly, who, pattern).reasons();
    }

    /** Each reason's number is that of the drawn piece. */
    private void reasons() {
        List<Dimension> names =
                pattern.reasons().stream().map(Reason::dimension).toList();
        softly.assertThat(names).as(who).doesNotHaveDuplicates();
        for (Reason r : pattern.reasons()) {
            for (Reason.Input input : r.inputs()) {
                softly.assertThat(input.from() instanceof Reason.Origin || names.contains(input.from()))
                        .as(who + " " + r.dimension().word() + " <- " + input)
                        .isTrue();
            }
        }
        for (Reason r : pattern.reasons()) {
            double drawn = switch (r.dimension().word()) {
                case "side panel: width" ->
                    pattern.pieces().stream()
                            .filter(p -> p.name().is(PieceKind.SIDE_PANEL))
                            .findFirst()
                            .orElseThrow()
                            .edge(EdgeName.HEM)
                            .length();
                case "gusset: length" ->
                    pattern.piece(PieceName.of(PieceKind.GUSSET))
                            .sewLine()
                            .box()
                            .height();
                case "gusset: width" ->
                    pattern.piece(PieceName.of(PieceKind.GUSSET))
                            .sewLine()
                            .box()
                            .width();
                case "front leg: side take-in" -> {
                    Path side = PartsInvariants.with(pattern, EdgeName.FRONT_CROTCH)
                            .edge(EdgeName.SIDE_EDGE)
                            .line();
                    yield Math.abs(side.end().x() - side.start().x());
                }
                default -> {
                    if (r.dimension().word().contains(" pocket: ")) {
                        Edge edge = pattern.piece(r.dimension().of().orElseThrow())
                                .edge(
                                        r.dimension().word().endsWith("width")
                                                ? EdgeName.LOWER_EDGE
                                                : EdgeName.LEFT_EDGE);
                        yield r.dimension().word().startsWith("tailbone")
                                        && r.dimension().word().endsWith("height")
                                ? pattern.piece(PieceName.of(PieceKind.TAILBONE_PAD_POCKET))
                                        .marks()
                                        .get(0)
                                        .line()
                                        .start()
                                        .y()
                                : edge.length();
                    }
                    yield r.mm();
                }
            };
            softly.assertThat(drawn).as(who + " " + r.dimension().word()).isCloseTo(r.mm(), within(0.05));
        }
    }
}
