package stretchwright.print.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Voice;
import stretchwright.sewing.Place;
import stretchwright.sewing.SeveralPairs;
import stretchwright.sewing.SewingPlan;
import stretchwright.sewing.StepKind;
import stretchwright.sewing.Threading;

class PlanWordsTest {
    private static SewingPlan.Thread thread() {
        return new SewingPlan.Thread(Place.OVERLOCKER, Threading.UPPER_LOOPER, 383.3, 1000, 1);
    }

    @Test
    void severalPairsAreToldWhatTheySave() {
        SeveralPairs lots = new SeveralPairs(12, 4, 3, 11, 565.9, 583.9, List.of(thread()));
        assertThat(PlanWords.several(lots, Voice.plain()))
                .isEqualTo("12 pairs: do each step for 4 pairs before the next step, in 3 lots, which saves 18 minutes"
                        + " against one pair after another. In all 566 minutes and 11 changes of machine. Thread for all:"
                        + " overlocker upper looper 1 x 1000 m.");
        assertThat(PlanWords.several(new SeveralPairs(2, 2, 1, 1, 90, 130, List.of(thread())), Voice.plain()))
                .contains("for all of them before", "saves 40 minutes", "1 change of machine");
        assertThat(PlanWords.several(new SeveralPairs(3, 1, 3, 0, 90, 90, List.of(thread())), Voice.plain()))
                .contains("finish one before the next is begun");
    }

    @Test
    void whatForcesAConversionIsNamed() {
        SewingPlan.Optimum forced =
                new SewingPlan.Optimum(BigInteger.valueOf(7090), 1, 1, List.of(StepKind.INSEAMS, StepKind.HEMS));
        assertThat(PlanWords.order(forced, Voice.plain()))
                .contains("Of 7,090 orders", "converted once", "of inseams, then hems");
        assertThat(PlanWords.order(new SewingPlan.Optimum(BigInteger.ONE, 0, 0, List.of()), Voice.plain()))
                .isEqualTo("No other order keeps what must come before.");
    }
}
