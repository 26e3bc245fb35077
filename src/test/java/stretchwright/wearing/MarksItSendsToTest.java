package stretchwright.wearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import stretchwright.exchange.Handover;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Level;
import stretchwright.pattern.Mark;
import stretchwright.pattern.MarkName;
import stretchwright.pattern.NotchName;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;

/** Cures send to marks of the pattern: these marks are there, on every example whose leg reaches so far. */
class MarksItSendsToTest {
    /** "knee folds": taken up at the line on the thigh, between crotch and knee. */
    @Test
    void aLegWithAKneeHasALineToTakeItUpBetweenCrotchAndKnee() {
        int legs = 0;
        for (Map.Entry<String, Handover> e : ExampleHandovers.all().entrySet()) {
            Pattern pattern = e.getValue().pattern();
            for (Piece leg : pattern.legs()) {
                Pattern own = pattern.onlyLeg(leg.name().leg());
                double crotch = own.level(Level.Name.CROTCH).orElseThrow().height();
                double knee = own.level(Level.Name.KNEE).orElseThrow().height();
                assertThat(leg.marks())
                        .as(e.getKey() + " " + leg.name())
                        .filteredOn(m -> m.name() == MarkName.LENGTHEN_OR_SHORTEN_THIGH)
                        .singleElement()
                        .extracting(m -> height(m))
                        .satisfies(h -> assertThat(h).isBetween(knee + 20, crotch - 20));
                legs++;
            }
        }
        assertThat(legs).isGreaterThan(ExampleHandovers.all().size());
    }

    private static double height(Mark mark) {
        return mark.line().start().y();
    }

    /** "a leg twists": the inseam's notches are matched, at knee and calf above all. */
    @Test
    void bothInseamsHaveANotchAtKneeAndCalf() {
        for (Map.Entry<String, Handover> e : ExampleHandovers.all().entrySet()) {
            for (Piece leg : e.getValue().pattern().legs()) {
                for (EdgeName edge : new EdgeName[] {EdgeName.FRONT_INSEAM, EdgeName.BACK_INSEAM}) {
                    if (leg.has(edge)) {
                        assertThat(leg.notches())
                                .as(e.getKey() + " " + leg.name())
                                .filteredOn(n -> n.edge() == edge)
                                .extracting(n -> n.name())
                                .contains(NotchName.KNEE, NotchName.CALF);
                    }
                }
            }
        }
    }
}
