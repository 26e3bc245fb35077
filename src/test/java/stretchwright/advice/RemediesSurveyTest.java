package stretchwright.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static stretchwright.ground.InWords.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measured;
import stretchwright.body.SampleBody;
import stretchwright.boot.Boot;
import stretchwright.boot.SampleBoot;
import stretchwright.draft.Draft;
import stretchwright.fabric.ClothShape;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.LoadCurve;
import stretchwright.fit.FitCheck;
import stretchwright.fit.FitReport;
import stretchwright.fit.FitReport.Severity;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.ground.Findings;
import stretchwright.ground.RandomStream;
import stretchwright.ground.Unit;
import stretchwright.intake.Answers;
import stretchwright.intake.MakeFile;
import stretchwright.intake.PrintTerms;
import stretchwright.make.Rooms;
import stretchwright.pattern.Hold;
import stretchwright.pattern.LowerEnd;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;

/** Random bodies, cloths and styles: every remedy offered is made, drafted and judged again, and compared by plain rules. */
@Tag("slow")
class RemediesSurveyTest {
    private static final int MAKES = 160;

    private final Map<String, int[]> counts = new TreeMap<>();
    private int makes;
    private int offers;
    private int turned;
    private int least;
    private int amounts;
    private int without;
    private int withOffers;

    @Test
    void whatIsOfferedTurnsTheVerdict() {
        long nanos = 0;
        for (int seed = 0; seed < MAKES; seed++) {
            MakeFile make = random(seed);
            Body body = SampleBody.random(seed);
            Optional<Pattern> pattern = draft(make, body);
            if (pattern.isPresent()) {
                makes++;
                FitReport before = fit(make, body, pattern.get());
                long start = System.nanoTime();
                Map<Verdict, List<Remedies.Offer>> all =
                        Remedies.offers(make, body, pattern.get(), before, new Rooms());
                nanos += System.nanoTime() - start;
                all.forEach((v, o) -> check(make, body, before, v, o));
            }
        }
        System.out.printf(
                "%d drafted of %d; verdicts with an offer %d, with none that turns %d; offers %d, turned %d; least %d of"
                        + " %d; %.1f ms a make%n",
                makes, MAKES, withOffers, without, offers, turned, least, amounts, nanos / 1e6 / makes);
        counts.forEach((topic, n) -> System.out.printf("%-16s offered %4d  none %4d%n", topic, n[0], n[1]));
        assertThat(makes).isGreaterThan(140);
        assertThat(offers).isGreaterThan(200);
        assertThat(turned / (double) offers).isGreaterThanOrEqualTo(0.95);
        assertThat(least / (double) amounts).isGreaterThanOrEqualTo(0.95);
    }

    private void check(MakeFile make, Body body, FitReport before, Verdict v, List<Remedies.Offer> all) {
        int[] n = counts.computeIfAbsent(v.kind().name(), k -> new int[2]);
        if (!all.get(0).tried().turns()) {
            without++;
            n[1]++;
            return;
        }
        withOffers++;
        n[0]++;
        for (Remedies.Offer offer : all) {
            offers++;
            Optional<FitReport> after = again(offer.lever(), offer.amount(), body);
            if (after.isPresent() && plainlyTurned(v, before, after.get())) {
                turned++;
            }
            if (offer.amount() > 1) {
                amounts++;
                boolean lessWouldDo = again(offer.lever(), offer.amount() - 1, body)
                        .filter(f -> plainlyTurned(v, before, f) && clear(v, f) == clear(v, after.orElseThrow()))
                        .isPresent();
                least += lessWouldDo ? 0 : 1;
            }
        }
    }

    private static Optional<FitReport> again(ChangeLever lever, int amount, Body body) {
        return lever.make().apply(amount).flatMap(m -> draft(m, body).map(p -> fit(m, body, p)));
    }

    private static boolean clear(Verdict v, FitReport fit) {
        return fit.verdicts().stream().noneMatch(w -> w.severity() != Severity.NOTE && place(w).equals(place(v)));
    }

    /** The rule in plain words, written anew: fewer about the same place that are as bad, and no stop where none was. */
    private static boolean plainlyTurned(Verdict v, FitReport before, FitReport after) {
        long now = asBad(v, after);
        boolean newStop = after.verdicts().stream()
                .filter(w -> w.severity() == Severity.STOP)
                .anyMatch(w -> before.verdicts().stream()
                        .noneMatch(x -> x.severity() == Severity.STOP && place(x).equals(place(w))));
        return now < asBad(v, before) && !newStop;
    }

