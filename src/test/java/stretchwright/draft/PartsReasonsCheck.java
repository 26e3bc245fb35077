package stretchwright.draft;

import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.assertj.core.api.SoftAssertions;
import stretchwright.ground.Path;
import stretchwright.pattern.Edge;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Reason;

/** The chains of reasons of the parts: each number is drawn, each chain can be followed. */
final class PartsReasonsCheck {
    private static final Set<String> ENDS = Set.of("measured", "estimated", "fabric", "boot", "style", "rule");

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
        List<String> names = pattern.reasons().stream().map(Reason::dimension).toList();
        softly.assertThat(names).as(who).doesNotHaveDuplicates();
        for (Reason r : pattern.reasons()) {
            for (Reason.Input input : r.inputs()) {
                softly.assertThat(ENDS.contains(input.from()) || names.contains(input.from()))
                        .as(who + " " + r.dimension() + " <- " + input)
                        .isTrue();
            }
        }
        for (Reason r : pattern.reasons()) {
            double drawn = switch (r.dimension()) {
                case "side panel: width" ->
                    pattern.pieces().stream()
                            .filter(p -> p.name().endsWith("side panel"))
                            .findFirst()
                            .orElseThrow()
                            .edge("hem")
                            .length();
                case "gusset: length" -> pattern.piece("gusset").sewLine().box().height();
                case "gusset: width" -> pattern.piece("gusset").sewLine().box().width();
                case "front leg: side take-in" -> {
                    Path side = PartsInvariants.with(pattern, "front crotch")
                            .edge("side edge")
                            .line();
                    yield Math.abs(side.end().x() - side.start().x());
                }
                default -> {
                    if (r.dimension().contains(" pocket: ")) {
                        Edge edge = pattern.piece(r.dimension().split(":")[0])
                                .edge(r.dimension().endsWith("width") ? "lower edge" : "left edge");
                        yield r.dimension().startsWith("tailbone")
                                        && r.dimension().endsWith("height")
                                ? pattern.piece("tailbone pad pocket")
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
            softly.assertThat(drawn).as(who + " " + r.dimension()).isCloseTo(r.mm(), within(0.05));
        }
    }
}
