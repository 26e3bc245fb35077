package stretchwright.make;

import java.util.ArrayList;
import java.util.List;
import stretchwright.body.Body;
import stretchwright.body.Measuring;
import stretchwright.fit.FitReport;
import stretchwright.ground.Document;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClothLay;
import stretchwright.lay.ClothUse;
import stretchwright.lay.Lay;
import stretchwright.pattern.Pattern;
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
    /** Letters of the column on the left of the summary. */
    public static final int COLUMN = 15;

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
        Voice voice = Voice.of(make.unit());
        List<String> lines = new ArrayList<>();
        for (FitReport.Severity severity : FitReport.Severity.values()) {
            if (stopsOnly && severity != FitReport.Severity.STOP) {
                continue;
            }
            fit.verdicts().stream()
                    .filter(v -> v.severity() == severity)
                    .map(v -> voice.say(v.line()))
                    .forEach(lines::add);
            if (severity == FitReport.Severity.CAUTION) {
                Measuring.doubts(body).stream()
                        .map(d -> voice.say(Tell.said(
                                "verdict.doubt", severity.said(), d.measure().said(), d.message())))
                        .forEach(lines::add);
            }
        }
        return lines;
    }

    public Document report() {
        return documents.get(documents.size() - 1);
    }

    /** What a maker wants to know first, in a few lines. */
    public List<String> summary() {
        return Summary.of(this);
    }

    /** What to buy of each other cloth, and for what. */
    public List<Said> contrastWords() {
        return Summary.contrasts(this);
    }
}