    private static long asBad(Verdict v, FitReport fit) {
        return fit.verdicts().stream()
                .filter(w -> place(w).equals(place(v))
                        && w.severity().ordinal() <= v.severity().ordinal())
                .count();
    }

    private static String place(Verdict v) {
        return words(v.about()).replaceFirst("^.*, ", "");
    }

    private static Optional<Pattern> draft(MakeFile m, Body body) {
        Findings findings = new Findings("");
        Optional<Pattern> pattern = Draft.of(body, m.fabric(), m.boot(), m.style(), m.machines(), findings);
        return findings.isEmpty() ? pattern : Optional.empty();
    }

    private static FitReport fit(MakeFile m, Body body, Pattern p) {
        return FitCheck.of(p, body, m.fabric(), m.boot(), m.style(), m.machines());
    }

    private static MakeFile random(int seed) {
        RandomStream r = RandomStream.of(seed, "remedies");
        Body body = SampleBody.random(seed);
        Style.Leg[] legs = Style.Leg.values();
        Style.Leg leg = legs[r.below(legs.length)];
        Optional<Boot> boot = leg == Style.Leg.OVER_BOOT
                ? Optional.of(SampleBoot.withSole(
                        body.mm(stretchwright.body.Measure.HEEL_GIRTH) / 305,
                        r.below(3) == 0 ? Boot.Dressing.OVER_LACED_BOOT : Boot.Dressing.LEG_FIRST))
                : Optional.empty();
        TopEnd top = TopEnd.band(r.between(40, 150)).dropped(r.below(2) * r.between(0, 60));
        Hold[] holds = {
            Hold.Named.LIGHT, Hold.Named.MEDIUM, Hold.Named.FIRM, Hold.Named.FIRM, new Hold.Fixed(r.between(0.02, 0.30))
        };
        Style style = Style.usual(leg).with(top).with(holds[r.below(holds.length)]);
        if (leg != Style.Leg.STIRRUP && r.below(2) == 0) {
            style = style.with(LowerEnd.cuff(32));
        }
        Set<Machine> machines =
                r.below(3) == 0 ? Set.of(Machine.LOCKSTITCH) : Set.of(Machine.OVERLOCKER, Machine.COVERSTITCH);
        return new MakeFile(
                "random",
                "random",
                Unit.MM,
                "",
                Measured.of(body.figure(), OptionalDouble.empty(), Map.of()),
                cloth(r),
                List.of(),
                boot,
                style,
                stretchwright.sewing.SewingTerms.on(machines),
                new PrintTerms(
                        "A4",
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        OptionalInt.empty(),
                        stretchwright.print.kit.FileGroup.usual()),
                1,
                List.of(),
                Answers.NONE);
    }

    private static Fabric cloth(RandomStream r) {
        double across = r.between(0.15, 1.0);
        double along = r.between(0.10, 0.7);
        boolean read = r.below(2) == 0;
        double pull = r.between(0.5, 4);
        return new Fabric(
                new Fabric.Quality(OptionalDouble.of(r.between(150, 320)), r.between(0, 0.08), r.between(0, 0.08)),
                new Fabric.Roll(
                        "random",
                        r.between(1300, 1600),
                        OptionalDouble.empty(),
                        r.below(2) == 0,
                        0,
                        Optional.empty(),
                        ClothShape.WHOLE),
                new Fabric.Test(
                        across,
                        along,
                        curve(across, read, pull),
                        curve(along, read, pull),
                        OptionalDouble.of(r.between(0.80, 0.99)),
                        r.below(2) == 0 ? OptionalDouble.of(r.between(0.5, 1.8)) : OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Fabric.Assumed.NOTHING));
    }

    private static LoadCurve curve(double stretch, boolean read, double pull) {
        return read
                ? LoadCurve.through(List.of(
                        new LoadCurve.Reading(stretch / 3, 15 * pull),
                        new LoadCurve.Reading(stretch * 2 / 3, 38 * pull),
                        new LoadCurve.Reading(stretch, 75 * pull)))
                : LoadCurve.assumed(stretch);
    }
}
