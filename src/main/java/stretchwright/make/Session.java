package stretchwright.make;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stretchwright.advice.Advised;
import stretchwright.advice.Remedies;
import stretchwright.advice.Remedy;
import stretchwright.body.Body;
import stretchwright.fit.FitReport;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Placed;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Style;
import stretchwright.print.Printable;
import stretchwright.print.Printing;
import stretchwright.print.kit.FileGroup;
import stretchwright.print.sheets.SheetMap;
import stretchwright.report.Report;
import stretchwright.sewing.SewingPlan;

/**
 * One make, stage by stage: body, draft, fit, advice, lay, sewing, and each document by its name. Each is asked for alone and
 * computed once; whoever asks for the lay has the draft made, and nobody has the fit checked who does not ask for it.
 *
 * <p>In: a make file that was read. Out: what a stage gives, or {@link BadInput} with everything that is wrong. With a changed
 * make ({@link #with}) all stages stay whose inputs did not change. May be asked from several threads.
 */
public final class Session {
    private final MakeFile make;
    private final Stages rooms;
    private final Stage<Body> body;
    private final Stage<Pattern> pattern;
    private final Stage<FitReport> fit;
    private final Stage<Advised> advised;
    private final Map<Integer, Placed> places;
    private final Stage<List<ClothLay>> usualLays;
    private final Stage<List<ClothLay>> lays;
    private final Stage<SewingPlan> sewing;
    private final Stage<Map<String, Stage<Document>>> documents;
    private final Stage<List<Printable>> printables;
    private final Stage<Map<String, Stage<Document>>> drawn;
    private final Stage<Map<String, Stage<Document>>> steps;
    private final Stage<SheetMap> sheets;

    private Session(MakeFile make, Stages rooms, Map<Integer, Placed> places, @Nullable Session earlier) {
        this.make = make;
        this.rooms = rooms;
        this.places = Map.copyOf(places);
        Style unlaid = make.style()
                .with(LayTerms.of(Style.LayWay.ANY).crosswise(make.style().lay().crosswise()));
        body = stage(earlier, s -> s.body, List.of(make.measured()), () -> need(f -> rooms.body(make.measured(), f)));
        pattern = stage(
                earlier,
                s -> s.pattern,
                List.of(body.inputs(), make.fabric(), make.boot(), unlaid, make.machines()),
                () -> need(f -> rooms.draft(body(), make, f)));
        fit = stage(earlier, s -> s.fit, pattern.inputs(), () -> rooms.fit(pattern(), body(), make));
        advised = stage(
                earlier,
                s -> s.advised,
                List.of(fit.inputs(), make.unit()),
                () -> Remedies.advised(make, body(), pattern(), fit(), rooms));
        usualLays = stage(
                earlier,
                s -> s.usualLays,
                List.of(pattern.inputs(), make.contrasts(), make.style().lay(), make.seed(), make.unit()),
                () -> need(f -> Cloths.laid(pattern(), make, rooms, f)));
        lays = stage(
                earlier,
                s -> s.lays,
                List.of(usualLays.inputs(), this.places),
                () -> Cloths.put(usualLays.get(), this.places, make, rooms));
        sewing = stage(earlier, s -> s.sewing, List.of(fit.inputs(), make.sewing(), make.unit()), this::planned);
        printables = stage(
                earlier,
                s -> s.printables,
                List.of(advised.inputs(), lays.inputs(), sewing.inputs(), make.name(), make.wearer(), make.print()),
                () -> rooms.printables(make, pattern(), advised(), lays(), sewing()));
        drawn = stage(
                earlier,
                s -> s.drawn,
                List.of(pattern.inputs(), make.contrasts(), make.unit(), make.name(), make.wearer(), make.print()),
                () -> unmade(rooms.drawn(make, pattern())));
        steps = stage(
                earlier,
                s -> s.steps,
                List.of(sewing.inputs(), drawn.inputs()),
                () -> unmade(rooms.steps(make, pattern(), fit(), sewing())));
        sheets = stage(
                earlier,
                s -> s.sheets,
                List.of(pattern.inputs(), make.print()),
                () -> SheetMap.of(pattern(), make.print().sheet().orElseThrow()));
        documents = stage(earlier, s -> s.documents, printables.inputs(), this::all);
    }

    public static Session of(MakeFile make) {
        return of(make, new Rooms());
    }

    static Session of(MakeFile make, Stages rooms) {
        return new Session(make, rooms, Map.of(), null);
    }

    /** Another make, or this one changed: what does not depend on the change is not computed again. */
    public Session with(MakeFile changed) {
        return new Session(changed, rooms, places, this);
    }

