package stretchwright.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import stretchwright.ground.Document;
import stretchwright.print.cloth.LaySheet;
import stretchwright.print.fit.FitPdf;
import stretchwright.print.fit.FitSvg;
import stretchwright.print.fit.LoadSvg;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Paper;
import stretchwright.print.sheets.PatternSvg;
import stretchwright.print.sheets.ProjectorPdf;
import stretchwright.print.sheets.TiledPdf;
import stretchwright.print.sheets.TraceGrid;
import stretchwright.print.sheets.TracingPdf;
import stretchwright.print.steps.BookletPdf;
import stretchwright.print.steps.Checklist;
import stretchwright.print.steps.PlanPdf;
import stretchwright.print.steps.StepDrawing;

/**
 * The room's entry: from one job to finished files.
 *
 * <p>In: pattern, lay, plan and fit of one make, and the paper wanted. Out: the tiled pattern for that paper and always
 * for A4 and Letter, the pattern and the lay on each cloth as SVG, the lays and the sewing plan as PDF, the plan as a
 * booklet (A5, and two up to be folded) and as a checklist for the telephone, a drawing of each step that has edges to
 * show, what the fit check found as plots (SVG) and as a sheet (PDF). Promise: true scale (100 mm is 100 mm), nothing
 * nearer to a sheet's edge than 10 mm, the same job gives the same bytes.
 */
public final class Printing {
    private Printing() {}

    /** On the pattern cloth that is usual in the maker's unit. */
    public static List<Document> documents(Job job) {
        return documents(job, TraceGrid.usual(job.unit()));
    }

    /** @param grid squares of the pattern cloth that the tracing sheet is for */
    public static List<Document> documents(Job job, TraceGrid grid) {
        List<Supplier<Document>> all = new ArrayList<>();
        for (Paper paper : papers(job.paper())) {
            all.add(() -> TiledPdf.of(job, paper));
        }
        all.add(() -> PatternSvg.of(job));
        for (int i = 0; i < job.lays().size(); i++) {
            String name = i == 0 ? "lay" : "lay-" + (i + 1);
            Job cloth = job.on(job.lays().get(i));
            all.add(() -> LaySheet.svg(cloth, name));
            all.add(() -> LaySheet.pdf(cloth, name));
        }
        all.add(() -> ProjectorPdf.of(job));
        all.add(() -> TracingPdf.of(job, grid));
        all.add(() -> PlanPdf.of(job));
        all.add(() -> BookletPdf.pages(job));
        all.add(() -> BookletPdf.imposed(job));
        all.add(() -> Checklist.of(job));
        job.sewing().operations().stream()
                .filter(o -> StepDrawing.shows(job, o))
                .forEach(o -> all.add(() -> StepDrawing.svg(job, o)));
        if (job.fit().course().size() > 1) {
            all.add(() -> FitSvg.of(job));
        }
        all.add(() -> LoadSvg.of(job));
        all.add(() -> FitPdf.of(job));
        // each file is a function of the job alone, so they may be made side by side; their order stays
        return all.parallelStream().map(Supplier::get).toList();
    }

    private static Iterable<Paper> papers(Paper wanted) {
        Map<String, Paper> papers = new LinkedHashMap<>();
        papers.put(wanted.name(), wanted);
        for (String always : List.of("A4", "Letter")) {
            Paper usual = Paper.named(always);
            papers.putIfAbsent(
                    always, usual.with(wanted.margin(), wanted.overlap()).orElse(usual));
        }
        return papers.values();
    }
}
