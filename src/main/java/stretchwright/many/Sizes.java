package stretchwright.many;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.draft.Draft;
import stretchwright.fit.FitCheck;
import stretchwright.fit.FitReport;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.make.Lines;
import stretchwright.make.OpenFormats;
import stretchwright.pattern.Nest;
import stretchwright.pattern.Pattern;
import stretchwright.print.sheets.NestJob;
import stretchwright.print.sheets.NestPdf;
import stretchwright.print.sheets.NestSvg;

/**
 * One make for many wearers, as one nested pattern. In: a make file (its fabric, boot, style and machines; its wearer is left
 * out) and a table of bodies. Out: nest.json, nest.svg, nest-PAPER.pdf, nest.dxf, sizes.csv, grade.csv; findings by row and column of the rows that
 * could not be drafted, the others are done. Pure.
 */
public final class Sizes {
    private static final String MEASUREMENTS = "wearer.measurements.";

    /** Letters for the name of a size. */
    private static final int COLUMN = 21;

    private final MakeFile make;
    private final Optional<Nest> nest;
    private final List<Size> sizes;
    private final List<Finding> findings;

    private Sizes(MakeFile make, List<Size> sizes, Optional<Nest> nest, List<Finding> findings) {
        this.make = make;
        this.sizes = List.copyOf(sizes);
        this.nest = nest;
        this.findings = List.copyOf(findings);
    }

    /** A row of the table, drafted and judged. */
    record Size(String name, BodyRows.Row row, Pattern pattern, FitReport fit) {}

    /**
     * @param unit of the table's bare numbers where a row names none
     * @throws BadInput where the table's header cannot be used, or more rows are good than one nest can show
     */
    public static Sizes of(MakeFile make, String fileName, byte[] table, Optional<String> unit) {
        BodyRows rows = BodyRows.of(fileName, table, unit);
        Findings findings = new Findings(fileName);
        rows.findings(findings);
        if (rows.rows().size() > NestSvg.MOST_SIZES) {
            Findings many = new Findings(fileName);
            many.add(
                    "",
                    Tell.said("sizes.many", Part.count(rows.rows().size()), Part.count(NestSvg.MOST_SIZES)),
                    Tell.said("sizes.split"));
            many.throwIfAny();
        }
        List<Size> sizes = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (BodyRows.Row row : rows.rows()) {
            drafted(make, row, findings)
                    .ifPresent(p -> sizes.add(new Size(name(row, taken), row, p, fit(make, row, p))));
        }
        List<Size> alike = alike(sizes);
        for (Size size : sizes) {
            if (!alike.contains(size)) {
                findings.add(
                        Tell.at(size.row.line(), ""),
                        Tell.said("sizes.other", Part.text(alike.get(0).name)),
                        Tell.said("sizes.by-itself"));
            }
        }
        Optional<Nest> nest = alike.isEmpty()
                ? Optional.empty()
                : Optional.of(Nest.of(alike.stream()
                        .map(s -> new Nest.Size(s.name, s.pattern))
                        .toList()));
        return new Sizes(make, alike, nest, findings.all());
    }

    /** A name is needed once each: the row's, or its line, and a number behind it where it stands twice. */
    private static String name(BodyRows.Row row, Set<String> taken) {
        String name = row.label();
        for (int i = 2; !taken.add(name); i++) {
            name = row.label() + " (" + i + ")";
        }
        return name;
    }

    private static Optional<Pattern> drafted(MakeFile make, BodyRows.Row row, Findings findings) {
        Findings here = new Findings("", make.unit());
        Optional<Pattern> pattern =
                Draft.of(row.body(), make.fabric(), make.boot(), make.style(), make.machines(), here);
        Findings told = findings.in(make.unit());
        for (Finding f : here.all()) {
            boolean measure = f.key().startsWith(MEASUREMENTS);
            String key = measure
                    ? Tell.at(row.line(), f.key().substring(MEASUREMENTS.length()))
                    : Voice.plain().say(Tell.said("at.row-key", Part.count(row.line()), Part.text(f.key())));
            told.add(key, f.wrong(), f.right());
        }
        findings.addAll(told.all());
        return pattern;
    }

    private static FitReport fit(MakeFile make, BodyRows.Row row, Pattern pattern) {
        return FitCheck.of(pattern, row.body(), make.fabric(), make.boot(), make.style(), make.machines());
    }

    /** The largest group of sizes with the same pieces and edges; of equal ones the first. */
    private static List<Size> alike(List<Size> sizes) {
        Map<List<String>, List<Size>> groups = new LinkedHashMap<>();
        for (Size size : sizes) {
            groups.computeIfAbsent(Nest.structure(size.pattern), s -> new ArrayList<>())
                    .add(size);
        }
        List<Size> largest = List.of();
        for (List<Size> group : groups.values()) {
            largest = group.size() > largest.size() ? group : largest;
        }
        return largest;
    }

    public List<Finding> findings() {
        return findings;
    }

    /** How many sizes lie in the nest. */
    public int count() {
        return sizes.size();
    }

    /** Whether the garment cannot work as asked, in any size. */
    public boolean stops() {
        return sizes.stream().anyMatch(s -> s.fit.stops());
    }

    /** Empty where no row could be drafted. */
    public List<Document> documents() {
        return nest.map(n -> List.of(
                        SizesText.json(make, n, sizes),
                        NestSvg.of(n, make.name()),
                        nestOnPaper(n),
                        OpenFormats.nest(
                                n,
                                sizes.stream()
                                        .map(s -> OpenFormats.handover(make, s.pattern, s.name))
                                        .toList()),
                        SizesText.dimensions(n, sizes),
                        SizesText.grade(n)))
                .orElse(List.of());
    }

    private Document nestOnPaper(Nest n) {
        Voice voice = Voice.of(make.unit());
        List<String> stops = sizes.stream()
                .flatMap(s -> s.fit.verdicts().stream()
                        .filter(v -> v.severity() == FitReport.Severity.STOP)
                        .map(v -> voice.say(Tell.said(
                                "sizes.stop", Part.text(s.name), v.message().and(v.remedy())))))
                .toList();
        NestJob job = new NestJob(
                n,
                sizes.stream().map(Size::pattern).toList(),
                make.name(),
                make.unit(),
                make.fabric(),
                OpenFormats.cloths(make),
                stops);
        return NestPdf.of(job, make.print().sheet().orElseThrow());
    }

    /** One line per size, and the stops behind it. */
    public List<String> summary() {
        Lines lines = new Lines(Voice.of(make.unit()), COLUMN);
        for (Size s : sizes) {
            lines.about(Part.text(s.name), s.fit.count());
        }
        return lines.all();
    }

    /** The verdicts that stop, per size. */
    public List<String> stopLines() {
        Voice voice = Voice.of(make.unit());
        List<String> lines = new ArrayList<>();
        for (Size s : sizes) {
            s.fit.verdicts().stream()
                    .filter(v -> v.severity() == FitReport.Severity.STOP)
                    .forEach(v -> lines.add(voice.say(Tell.said("sizes.stop", Part.text(s.name), v.line()))));
        }
        return lines;
    }
}