    /**
     * The same with pieces put on some cloths by hand or by a longer search, by the number of the cloth in {@link #lays}. Where such
     * a lay does not hold, of this pattern or on this cloth, the usual one stands.
     */
    public Session put(Map<Integer, Placed> put) {
        return put.equals(places) ? this : new Session(make, rooms, put, this);
    }

    private static <T> Stage<T> stage(
            @Nullable Session earlier, Function<Session, Stage<T>> same, List<Object> inputs, Supplier<T> rule) {
        Stage<T> anew = new Stage<>(inputs, rule);
        return earlier == null ? anew : anew.unless(same.apply(earlier));
    }

    public MakeFile make() {
        return make;
    }

    public Body body() {
        return body.get();
    }

    public Pattern pattern() {
        return pattern.get();
    }

    /** The fit check's verdicts, nothing tried on them yet. */
    public FitReport fit() {
        return fit.get();
    }

    /** The same numbers, and with the verdicts the remedies that were tried. */
    public FitReport advised() {
        return advised.get().report();
    }

    /** The changes that turn a verdict. */
    public List<Remedy> remedies() {
        return advised.get().remedies();
    }

    /** The fabric's own first, then one for each contrast. */
    public List<ClothLay> lays() {
        return lays.get();
    }

    /** One of the cloths with the usual lay on it: to be put by hand, or searched on. */
    public Laid laid(int cloth) {
        return new Laid(
                usualLays.get().get(cloth),
                Cloths.fabric(cloth, make),
                make.style().lay());
    }

    public SewingPlan sewing() {
        return sewing.get();
    }

    /** How the pattern lies on the sheets of its paper. */
    public SheetMap sheets() {
        return sheets.get();
    }

    /** What can be had, by name; report.json besides. */
    public List<Printable> printables() {
        return printables.get();
    }

    /** The drawing of a step of the sewing; empty where it has no edges to show. Nothing is laid for it. */
    public Optional<Document> step(int number) {
        return Optional.ofNullable(steps.get().get(Printing.stepName(number))).map(Stage::get);
    }

    /** One file; empty where the make has none of that name. What is drawn of the pattern alone asks for nothing else. */
    public Optional<Document> document(String name) {
        Stage<Document> alone = drawn.get().get(name);
        if (alone != null) {
            return Optional.of(alone.get());
        }
        return name.equals(Report.NAME)
                ? Optional.of(report(List.of()))
                : Optional.ofNullable(documents.get().get(name)).map(Stage::get);
    }

    /** The files of these groups, made side by side. */
    public List<Document> documents(Set<FileGroup> groups) {
        Map<String, Stage<Document>> all = documents.get();
        return printables().parallelStream()
                .filter(p -> groups.contains(p.group()))
                .map(p -> Objects.requireNonNull(all.get(p.name())).get())
                .toList();
    }

    private Map<String, Stage<Document>> all() {
        Map<String, Stage<Document>> all = unmade(printables());
        all.putAll(drawn.get());
        all.putAll(steps.get());
        return all;
    }

    private static Map<String, Stage<Document>> unmade(List<Printable> printables) {
        Map<String, Stage<Document>> unmade = new LinkedHashMap<>();
        printables.forEach(p -> unmade.put(p.name(), new Stage<>(List.of(), p::made)));
        return unmade;
    }

    /** @param others files that it lists besides itself */
    public Document report(List<Document> others) {
        return Report.document(make, body(), pattern(), advised(), lays(), sewing(), others);
    }

    /** Everything, with the files of these groups. */
    public Made made(Set<FileGroup> groups) {
        List<Document> files = documents(groups);
        return new Made(
                make,
                body(),
                pattern(),
                advised(),
                lays(),
                sewing(),
                Stream.concat(files.stream(), Stream.of(report(files))).toList());
    }

    private SewingPlan planned() {
        try {
            return rooms.sewing(pattern(), make, fit());
        } catch (BadInput e) {
            Findings findings = new Findings(make.file(), make.unit());
            e.findings().forEach(f -> findings.add(f.key(), f.wrong(), f.right()));
            throw new BadInput(findings.all());
        }
    }

    private interface Room<T> {
        Optional<T> of(Findings findings);
    }

    private <T> T need(Room<T> room) {
        Findings findings = new Findings(make.file(), make.unit());
        Optional<T> result = room.of(findings);
        if (!findings.isEmpty()) {
            throw new BadInput(findings.all());
        }
        return result.orElseThrow(() -> new IllegalStateException("a stage gave neither a result nor a finding"));
    }
}
