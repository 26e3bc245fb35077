package stretchwright.wearing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Numbers;
import stretchwright.ground.Unit;
import stretchwright.intake.Echo;
import stretchwright.intake.MakeFile;
import stretchwright.intake.OwnUnit;
import stretchwright.intake.WearingApplied;
import stretchwright.intake.WearingEntry;
import stretchwright.intake.WearingKey;
import stretchwright.intake.WearingReader;
import stretchwright.intake.WearingSymptom;
import stretchwright.report.ReportWearer;
import tools.jackson.databind.node.ObjectNode;

/**
 * After wearing: from what the worn garment does to one bounded change of the next one. In: a make file and a symptom
 * (and the answer, where two opposite cures need it). Out: what to change and why, or that the cure is not in the pattern;
 * what the fit check says with the change; and the make file's text with the change written at its end.
 */
public final class Wearing {
    private final MakeFile make;
    private final WearingSymptom symptom;
    private final Optional<WearingEntry> entry;
    private final Optional<MakeFile> changed;
    private final List<Finding> findings;
    private final WearingSymptom.Cure cure;

    private Wearing(
            MakeFile make,
            WearingSymptom symptom,
            WearingSymptom.Cure cure,
            Optional<WearingEntry> entry,
            Optional<MakeFile> changed,
            List<Finding> findings) {
        this.make = make;
        this.symptom = symptom;
        this.cure = cure;
        this.entry = entry;
        this.changed = changed;
        this.findings = findings;
    }

    /** The symptoms by name, as they are typed. */
    public static List<String> symptoms() {
        return WearingSymptom.names();
    }

    /** Whether the symptom is known; otherwise a finding with the nearest one. */
    public static boolean knows(String words, Findings findings) {
        boolean known = WearingSymptom.of(words).isPresent();
        if (!known) {
            findings.add(
                    "", Echo.quoted(words) + " is not a symptom that is known here.", WearingSymptom.nearest(words));
        }
        return known;
    }

    /** The question that decides between two opposite cures; empty where there is none. */
    public static Optional<String> question(String known) {
        return WearingSymptom.of(known).filter(WearingSymptom::asks).map(WearingSymptom::question);
    }

    /**
     * @param known a symptom that is known
     * @param answer "yes" or "no", or empty where nothing is asked
     * @param date of the try-on, year-month-day
     */
    public static Wearing of(MakeFile make, String known, String answer, String date) {
        WearingSymptom symptom = WearingSymptom.of(known).orElseThrow();
        WearingSymptom.Cure cure = symptom.cure(answer);
        Findings findings = new Findings(make.file());
        if (!WearingReader.isDate(date)) {
            findings.add("--date", Echo.quoted(date) + " is not a date.", "Write year-month-day: 2026-01-31.");
        }
        if (!cure.steps().isEmpty() && make.worn().size() >= WearingReader.MOST) {
            findings.add(
                    WearingReader.SECTION,
                    "has " + make.worn().size() + " entries, and there is room for " + WearingReader.MOST + ".",
                    "Measure again, write the new measures, and start with this section left out.");
        }
        Map<WearingKey, Double> next = next(make, cure, findings);
        if (next.isEmpty() || !findings.isEmpty()) {
            return new Wearing(make, symptom, cure, Optional.empty(), Optional.empty(), findings.all());
        }
        WearingEntry entry = new WearingEntry(date, symptom.name(), symptom.asks() ? answer : "", next);
        List<WearingEntry> history = new ArrayList<>(make.worn());
        history.add(entry);
        // the style holds the earlier changes already; only the new one is to be made on it
        MakeFile plain = make.worn(make.style(), List.of());
        Optional<MakeFile> changed =
                WearingApplied.on(plain, List.of(entry), findings).map(m -> make.worn(m.style(), history));
        WearingApplied.sums(history).forEach((key, sum) -> bounded(key, sum, findings));
        if (findings.isEmpty()
                && changed.map(MakeFile::style).filter(make.style()::equals).isPresent()) {
            findings.add(
                    WearingReader.SECTION,
                    "the make has this change already: " + entry.changeText() + ".",
                    "Measure again instead.");
        }
        return new Wearing(
                make,
                symptom,
                cure,
                Optional.of(entry),
                findings.isEmpty() ? changed : Optional.empty(),
                findings.all());
    }

