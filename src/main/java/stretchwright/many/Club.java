package stretchwright.many;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import stretchwright.body.Body;
import stretchwright.fabric.Fabric;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Progress;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.intake.OneRoll;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothLay;
import stretchwright.lay.ClothUse;
import stretchwright.lay.ClubLay;
import stretchwright.lay.Laying;
import stretchwright.lay.OnHand;
import stretchwright.lay.SearchWork;
import stretchwright.make.Cloths;
import stretchwright.make.Rooms;
import stretchwright.make.Stages;
import stretchwright.pattern.LayTerms;
import stretchwright.print.cloth.ClubSheets;
import stretchwright.print.kit.Paper;

/**
 * Many makes laid together on one roll. In: make files of the same cloth, each drafted and judged. Out: tables of laid
 * garments, what to buy for all, and what that saves against laying each alone; club.json, a drawing of each table,
 * club.pdf. Pure but for the clock that may end the search.
 */
public final class Club {
    /** More in one lay are not tried; a limit of our own. */
    public static final int MOST = 60;

    private final List<ClubMember> members;
    private final Wish wish;
    private final List<ClubLay.Table> tables;
    private final Map<String, Double> alone;
    private final boolean stopped;

    private Club(List<ClubMember> members, Wish wish, List<ClubLay.Table> tables, Map<String, Double> alone) {
        this.members = List.copyOf(members);
        this.wish = wish;
        this.tables = List.copyOf(tables);
        this.alone = alone;
        this.stopped = wish.work().clock().beside().stop();
    }

    /**
     * What is asked besides the makes.
     *
     * @param table its length, mm; empty where the cloth is spread in one go
     */
    public record Wish(OptionalDouble table, SearchWork work) {}

    /**
     * @param makes one for each pair; the same file may stand there several times
     * @throws BadInput where one cannot be drafted, they cannot lie on one roll, or one does not lie on the table
     */
    public static Club of(List<MakeFile> makes, Wish wish, Progress progress) {
        List<Finding> wrong = new ArrayList<>(OneRoll.findings(makes));
        Fabric fabric = makes.get(0).cloth();
        if (wish.table().isPresent() && !fabric.roll().shape().whole()) {
            Findings shape = new Findings(makes.get(0).file());
            shape.add("fabric", Tell.said("club.shape"), Tell.said("club.no-table"));
            wrong.addAll(shape.all());
        }
        List<ClubMember> members = drafted(makes, wrong, progress);
        if (!wrong.isEmpty()) {
            throw new BadInput(wrong);
        }
        // first, as nothing but writing may follow a search that was stopped
        Map<String, Double> alone = alone(members, fabric, wish.work());
        List<ClubLay.Table> tables = tables(members, wish);
        Voice voice = Voice.of(makes.get(0).unit());
        progress.say(voice.say(
                tables.size() == 1
                        ? Tell.said("club.progress-lay-one")
                        : Tell.said("club.progress-lay", Part.count(tables.size()))));
        Club club = new Club(members, wish, tables, alone);
        progress.say(voice.say(Tell.said("club.progress-alone", Part.cloth(club.alone()))));
        return club;
    }

    private static List<ClubLay.Table> tables(List<ClubMember> members, Wish wish) {
        MakeFile first = members.get(0).make();
        Findings findings = new Findings("club", first.unit());
        List<ClubLay.Table> tables = ClubLay.lay(
                members.stream().map(ClubMember::garment).toList(),
                first.cloth(),
                first.style().lay(),
                wish.table(),
                wish.work(),
                findings);
        if (!findings.isEmpty()) {
            throw new BadInput(findings.all());
        }
        return tables;
    }

    /** Each file once, however many pairs of it are wanted. */
    private static List<ClubMember> drafted(List<MakeFile> makes, List<Finding> wrong, Progress progress) {
        Stages stages = new Rooms();
        List<String> names = ClubMember.names(makes);
        Map<String, Optional<ClubMember>> byFile = new LinkedHashMap<>();
        List<ClubMember> out = new ArrayList<>();
        for (int i = 0; i < makes.size(); i++) {
            MakeFile make = makes.get(i);
            String name = names.get(i);
            Optional<ClubMember> one =
                    byFile.computeIfAbsent(make.file(), f -> drafted(name, make, stages, wrong, progress));
            one.map(m -> new ClubMember(name, m.make(), m.pattern(), m.fit())).ifPresent(out::add);
        }
        return out;
    }

