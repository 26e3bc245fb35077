package stretchwright.make;

import static java.nio.charset.StandardCharsets.UTF_8;
import static stretchwright.ground.InWords.said;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.Value;
import stretchwright.fabric.Fabric;
import stretchwright.fabric.Likely;
import stretchwright.fit.Direction;
import stretchwright.fit.FitReport;
import stretchwright.fit.OpeningName;
import stretchwright.fit.PoseName;
import stretchwright.fit.Region;
import stretchwright.fit.Subject;
import stretchwright.ground.Document;
import stretchwright.ground.Findings;
import stretchwright.ground.Progress;
import stretchwright.ground.Said;
import stretchwright.ground.SampleSaid;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Lay;
import stretchwright.pattern.Level;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.SamplePattern;
import stretchwright.pattern.WhichLeg;
import stretchwright.print.Printable;
import stretchwright.print.kit.FileGroup;
import stretchwright.sewing.SewingPlan;

/** Rooms for tests of reading, report and command door: a fixed pattern and fit, the real lay and plan, short papers. */
public final class SampleRooms implements Stages {
    private final Rooms real = new Rooms();

    public static MakeFile read(String file, byte[] bytes) {
        return Make.read(file, bytes);
    }

    public static Made run(MakeFile make, Progress progress) {
        return Make.run(make, progress, new SampleRooms());
    }

    @Override
    public Optional<Body> body(Measured measured, Findings findings) {
        Map<Measure, Double> given = measured.means();
        Map<Measure, Value> values = new EnumMap<>(Measure.class);
        for (Measure m : Measure.values()) {
            Double mm = given.get(m);
            values.put(
                    m, mm == null ? new Value(500, Value.Origin.ESTIMATED, 25) : new Value(mm, Value.Origin.GIVEN, 5));
        }
        if (given.getOrDefault(Measure.WAIST_GIRTH, 0.0) > 2000) {
            findings.add(
                    "wearer.measurements.waist girth",
                    SampleSaid.of("is at odds with the hip girth."),
                    SampleSaid.of("Measure again."));
            return Optional.empty();
        }
        return Optional.of(new Body(measured.figure(), measured.age(), values));
    }

    @Override
    public Optional<Pattern> draft(Body body, MakeFile make, Findings findings) {
        return Optional.of(SamplePattern.overBoot());
    }

    @Override
    public FitReport fit(Pattern pattern, Body body, MakeFile make) {
        double stretch = make.fabric().test().stretchAcross();
        FitReport.Severity severity = stretch < 0.2 ? FitReport.Severity.STOP : FitReport.Severity.CAUTION;
        return new FitReport(
                List.of(new FitReport.LevelFit(
                        Level.Name.HIP,
                        WhichLeg.BOTH,
                        961,
                        846,
                        0.13593,
                        0.02,
                        12.345,
                        0.5006,
                        true,
                        false,
                        new Likely(0.12, 0.15, 0.25, 0.95, 0.7, 0.65))),
                List.of(new FitReport.Opening(OpeningName.HEM_OVER_HEEL, 344, 400, 0.16279, stretch, stretch >= 0.2)),
                List.of(new FitReport.Pose(
                        PoseName.SIT_SPIN, Region.KNEE, Direction.ALONG, 0.4, 0.58, 0.45, true, false, 0.03)),
                List.of(
                        new FitReport.Verdict(
                                FitReport.Severity.NOTE,
                                said("hip"),
                                said("The load curve was assumed."),
                                Said.NOTHING),
                        new FitReport.Verdict(
                                severity,
                                Subject.of(Subject.Kind.HEM_OPENING, OpeningName.HEM_OVER_HEEL.said()),
                                said("The hem must stretch 16 %."),
                                said("Use a cloth of 20 % or more."))));
    }

    @Override
    public Optional<Lay> lay(List<Piece> pieces, Fabric fabric, MakeFile make, Findings findings) {
        return real.lay(pieces, fabric, make, findings);
    }

    @Override
    public SewingPlan sewing(Pattern pattern, MakeFile make, FitReport fit) {
        return real.sewing(pattern, make, fit);
    }

    @Override
    public List<Printable> drawn(MakeFile make, Pattern pattern) {
        return List.of(new Printable(
                "pattern.svg",
                FileGroup.PATTERN,
                () -> new Document(
                        "pattern.svg", "pattern drawing", 1, pattern.toString().getBytes(UTF_8))));
    }

    @Override
    public List<Printable> printables(
            MakeFile make, Pattern pattern, FitReport fit, List<ClothLay> lays, SewingPlan sewing) {
        return List.of(
                new Printable(
                        "pattern-A4.pdf",
                        FileGroup.PATTERN,
                        () -> new Document(
                                "pattern-A4.pdf",
                                "pattern tiles",
                                2,
                                (make.name() + pattern.pieces()).getBytes(UTF_8))),
                new Printable(
                        "lay.svg",
                        FileGroup.LAY,
                        () -> new Document(
                                "lay.svg",
                                "lay",
                                1,
                                lays.get(0).lay().toString().getBytes(UTF_8))));
    }
}
