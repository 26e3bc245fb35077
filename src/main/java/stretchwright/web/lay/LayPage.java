package stretchwright.web.lay;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.lay.Lay;
import stretchwright.lay.Placed;
import stretchwright.print.cloth.ClothWords;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.jobs.PieceSearch;

/**
 * How the pieces lie on the cloth, what a search is doing about it, and what can be done by hand.
 *
 * @param shown the cloth that is worked on
 * @param others the make's other cloths
 * @param ofCloth what was typed of the cloth and refused; empty else
 * @param wrong what could not be done
 */
public record LayPage(
        Frame frame,
        Opened make,
        Table table,
        Shown shown,
        List<Shown> others,
        Touched touched,
        Optional<PieceSearch> search,
        Form ofCloth,
        List<String> wrong) {
    public LayPage {
        others = List.copyOf(others);
        wrong = List.copyOf(wrong);
    }

    /** @param touched what was done by hand to the lay that stands */
    static LayPage of(Table table, Touched touched, Form ofCloth, List<String> wrong) {
        return new LayPage(
                Frame.of(table.make(), Frame.Stop.LAY),
                table.make(),
                table,
                table.shown(touched),
                table.others(),
                touched,
                table.search(),
                ofCloth,
                wrong);
    }

    /** A choice out of several. */
    public record Choice(String value, String words, String more, boolean chosen) {}

    public String address() {
        return make.address() + "/lay";
    }

    public int cloth() {
        return table.cloth();
    }

    /** With the cloth that is worked on. */
    public String here() {
        return cloth() == 0 ? address() : address() + "?cloth=" + cloth();
    }

    public boolean looking() {
        return search.filter(s -> !s.over()).isPresent();
    }

    /** How far a search has come, 0 to 1. */
    public String share() {
        return search.map(
                        s -> String.valueOf((double) s.job().reached() / s.job().asked()))
                .orElse("0");
    }

    public String job() {
        return search.map(s -> s.job().id()).orElse("");
    }

    public MayCut says() {
        return new Sentence(this).says();
    }

    public List<String> troubles() {
        return names().troubles();
    }

    /** Whether what was put by hand can be kept. */
    public boolean keeps() {
        return touched.placed().isPresent() && shown.troubles().isEmpty() && !make.demo();
    }

    /** Whether there may be something to find. */
    public boolean finds() {
        return !shown.lay().shortest() && shown.troubles().isEmpty() && !make.demo();
    }

    /** What is to be known of a lay that was kept before; empty for nothing. */
    public String gaveWay() {
        return table.gaveWay() ? say("lay.kept-no-more") : "";
    }

    /** Whether the lay that stands is not the one that was found at once. */
    public boolean own() {
        return table.gaveWay()
                || !make.demo()
                        && !table.usual()
                                .placements()
                                .equals(table.standing().lay().placements());
    }

    public String wide() {
        return drawing(shown, LayDrawing.Room.WIDE, here());
    }

    public String narrow() {
        return drawing(shown, LayDrawing.Room.NARROW, here());
    }

    /** Both of another cloth. */
    public String drawings(Shown other) {
        String there = address() + (other.number() == 0 ? "" : "?cloth=" + other.number());
        return drawing(other, LayDrawing.Room.WIDE, there) + drawing(other, LayDrawing.Room.NARROW, there);
    }

    public String other(Shown other) {
        return address() + "?cloth=" + other.number();
    }

    public String clothName(Shown of) {
        return of.fabric().roll().name();
    }

    private String drawing(Shown of, LayDrawing.Room room, String there) {
        return LayDrawing.of(of, make.voice(), make.session().make().unit(), room, there, described(of));
    }

    /** What a drawing shows, in words. */
    private String described(Shown of) {
        PieceNames names = new PieceNames(of, make.voice());
        List<Part> pieces = of.placements().stream()
                .map(p -> (Part) Part.text(names.label(p)))
                .toList();
        return say(Tell.said(
                "lay.described",
                of.lay().method().said(),
                Part.length(of.lay().fabricWidth()),
                Part.length(of.lay().length()),
                Part.listed(Part.Join.SEMICOLON, pieces),
                Part.count(of.fabric().roll().shape().flaws().size())));
    }

    private PieceNames names() {
        return new PieceNames(shown, make.voice());
    }

    /** The pieces that can be held. */
    public List<Choice> pieces() {
        return shown.placements().stream()
                .map(p -> new Choice(Placed.id(p), names().label(p), "", shown.isPicked(p)))
                .toList();
    }

    public boolean picked() {
        return shown.placements().stream().anyMatch(shown::isPicked);
    }

    public boolean pickedIsPinned() {
        return shown.pinned().contains(touched.picked());
    }

    public boolean turns() {
        return table.laid().turns();
    }

    /** What was done to the piece that is held. */
    public String held() {
        Optional<Lay.Placement> at =
                shown.placements().stream().filter(shown::isPicked).findFirst();
        if (at.isEmpty()) {
            return say(make.demo() ? "lay.hold-demo" : "lay.hold");
        }
        double moved = table.standing().lay().placements().stream()
                .filter(p -> Placed.id(p).equals(touched.picked()))
                .mapToDouble(
                        p -> Math.hypot(p.x() - at.get().x(), p.y() - at.get().y()))
                .findFirst()
                .orElse(0);
        boolean free = shown.troubles().stream()
                .noneMatch(t -> t.about(shown.placements().indexOf(at.get())));
        if (!free) {
            return "";
        }
        return moved < 0.01 ? say("lay.unmoved") : say(Tell.said("lay.moved", Part.length(Math.max(1, moved))));
    }

    /** How the cloth can lie, each way with what it needs. */
    public List<Choice> ways() {
        return table.ways().stream()
                .map(w -> new Choice(
                        w.method().word(),
                        say(w.method().said()),
                        say(Part.length(w.length())),
                        w.method() == table.standing().lay().method()))
                .toList();
    }

    public String why(Choice way) {
        return java.util.Arrays.stream(Lay.Method.values())
                .filter(m -> m.word().equals(way.value()))
                .findFirst()
                .map(ClothWords::why)
                .orElse("");
    }

    public List<String> leftOver() {
        return new Buys(make, table).leftOver(shown);
    }

    public List<String> toBuy() {
        return new Buys(make, table).lines();
    }

    public OwnCloth ownCloth() {
        return OwnCloth.of(make, ofCloth);
    }

    public String say(String key) {
        return say(Tell.said(key));
    }

    String say(Part part) {
        return part instanceof Said said ? make.voice().say(said) : make.voice().say(part);
    }
}