    private static void bounded(WearingKey key, double sum, Findings findings) {
        if (!key.isChoice() && !key.range().holds(sum)) {
            findings.add(
                    key.word(),
                    "all changes after wearing together would be " + key.shown(sum) + ", more than makers change.",
                    "Measure again instead.");
        }
    }

    /** The next step of each change, or what is left of it; a finding where nothing is left. */
    private static Map<WearingKey, Double> next(MakeFile make, WearingSymptom.Cure cure, Findings findings) {
        Map<WearingKey, Double> sums = WearingApplied.sums(make.worn());
        Map<WearingKey, Double> next = new LinkedHashMap<>();
        for (WearingSymptom.Step step : cure.steps()) {
            double so = sums.getOrDefault(step.key(), 0.0);
            double left = step.limit() > 0 ? step.limit() - so : so - step.limit();
            double mm = Math.min(Math.abs(step.by()), left);
            if (mm >= 1) {
                next.put(step.key(), Math.copySign(mm, step.by()));
            }
        }
        if (next.isEmpty() && !cure.steps().isEmpty()) {
            WearingSymptom.Step first = cure.steps().get(0);
            findings.add(
                    WearingReader.SECTION,
                    first.key().isChoice()
                            ? "the make has " + first.key().word() + ": "
                                    + first.key().choice() + " already."
                            : first.key().word() + " has been changed as far as makers go ("
                                    + first.key().shown(first.limit()) + ").",
                    "Measure again instead.");
        }
        return next;
    }

    public List<Finding> findings() {
        return OwnUnit.findings(findings, make.unit());
    }

    /** Whether the cure is in the pattern, and not in cloth, cutting or sewing. */
    public boolean changesThePattern() {
        return changed.isPresent();
    }

    /** The make with the change. */
    public MakeFile changed() {
        return changed.orElse(make);
    }

    /** What is the matter and what is changed. */
    public List<String> words() {
        Unit unit = make.unit();
        List<String> lines = new ArrayList<>();
        lines.add(symptom.name() + ": " + OwnUnit.text(cure.why(), unit));
        if (entry.isPresent()) {
            lines.add("  change    " + OwnUnit.text(entry.get().changeText(), unit)
                    + "  (common practice, no source; one step, then try on again)");
            lines.add("  bounds    " + OwnUnit.text(limits(), unit));
        } else if (findings.isEmpty()) {
            lines.add("  change    none: the pattern stays as it is");
        }
        return lines;
    }

    private String limits() {
        List<String> all = new ArrayList<>();
        cure.steps()
                .forEach(s -> all.add(
                        s.key().isChoice()
                                ? s.key().word() + ": once"
                                : s.key().word() + ": up to " + s.key().shown(s.limit()) + " in all"));
        return String.join(", ", all);
    }

    /** The same for other programs: what is changed by how many mm, and how far it may go in all. */
    void json(ObjectNode out) {
        out.put("symptom", symptom.name()).put("why", cure.why());
        entry.ifPresent(e -> out.put("date", e.date()));
        entry.filter(e -> !e.answer().isEmpty()).ifPresent(e -> out.put("answer", e.answer()));
        ObjectNode change = out.putObject("change");
        entry.ifPresent(e -> ReportWearer.change(change, e));
        ObjectNode bounds = out.putObject("bounds");
        cure.steps().stream()
                .filter(s -> !s.key().isChoice())
                .forEach(s -> bounds.put(s.key().word(), Numbers.mm(s.limit())));
    }

    /** The make file's text with the change at the end of its history; a finding where it must be done by hand. */
    public Optional<String> written(String text, Findings about) {
        return entry.flatMap(e -> WearingText.with(text, e, make, about));
    }
}
