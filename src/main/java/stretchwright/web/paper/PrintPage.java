package stretchwright.web.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.intake.Table;
import stretchwright.pattern.PieceName;
import stretchwright.print.kit.Paper;
import stretchwright.print.sheets.SheetMap;
import stretchwright.web.form.Field;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;

/**
 * Paper and sheets.
 *
 * @param chosen what is ticked
 * @param pages of the whole file
 * @param square what was said of the measured square: "yes", "smaller", "larger", or nothing
 * @param typed of the paper, as it stands in the make or was refused
 * @param wrong why something was refused
 */
public record PrintPage(
        Frame frame,
        Opened make,
        MayCut says,
        SheetMap map,
        Chosen chosen,
        Printed printed,
        int pages,
        String square,
        Form typed,
        List<String> wrong,
        List<FileList.Group> files) {
    public PrintPage {
        wrong = List.copyOf(wrong);
        files = List.copyOf(files);
    }

    /** A map of more columns takes the width that there is. */
    private static final int WIDEST = 9;

    /** A sheet on the map. */
    public record Cell(String name, boolean ticked, String shows, String window) {}

    /** A piece and the sheets that carry it. */
    public record Carried(String name, String address, String sheets) {}

    /** @param here whether it is the make's own */
    public record PaperPress(String name, boolean here) {}

    static String word(PieceName piece) {
        return Voice.plain().say(piece.said());
    }

    public List<PaperPress> papers() {
        return Paper.names().stream()
                .map(n -> new PaperPress(n, n.equals(map.paper().name())))
                .toList();
    }

    public String picture() {
        return Pictures.paper(map.paper(), paperIs());
    }

    public String paperIs() {
        Paper p = map.paper();
        return say(Tell.said(
                "print.paper-is",
                Part.text(p.name()),
                new Part.Number(p.width(), 1),
                new Part.Number(p.height(), 1),
                new Part.Number(p.margin(), 1)));
    }

    public String plane() {
        return Pictures.plane(map);
    }

    /** Row by row; empty where a sheet would be blank. */
    public List<List<Optional<Cell>>> rows() {
        return IntStream.range(0, map.rows())
                .mapToObj(row -> IntStream.range(0, map.columns())
                        .mapToObj(column -> map.sheets().stream()
                                .filter(s -> s.row() == row && s.column() == column)
                                .findFirst()
                                .map(this::cell))
                        .toList())
                .toList();
    }

    private Cell cell(SheetMap.Sheet s) {
        Part pieces = Part.listed(
                Part.Join.AND, s.pieces().stream().map(PieceName::said).toList());
        Said shows = Tell.said("print.sheet", Part.text(s.name()), pieces);
        return new Cell(
                s.name(),
                chosen.sheets().contains(s.name()),
                say(printed.holds(s) ? shows.and(Tell.said("print.sheet-holds")) : shows),
                Pictures.window(map, s));
    }

    /** How wide the map is drawn. */
    public String mapKind() {
        return "columns-" + Math.min(map.columns(), WIDEST);
    }

    public List<Carried> carried() {
        List<Carried> all = new ArrayList<>();
        for (SheetMap.Placed piece : map.pieces()) {
            String word = word(piece.name());
            String sheets = map.sheets().stream()
                    .filter(s -> s.pieces().contains(piece.name()))
                    .map(SheetMap.Sheet::name)
                    .collect(Collectors.joining(", "));
            all.add(new Carried(
                    say(new Part.Capital(piece.name().said())),
                    address() + "?only=" + java.net.URLEncoder.encode(word, java.nio.charset.StandardCharsets.UTF_8)
                            + "#sheets",
                    sheets));
        }
        return all;
    }

    /** Of the sheets that were printed before some are other now, or were never printed. */
    public boolean isChanged() {
        long holds = map.sheets().stream().filter(printed::holds).count();
        return holds > 0 && holds < map.sheets().size();
    }

    public boolean isPrinted() {
        return map.sheets().stream().allMatch(printed::holds);
    }

    public int firstPages() {
        return pages - map.sheets().size();
    }

    private long sheets() {
        return chosen.sheets().size() + (chosen.first() ? firstPages() : 0);
    }

    /** "Print 16 sheets"; of what should not be cut yet "Print anyway, as a test?" stands before it. */
    public String press() {
        return sheets() == 1 ? say("print.press-one") : say(Tell.said("print.press", Part.count(sheets())));
    }

    /** With a gap that the script fills. */
    public String pressMany() {
        return say(Tell.said("print.press", Part.text("{0}")));
    }

    public boolean isStop() {
        return says.mark() == MayCut.Mark.STOP;
    }

    public String address() {
        return make.address() + "/print";
    }

    /** What a key of the make is, and what is taken where it is left empty: as its row in the table says it. */
    public String hint(String key) {
        return make.voice().say(new Field(key, Table.keys().find(key).orElseThrow()).hint());
    }

    public String say(String key) {
        return say(Tell.said(key));
    }

    private String say(Part part) {
        return make.voice().say(part);
    }
}