    private static Optional<ClubMember> drafted(
            String name, MakeFile make, Stages stages, List<Finding> wrong, Progress progress) {
        Findings findings = new Findings(make.file(), make.unit());
        Optional<Body> body = stages.body(make.measured(), findings);
        Optional<ClubMember> member = body.flatMap(b ->
                stages.draft(b, make, findings).map(p -> new ClubMember(name, make, p, stages.judge(p, b, make))));
        member.ifPresent(m -> Cloths.mustMatch(m.pattern(), make, findings));
        if (findings.isEmpty()) {
            member.ifPresent(m -> mustFit(m, findings));
        }
        wrong.addAll(findings.all());
        member.ifPresent(m -> progress.say(Voice.of(make.unit())
                .say(Tell.said(
                        "club.progress-drafted",
                        Part.text(name),
                        Part.count(m.pattern().pieces().size()),
                        m.fit().count()))));
        return findings.isEmpty() ? member : Optional.empty();
    }

    /** Findings where a piece is wider than the cloth, as make says it. */
    private static void mustFit(ClubMember member, Findings findings) {
        MakeFile make = member.make();
        Laying.fits(member.garment().pieces(), make.cloth(), make.style().lay(), findings);
    }

    /** By file, mm. They know nothing of each other and may be laid side by side. */
    private static Map<String, Double> alone(List<ClubMember> members, Fabric fabric, SearchWork work) {
        LayTerms terms = members.get(0).make().style().lay();
        Map<String, ClubMember> files = new LinkedHashMap<>();
        members.forEach(m -> files.putIfAbsent(m.make().file(), m));
        List<Double> lengths = files.values().parallelStream()
                .map(m -> Laying.estimate(
                                m.garment().pieces(),
                                fabric,
                                terms,
                                work.seed(),
                                work.clock().beside())
                        .orElseThrow())
                .toList();
        Map<String, Double> out = new LinkedHashMap<>();
        files.keySet().forEach(f -> out.put(f, lengths.get(out.size())));
        return out;
    }

    List<ClubMember> members() {
        return members;
    }

    Wish wish() {
        return wish;
    }

    public List<ClubLay.Table> tables() {
        return tables;
    }

    Fabric fabric() {
        return members.get(0).make().cloth();
    }

    LayTerms terms() {
        return members.get(0).make().style().lay();
    }

    Unit unit() {
        return members.get(0).make().unit();
    }

    /** Length of all lays, mm. */
    double length() {
        return tables.stream().mapToDouble(t -> t.lay().length()).sum();
    }

    Buying buying(ClubLay.Table table) {
        return Buying.of(table.lay().length(), fabric(), Buying.Counter.of(unit()));
    }

    Buying buying() {
        return Buying.together(tables.stream().map(this::buying).toList());
    }

    /** Whether the cloth that the first of the files to tell it has on hand is enough; no other lay is tried. */
    Optional<OnHand> onHand() {
        return members.stream()
                .flatMapToDouble(m -> m.make().cloth().roll().onHand().stream())
                .boxed()
                .findFirst()
                .map(have -> new OnHand(have, OnHand.needed(length(), fabric(), buying()), List.of()));
    }

    /** The tables with what follows from their lays. */
    private List<ClothLay> laid() {
        Buying.Counter counter = Buying.Counter.of(unit());
        return tables.stream()
                .map(t -> new ClothLay(
                        fabric(),
                        t.pieces(),
                        t.lay(),
                        ClothUse.of(t.lay(), t.pieces(), fabric(), terms().matchAt(), counter, Optional.empty())))
                .toList();
    }

    /** The names of the cloths that some pieces are cut from instead, each once; empty where there are none. */
    String contrasts() {
        return members.stream()
                .flatMap(m -> m.make().contrasts().stream())
                .map(c -> c.fabric().roll().name())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    double alone(ClubMember member) {
        return alone.getOrDefault(member.make().file(), 0.0);
    }

    /** Length of the lays of all garments, each laid by itself, mm. */
    double alone() {
        return members.stream().mapToDouble(this::alone).sum();
    }

    /** Share of the cloth of single lays; negative where the club lay is longer. */
    double saved() {
        return 1 - length() / alone();
    }

    /** Whether the search was told to stop before its rounds were done: they do not give its lays again. */
    boolean stopped() {
        return stopped;
    }

    /** Whether one of the garments cannot work as asked. */
    public boolean stops() {
        return members.stream().anyMatch(m -> m.fit().stops());
    }

    /** The verdicts that stop, by garment. */
    public List<String> stopLines() {
        return members.stream().flatMap(m -> m.stops().stream()).toList();
    }

    public List<String> summary() {
        return ClubText.summary(this);
    }

    /** The first one is club.json. */
    public List<Document> documents() {
        Paper paper = Paper.of(members.get(0).make().print().paper()).orElseThrow();
        Map<String, String> elsewhere = new LinkedHashMap<>();
        members.forEach(m -> m.elsewhere().ifPresent(pieces -> elsewhere.put(m.name(), pieces)));
        List<Document> sheets = new ClubSheets(tables, laid(), unit(), paper, buying(), elsewhere).documents();
        List<Document> all = new ArrayList<>(List.of(ClubJson.document(this, sheets)));
        all.addAll(sheets);
        return all;
    }
}
