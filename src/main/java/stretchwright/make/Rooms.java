package stretchwright.make;

import java.util.List;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measured;
import stretchwright.body.Measuring;
import stretchwright.draft.Draft;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitCheck;
import stretchwright.fit.FitReport;
import stretchwright.fit.PoseTape;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Lay;
import stretchwright.lay.Laying;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.print.Document;
import stretchwright.print.Job;
import stretchwright.print.Paper;
import stretchwright.print.Printing;
import stretchwright.print.TraceGrid;
import stretchwright.sewing.Planning;
import stretchwright.sewing.SeamStrain;
import stretchwright.sewing.SewingPlan;

/** The real rooms, joined. */
final class Rooms implements Stages {
    @Override
    public Optional<Body> body(Measured measured, Findings findings) {
        return Measuring.body(measured, findings);
    }

    @Override
    public Optional<Pattern> draft(Body body, MakeFile make, Findings findings) {
        return Draft.of(body, make.fabric(), make.boot(), make.style(), make.machines(), findings);
    }

    @Override
    public FitReport fit(Pattern pattern, Body body, MakeFile make) {
        FitReport fit = FitCheck.of(pattern, body, make.fabric(), make.boot(), make.style(), make.machines());
        return PoseTape.added(fit, make.measured().poseLengths(), pattern, body, make.fabric());
    }

    @Override
    public FitReport judge(Pattern pattern, Body body, MakeFile make) {
        FitReport fit = FitCheck.withoutSlips(pattern, body, make.fabric(), make.boot(), make.style(), make.machines());
        return PoseTape.added(fit, make.measured().poseLengths(), pattern, body, make.fabric());
    }

    @Override
    public Optional<Lay> lay(List<Piece> pieces, Fabric fabric, MakeFile make, Findings findings) {
        return Laying.lay(pieces, fabric, make.style().lay(), make.seed(), findings);
    }

    @Override
    public SewingPlan sewing(Pattern pattern, MakeFile make, FitReport fit) {
        List<SeamStrain> strains = fit.seams().stream()
                .map(s -> new SeamStrain(s.seam(), Part.text(s.pose()), s.needed()))
                .toList();
        return Planning.plan(pattern, make.fabric(), make.sewing(), strains);
    }

    @Override
    public List<Document> documents(
            MakeFile make, Pattern pattern, FitReport fit, List<ClothLay> lays, SewingPlan sewing) {
        Job job = new Job(
                make.name(),
                make.wearer(),
                make.unit(),
                pattern,
                fit,
                lays,
                sewing,
                paper(make.print()).orElseThrow());
        return OpenFormats.added(Printing.documents(job, grid(make)), make, pattern);
    }

    private static TraceGrid grid(MakeFile make) {
        return make.print().grid().flatMap(TraceGrid::of).orElseGet(() -> TraceGrid.usual(make.unit()));
    }

    @Override
    public boolean knowsPaper(String name) {
        return Paper.of(name).isPresent();
    }

    static Optional<Paper> paper(PrintTerms print) {
        return Paper.of(print.paper())
                .flatMap(p -> p.with(
                        print.margin().orElse(p.margin()), print.overlap().orElse(p.overlap())));
    }

    @Override
    public boolean fitsPaper(PrintTerms print) {
        return paper(print).isPresent();
    }

    @Override
    public boolean knowsGrid(String name) {
        return TraceGrid.of(name).isPresent();
    }
}
