package stretchwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.advice.TrialRooms;
import stretchwright.advice.Trials;
import stretchwright.body.Body;
import stretchwright.body.Measured;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Lay;
import stretchwright.lay.Laying;
import stretchwright.lay.nest.LayClock;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.print.Printable;
import stretchwright.print.Printing;
import stretchwright.print.kit.Job;
import stretchwright.print.sheets.TraceGrid;
import stretchwright.sewing.Planning;
import stretchwright.sewing.SeamStrain;
import stretchwright.sewing.SewingPlan;

/** The real rooms, joined. */
public final class Rooms implements Stages {
    private final Trials trials = new TrialRooms();

    @Override
    public Optional<Body> body(Measured measured, Findings findings) {
        return trials.body(measured, findings);
    }

    @Override
    public Optional<Pattern> draft(Body body, MakeFile make, Findings findings) {
        return trials.draft(body, make, findings);
    }

    @Override
    public FitReport fit(Pattern pattern, Body body, MakeFile make) {
        return trials.fit(pattern, body, make);
    }

    @Override
    public FitReport judge(Pattern pattern, Body body, MakeFile make) {
        return trials.judge(pattern, body, make);
    }

    @Override
    public Optional<Lay> lay(List<Piece> pieces, Fabric fabric, MakeFile make, Findings findings) {
        return Laying.lay(pieces, fabric, make.style().lay(), make.seed(), LayClock.NONE, findings);
    }

    @Override
    public SewingPlan sewing(Pattern pattern, MakeFile make, FitReport fit) {
        List<SeamStrain> strains = fit.seams().stream()
                .map(s -> new SeamStrain(s.seam(), s.pose().said(), s.needed()))
                .toList();
        return Planning.plan(pattern, make.fabric(), make.sewing(), strains);
    }

    @Override
    public List<Printable> printables(
            MakeFile make, Pattern pattern, FitReport fit, List<ClothLay> lays, SewingPlan sewing) {
        Job job = new Job(
                make.name(),
                make.wearer(),
                make.unit(),
                pattern,
                fit,
                lays,
                sewing,
                make.print().sheet().orElseThrow());
        return OpenFormats.added(Printing.printables(job, grid(make)), make, pattern);
    }

    @Override
    public List<Printable> steps(MakeFile make, Pattern pattern, FitReport fit, SewingPlan sewing) {
        return Printing.steps(drafted(make, pattern).unlaid(fit, sewing));
    }

    @Override
    public List<Printable> drawn(MakeFile make, Pattern pattern) {
        return OpenFormats.added(List.of(Printing.pattern(drafted(make, pattern))), make, pattern);
    }

    private static Job drafted(MakeFile make, Pattern pattern) {
        List<Job.CutFrom> cloths = new ArrayList<>();
        cloths.add(new Job.CutFrom(make.fabric(), make.ownPieces(pattern)));
        make.contrasts().forEach(c -> cloths.add(new Job.CutFrom(make.asWorn(c.fabric()), c.pieces(pattern))));
        return new Job(
                make.name(),
                make.wearer(),
                make.unit(),
                pattern,
                cloths,
                make.print().sheet().orElseThrow());
    }

    private static TraceGrid grid(MakeFile make) {
        return make.print().grid().flatMap(TraceGrid::of).orElseGet(() -> TraceGrid.usual(make.unit()));
    }
}
