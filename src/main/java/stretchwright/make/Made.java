package stretchwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stretchwright.body.Body;
import stretchwright.body.Measuring;
import stretchwright.fit.FitReport;
import stretchwright.ground.Document;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClothLay;
import stretchwright.lay.ClothUse;
import stretchwright.lay.Lay;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.print.cloth.ClothWords;
import stretchwright.print.kit.Amounts;
import stretchwright.sewing.SewingPlan;

/**
 * Everything a make file became.
 *
 * @param lays the fabric's own first, then one for each contrast
 * @param documents what is to be written; the last one is report.json
 */
public record Made(
        MakeFile make,
        Body body,
        Pattern pattern,
        FitReport fit,
        List<ClothLay> lays,
        SewingPlan sewing,
        List<Document> documents) {
    public Made {
        lays = List.copyOf(lays);
        documents = List.copyOf(documents);
    }

    /** The lay on the make's own fabric. */
    public Lay lay() {
        return lays.get(0).lay();
    }

    public ClothUse use() {
        return lays.get(0).use();
    }

    /** What is cut from other cloths. */
    public List<ClothLay> contrasts() {
        return lays.subList(1, lays.size());
    }

    /** Whether the garment cannot work as asked. */
    public boolean stops() {
        return fit.stops();
    }

    /** The verdicts, one line each, most severe first; measures in doubt stand with the cautions. */
    public List<String> verdicts(boolean stopsOnly) {
        List<String> lines = new ArrayList<>();
        for (FitReport.Severity severity : FitReport.Severity.values()) {
            if (stopsOnly && severity != FitReport.Severity.STOP) {
                continue;
            }
            fit.verdicts().stream()
                    .filter(v -> v.severity() == severity)
                    .map(Verdicts::line)
                    .forEach(lines::add);
            if (severity == FitReport.Severity.CAUTION) {
                Voice voice = Voice.of(make.unit());
                Measuring.doubts(body).stream().map(d -> Verdicts.line(d, voice)).forEach(lines::add);
            }
        }
        return lines;
    }

    public Document report() {
        return documents.get(documents.size() - 1);
    }

    /** What a maker wants to know first, in a few lines. */
    public List<String> summary() {
        List<String> lines = new ArrayList<>();
        lines.add(make.name() + (make.wearer().isEmpty() ? "" : ", for " + make.wearer()));
        lines.addAll(cloth());
        use().onHand()
                .ifPresent(hand -> lines.add(
                        "  on hand        " + cloth(hand.have()) + ": " + ClothWords.onHand(hand, make.unit())));
        lines.add("  laid           " + lay().method().word() + ", " + floor(lay()));
        ClothWords.otherWays(lay(), make.unit()).forEach(w -> lines.add("                 " + w));
        contrastWords().forEach(c -> lines.add("  and            " + c));
        lines.add(String.format(
                Locale.ROOT,
                "  sewing         %.0f minutes for a practised sewer, changes of machine: %d",
                sewing.minutes(),
                sewing.changeovers()));
        Measuring.next(body)
                .ifPresent(next -> lines.add(String.format(
                        Locale.ROOT,
                        "  measure next   %s: what is estimated would vary %.0f %% less",
                        next.measure().term(),
                        next.narrows() * 100)));
        for (Document d : documents) {
            if (d.pages() > 1) {
                lines.add("  paper          " + d.name() + ", " + d.pages() + " pages");
            }
        }
        return lines;
    }

    private List<String> cloth() {
        double use = lay().use() * 100;
        if (make.fabric().roll().shape().outline().isPresent()) {
            return List.of(String.format(
                    Locale.ROOT,
                    "  fabric         the remnant on hand: %s of its length, %.0f %% of that used",
                    cloth(lay().length()),
                    use));
        }
        return List.of(
                String.format(
                        Locale.ROOT,
                        "  fabric to buy  %s of a cloth %s wide between the selvages (the lay needs %s, %.0f %% of it used)",
                        Amounts.bought(use().buying()),
                        width(make.fabric().roll().usableWidth()),
                        cloth(lay().length()),
                        use),
                "  that is        " + ClothWords.sum(use().buying(), make.unit()));
    }

    /** What to buy of each other cloth, and for what. */
    public List<String> contrastWords() {
        return contrasts().stream().map(Made::contrast).toList();
    }

    private static String contrast(ClothLay c) {
        String cloth = c.fabric().roll().shape().outline().isPresent()
                ? "the remnant of "
                : Amounts.bought(c.use().buying()) + " of ";
        return cloth + c.fabric().roll().name() + " for "
                + c.pieces().stream().map(Piece::name).collect(Collectors.joining(", ")) + ", laid "
                + c.lay().method().word();
    }

    /** How much shorter any lay could be at most. */
    private static String floor(Lay lay) {
        return lay.shortest()
                ? "and no lay that the make allows can be shorter"
                : String.format(
                        Locale.ROOT, "at most %.1f %% longer than the shortest there can be", 100 * lay.aboveFloor());
    }

    private String cloth(double mm) {
        Unit unit = make.unit() == Unit.IN ? Unit.YD : Unit.M;
        return String.format(Locale.ROOT, "%.2f %s", unit.fromMm(mm), unit.symbol());
    }

    private String width(double mm) {
        return String.format(
                Locale.ROOT, "%.1f %s", make.unit().fromMm(mm), make.unit().symbol());
    }
}
