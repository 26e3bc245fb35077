package stretchwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stretchwright.body.Body;
import stretchwright.body.SampleBody;
import stretchwright.boot.SampleBoot;
import stretchwright.fabric.SampleFabric;
import stretchwright.ground.Path;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.Parts;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;

/** Level lines stand where the widths are told; three lines tell where to lengthen or shorten, where there is room. */
class LegMarksTest {
    private static final Body ADULT = SampleBody.smallAdult();

    private static Pattern draft(Style style) {
        return DraftTest.draft(ADULT, SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), style);
    }

    private static Map<MarkName, Path> lines(Piece piece) {
        return piece.marks().stream()
                .filter(m -> m.kind() == Mark.Kind.LEVEL)
                .collect(Collectors.toMap(Mark::name, Mark::line));
    }

    private static Path line(Map<MarkName, Path> lines, MarkName name) {
        return Objects.requireNonNull(lines.get(name), name.word());
    }

    private static Level level(Pattern pattern, Level.Name name) {
        return pattern.level(name).orElseThrow();
    }

    @Test
    void theRiseLineRunsFromCentreFrontToCentreBackTheOthersLieWhereTheirNamesSay() {
        Pattern pattern = draft(DraftTest.ANKLE);
        Piece leg = pattern.legs().get(0);
        Map<MarkName, Path> lines = lines(leg);
        Path rise = line(lines, MarkName.LENGTHEN_OR_SHORTEN_RISE);
        assertThat(off(
                        leg,
                        EdgeName.FRONT_CROTCH,
                        rise.start().y(),
                        rise.start().x()))
                .isLessThan(0.05);
        assertThat(off(leg, EdgeName.BACK_CROTCH, rise.end().y(), rise.end().x()))
                .isLessThan(0.05);
        double crotch = level(pattern, Level.Name.CROTCH).height();
        double knee = level(pattern, Level.Name.KNEE).height();
        double thigh = line(lines, MarkName.LENGTHEN_OR_SHORTEN_THIGH).start().y();
        double calf = line(lines, MarkName.LENGTHEN_OR_SHORTEN_CALF).start().y();
        double hem = leg.edge(EdgeName.HEM).line().start().y();
        assertThat(thigh).isCloseTo((crotch + knee) / 2, within(20.0)).isNotCloseTo(crotch, within(40.0));
        assertThat(calf).isCloseTo((knee + hem) / 2, within(20.0));
        for (Level level : pattern.levels()) {
            assertThat(thigh).as(level.name().word()).isNotCloseTo(level.height(), within(14.0));
            assertThat(calf).as(level.name().word()).isNotCloseTo(level.height(), within(14.0));
        }
    }

    private static double off(Piece leg, EdgeName edge, double height, double x) {
        Path line = leg.edge(edge).line();
        return Math.abs(line.at(line.alongAtHeight(height)).x() - x);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
    void everyLevelLineIsAsLongAsTheWidthTold(long seed) {
        Body body = SampleBody.random(seed);
        Pattern pattern =
                DraftTest.draft(body, SampleFabric.heavyKnit(), Optional.of(SampleBoot.figure()), DraftTest.ANKLE);
        Map<MarkName, Path> lines = lines(pattern.legs().get(0));
        for (MarkName name : List.of(MarkName.HIP, MarkName.CROTCH, MarkName.MID_THIGH, MarkName.KNEE, MarkName.CALF)) {
            Level level = level(pattern, name.level().orElseThrow());
            double width = name == MarkName.HIP ? level.width() / 2 : level.width();
            assertThat(line(lines, name).start().y()).as(name.word()).isCloseTo(level.height(), within(0.01));
            assertThat(line(lines, name).length()).as(name.word()).isCloseTo(width, within(0.02));
        }
    }

    @Test
    void aShortLegHasTheLinesThatThereIsRoomFor() {
        assertThat(lines(draft(Style.usual(Style.Leg.SHORT)).legs().get(0)).keySet())
                .contains(MarkName.LENGTHEN_OR_SHORTEN_RISE)
                .doesNotContain(MarkName.LENGTHEN_OR_SHORTEN_CALF, MarkName.KNEE);
        assertThat(lines(draft(Style.usual(Style.Leg.KNEE)).legs().get(0)).keySet())
                .contains(MarkName.LENGTHEN_OR_SHORTEN_RISE, MarkName.LENGTHEN_OR_SHORTEN_THIGH)
                .doesNotContain(MarkName.LENGTHEN_OR_SHORTEN_CALF);
    }

    @Test
    void allPartsOfALegCarryTheLinesThatCrossThem() {
        Parts parts = Parts.PLAIN.withPanel(60).with(new Parts.Gusset(130, 60));
        Pattern pattern = draft(DraftTest.ANKLE.with(parts));
        List<Piece> pieces =
                pattern.pieces().stream().filter(p -> p.name().kind().isOfLeg()).toList();
        assertThat(pieces).hasSize(3).allSatisfy(piece -> {
            assertThat(lines(piece).keySet())
                    .containsExactlyInAnyOrderElementsOf(
                            lines(draft(DraftTest.ANKLE).legs().get(0)).keySet());
            lines(piece)
                    .forEach((name, line) -> assertThat(line.length())
                            .as(piece.name() + ": " + name)
                            .isGreaterThan(50));
        });
    }
}
