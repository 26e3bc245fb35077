package stretchwright.wearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.intake.Echo;
import stretchwright.intake.MakeFile;
import stretchwright.intake.WearingApplied;
import stretchwright.intake.WearingEntry;
import stretchwright.intake.WearingKey;
import stretchwright.intake.WearingReader;
import stretchwright.intake.WearingSymptom;
import stretchwright.make.WornWords;
import stretchwright.wearing.Cure.Step;

/**
 * After wearing: from what the worn garment does to one bounded change of the next one. In: a make file and a symptom
 * (and the answer, where two opposite cures need it). Out: what to change and why, or that the cure is not in the pattern;
 * what the fit check says with the change; and the make file's text with the change written at its end.
 */
public final class Wearing {
    private static final Said AGAIN = Tell.said("measure-again");

    private final MakeFile make;
    private final WearingSymptom symptom;
    private final Said why;
    private final Optional<Change> change;
    private final List<Finding> findings;

    /** One change and the make that it gives. */
    private record Change(List<Step> steps, WearingEntry entry, MakeFile changed) {}

    private Wearing(MakeFile make, WearingSymptom symptom, Said why, Optional<Change> change, List<Finding> findings) {
        this.make = make;
        this.symptom = symptom;
        this.why = why;
        this.change = change;
        this.findings = findings;
    }

    /** The symptoms by name, as they are typed. */
    public static List<String> symptoms() {
        return WearingSymptom.names();
    }

    /** Whether the symptom is known; otherwise a finding with the nearest ones. */
    public static boolean knows(String words, Findings findings) {
        boolean known = WearingSymptom.of(words).isPresent();
        if (!known) {
            List<Part.Text> near = Near.to(words).stream()
                    .map(s -> Part.text(Echo.quoted(s.word())))
                    .toList();
            findings.add(
                    "",
                    Tell.said("symptom.unknown", Part.text(Echo.quoted(words))),
                    near.isEmpty()
                            ? Tell.said("symptom.listed")
                            : Tell.said("symptom.meant", Part.listed(Part.Join.OR, near)));
        }
        return known;
    }

    /** The question that decides between two opposite cures; empty where there is none. */
    public static Optional<Said> question(String known) {
        return WearingSymptom.of(known).flatMap(Cures::question);
    }

    /**
     * @param known a symptom that is known
     * @param answer "yes" or "no", or empty where nothing is asked
     * @param date of the try-on, year-month-day
     */
    public static Wearing of(MakeFile make, String known, String answer, String date) {
        WearingSymptom symptom = WearingSymptom.of(known).orElseThrow();
        Cure cure = Cures.of(symptom, answer);
        Findings findings = new Findings(make.file(), make.unit());
        if (!WearingReader.isDate(date)) {
            Findings aboutArguments = new Findings("after");
            aboutArguments.add(
                    "--date", Tell.said("date.is-not", Part.text(Echo.quoted(date))), Tell.said("date.write"));
            findings.addAll(aboutArguments.all());
        }
        if (!cure.ways().isEmpty() && make.worn().size() >= WearingReader.MOST) {
            findings.add(
                    WearingReader.SECTION,
                    Tell.said("history.full", Part.count(make.worn().size()), Part.count(WearingReader.MOST)),
                    Tell.said("history.start-again"));
        }
        Optional<Change> change = findings.isEmpty()
                ? new Trying(make, symptom, symptom.asks() ? answer : "", date).first(cure.ways(), findings)
                : Optional.empty();
        return new Wearing(make, symptom, cure.why(), change, findings.all());
    }

    /** Looks for the first way that the make can take. */
    private record Trying(MakeFile make, WearingSymptom symptom, String answer, String date) {
        /** Where none goes, what was wrong with the last one. */
        Optional<Change> first(List<List<Step>> ways, Findings findings) {
            List<Finding> wrong = List.of();
            for (List<Step> way : ways) {
                Findings about = new Findings(make.file(), make.unit());
                Optional<Change> change = way(way, about);
                if (change.isPresent()) {
                    return change;
                }
                wrong = about.all();
            }
            findings.addAll(wrong);
            return Optional.empty();
        }

        private Optional<Change> way(List<Step> steps, Findings findings) {
            Map<WearingKey, Double> next = Bounds.next(make, steps, findings);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            WearingEntry entry = new WearingEntry(date, symptom.word(), answer, next);
            List<WearingEntry> history = new ArrayList<>(make.worn());
            history.add(entry);
            // the make holds the earlier changes already; only the new one is to be made on it
            MakeFile plain = make.worn(make.style(), List.of());
            Optional<MakeFile> changed =
                    WearingApplied.on(plain, List.of(entry), findings).map(m -> m.worn(m.style(), history));
            Bounds.all(history, findings);
            if (findings.isEmpty() && changed.filter(this::isDifferent).isEmpty()) {
                findings.add(
                        WearingReader.SECTION, Tell.said("history.has-it", WornWords.change(entry.change())), AGAIN);
            }
            return changed.filter(m -> findings.isEmpty()).map(m -> new Change(steps, entry, m));
        }

        private boolean isDifferent(MakeFile changed) {
            return !changed.style().equals(make.style()) || !changed.measured().equals(make.measured());
        }
    }

    public List<Finding> findings() {
        return findings.stream().map(f -> f.in(make.unit())).toList();
    }

    /** Whether the cure is in the pattern, and not in cloth, cutting or sewing. */
    public boolean changesThePattern() {
        return change.isPresent();
    }

    /** The make with the change. */
    public MakeFile changed() {
        return change.map(Change::changed).orElse(make);
    }

    public WearingSymptom symptom() {
        return symptom;
    }

    /** The likely cause and what else to do. */
    public Said why() {
        return why;
    }

    /** What is written down; empty where nothing is changed. */
    Optional<WearingEntry> entry() {
        return change.map(Change::entry);
    }

    /** What is changed, with how far each may go in all. */
    List<Step> steps() {
        return change.map(Change::steps).orElse(List.of());
    }

    /** The make file's text with the change at the end of its history; a finding where it must be done by hand. */
    public Optional<String> written(String text, Findings about) {
        return change.flatMap(c -> WearingText.with(text, c.entry(), c.changed(), about));
    }
}
