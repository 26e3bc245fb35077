package stretchwright.print.kit;

import static stretchwright.ground.InWords.said;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.SampleFabric;
import stretchwright.fit.FitReport;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;
import stretchwright.lay.Lay;
import stretchwright.pattern.EdgeName;
import stretchwright.pattern.Names;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.Stitch;
import stretchwright.print.sheets.Sheeted;
import stretchwright.sewing.Joined;
import stretchwright.sewing.Place;
import stretchwright.sewing.SewingPlan;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.sewing.StepKind;
import stretchwright.sewing.StepName;

/** A made-up job for the tests of this room; all numbers invented. */
public final class SampleJob {
    private SampleJob() {}

    public static Job on(String paper) {
        return named(paper, "Evening practice", "Rowan");
    }

    public static Job named(String paper, String make, String wearer) {
        return with(paper, make, wearer, SampleFabric.with(1470, 0.60, 0.45, true), openLay());
    }

    /** Another pattern put on paper, with all else of this job. */
    public static Job drawing(Pattern pattern, String paper) {
        Job sample = on("A4");
        return new Job(
                "Example",
                "someone",
                sample.unit(),
                pattern,
                sample.fit(),
                sample.lays(),
                sample.sewing(),
                Paper.named(paper));
    }

    public static Job folded() {
        return with("A4", "Evening practice", "Rowan", SampleFabric.heavyKnit(), foldedLay());
    }

    public static Job with(String paper, String make, String wearer, Fabric fabric, Lay lay) {
        return of(paper, make, wearer, fabric, lay, SamplePattern.overBoot());
    }

    public static Job of(String paper, String make, String wearer, Fabric fabric, Lay lay, Pattern pattern) {
        return new Job(
                make,
                wearer,
                Unit.CM,
                pattern,
                fabric,
                fit(),
                lay,
                plan(),
                Paper.of(paper).orElseThrow());
    }

    /** The pieces without a line, for those who only lay them on sheets. */
    public static List<Sheeted> bare(Pattern pattern) {
        return pattern.pieces().stream()
                .map(p -> new Sheeted(p.name().word(), p.cutLine(), c -> {}))
                .toList();
    }

    public static Lay openLay() {
        return new Lay(
                Lay.Method.OPEN,
                1470,
                1220,
                1350,
                0.62,
                1100,
                List.of(
                        new Lay.Placement(Names.piece("leg"), 1, 235, 13, 0, false, false, 1, List.of(235.0, 235.0)),
                        new Lay.Placement(Names.piece("leg"), 2, 780, 13, 0, true, false, 1, List.of(780.0, 780.0)),
                        new Lay.Placement(
                                Names.piece("waistband"), 1, 370, 1075, 0, false, true, 1, List.of(542.5, 542.5)),
                        new Lay.Placement(
                                Names.piece("cuff"), 1, 1085, 20, 0, false, false, 1, List.of(1257.0, 1257.0)),
                        new Lay.Placement(
                                Names.piece("cuff"), 2, 1085, 110, 0, false, false, 1, List.of(1257.0, 1257.0))));
    }

    public static Lay foldedLay() {
        return new Lay(
                Lay.Method.FOLDED,
                735,
                1290,
                1420,
                0.55,
                1100,
                List.of(
                        new Lay.Placement(Names.piece("leg"), 1, 240, 13, 0, false, false, 2, List.of(240.0, 240.0)),
                        new Lay.Placement(
                                Names.piece("waistband"), 1, 0, 1100, 0, false, false, 1, List.of(172.5, 172.5)),
                        new Lay.Placement(
                                Names.piece("cuff"), 1, 370, 1100, 0, false, false, 2, List.of(542.0, 542.0))));
    }

    static FitReport fit() {
        return new FitReport(
                List.of(),
                List.of(),
                List.of(),
                List.of(
                        new FitReport.Verdict(
                                FitReport.Severity.CAUTION,
                                said("hem"),
                                said("The hem presses with 2.4 kPa (18 mmHg) on the boot."),
                                said("Widen the hem by 12 mm or choose a light hold.")),
                        new FitReport.Verdict(
                                FitReport.Severity.NOTE,
                                said("knee"),
                                said("The load curve is assumed."),
                                said("Hang a test strip."))));
    }

    /** Words as they are. */
    public static Said told(String words) {
        return Said.of("sewing", "own", Part.text(words));
    }

    static SewingPlan plan() {
        List<Operation> all = new ArrayList<>();
        StepName[] names = {
            new StepName.Own("test seam"),
            StepKind.FRONT_RISE,
            StepKind.BACK_RISE,
            StepKind.INSEAMS,
            StepKind.BAND_RING,
            StepKind.BAND_JOIN,
            StepKind.CUFF_RINGS,
            StepKind.CUFF_JOIN
        };
        Joined rise = new Joined(Names.piece("leg"), EdgeName.FRONT_CROTCH);
        for (int i = 0; i < names.length; i++) {
            all.add(new Operation(
                    i + 1,
                    names[i],
                    i == 0 ? Place.TABLE : Place.OVERLOCKER,
                    i == 0 ? Optional.empty() : Optional.of(Stitch.OVERLOCK_4),
                    i == 0 ? "" : "1.01.01",
                    i == 0 ? List.of() : List.of(rise, rise),
                    i * 137.0,
                    1.5 + i,
                    i == 0 ? List.of() : List.of(i),
                    told("Lay right sides together, match the notches and sew without pulling; let the feed carry the"
                            + " cloth and stop with the needle down to check the crossing."),
                    told("Stretch the seam to the limit of the cloth: no thread breaks, both edges end together."),
                    SewingPlan.Help.NONE));
        }
        Map<Place, Double> thread = new LinkedHashMap<>();
        thread.put(Place.OVERLOCKER, 86.4);
        return new SewingPlan(
                all,
                0,
                42.5,
                95,
                thread,
                List.of(),
                new SewingPlan.Optimum(BigInteger.valueOf(12), 0, 0, List.of()),
                Optional.empty());
    }
}
