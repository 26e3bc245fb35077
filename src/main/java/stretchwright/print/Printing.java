package stretchwright.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Document;
import stretchwright.print.cloth.LaySheet;
import stretchwright.print.fit.FitPdf;
import stretchwright.print.fit.FitSvg;
import stretchwright.print.fit.LoadSvg;
import stretchwright.print.kit.FileGroup;
import stretchwright.print.kit.Ink;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfCanvas;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.Writing;
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
 * <p>In: pattern, lay, plan and fit of one make, and the paper wanted. Out: what can be had, each file by its name and
 * group ({@link FileGroup}), made when it is asked for: the tiled pattern for that paper and for A4 and Letter, the pattern
 * and the lay on each cloth as SVG, the lays and the sewing plan as PDF, the plan as a booklet (A5, and two up to be
 * folded) and as a checklist for the telephone, a drawing of each step that has edges to show, what the fit check found as
 * plots (SVG) and as a sheet (PDF). Promise: true scale (100 mm is 100 mm), nothing nearer to a sheet's edge than 10 mm,
 * the same job gives the same bytes.
 */
public final class Printing {
    private Printing() {}

    /** All of them, on the pattern cloth that is usual in the maker's unit. */
    public static List<Document> documents(Job job) {
        return made(printables(job, TraceGrid.usual(job.unit())));
    }

    /** Reads what every PDF needs: typeface, words, the library's own classes. The first one waits for it, whoever began it. */
    public static void prepare() {
        try (PdfFile file = new PdfFile("")) {
            PdfCanvas page = file.page(100, 100);
            page.text(Writing.at(Ink.LABEL, 10, 10, 4, Phrases.of("piece.date")));
            file.finished("prepared", "");
        }
    }

    /** In the order given, made side by side. */
    public static List<Document> made(List<Printable> printables) {
        return printables.parallelStream().map(Printable::made).toList();
    }

    /** @param grid squares of the pattern cloth that the tracing sheet is for */
    public static List<Printable> printables(Job job, TraceGrid grid) {
        List<Printable> all = new ArrayList<>();
        for (Paper paper : papers(job.paper())) {
            FileGroup group = paper.equals(job.paper()) ? FileGroup.PATTERN : FileGroup.OTHER_PAPERS;
            all.add(new Printable(TiledPdf.fileName("pattern", paper), group, () -> TiledPdf.of(job, paper)));
        }
        all.add(pattern(job));
        for (int i = 0; i < job.lays().size(); i++) {
            String name = i == 0 ? "lay" : "lay-" + (i + 1);
            Job cloth = job.on(job.lays().get(i));
            all.add(new Printable(name + ".svg", FileGroup.LAY, () -> LaySheet.svg(cloth, name)));
            all.add(new Printable(name + ".pdf", FileGroup.LAY, () -> LaySheet.pdf(cloth, name)));
        }
        all.add(new Printable("pattern-projector.pdf", FileGroup.PROJECTOR, () -> ProjectorPdf.of(job)));
        all.add(new Printable("tracing-sheet.pdf", FileGroup.TRACING, () -> TracingPdf.of(job, grid)));
        all.add(new Printable("sewing-plan.pdf", FileGroup.PLAN, () -> PlanPdf.of(job)));
        all.add(new Printable("sewing-booklet.pdf", FileGroup.BOOKLET, () -> BookletPdf.pages(job)));
        all.add(new Printable(BookletPdf.imposedName(job), FileGroup.BOOKLET, () -> BookletPdf.imposed(job)));
        all.add(new Printable("checklist.html", FileGroup.CHECKLIST, () -> Checklist.of(job)));
        all.addAll(steps(job));
        if (job.fit().course().size() > 1) {
            all.add(new Printable("fit.svg", FileGroup.FIT, () -> FitSvg.of(job)));
        }
        all.add(new Printable("load.svg", FileGroup.FIT, () -> LoadSvg.of(job)));
        all.add(new Printable("fit.pdf", FileGroup.FIT, () -> FitPdf.of(job)));
        return all;
    }

    /** A drawing of each step that has edges to show: of a make that is not laid, too. */
    public static List<Printable> steps(Job job) {
        return job.sewing().operations().stream()
                .filter(o -> StepDrawing.shows(job, o))
                .map(o -> new Printable(StepDrawing.name(o), FileGroup.STEPS, () -> StepDrawing.svg(job, o)))
                .toList();
    }

    /** Of the drawing of a step. */
    public static String stepName(int number) {
        return StepDrawing.name(number);
    }

    /** The pattern as a drawing: of a make that is drafted and no more, too. */
    public static Printable pattern(Job job) {
        return new Printable("pattern.svg", FileGroup.PATTERN, () -> PatternSvg.of(job));
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
