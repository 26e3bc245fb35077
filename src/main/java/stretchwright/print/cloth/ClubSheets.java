package stretchwright.print.cloth;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Document;
import stretchwright.ground.Unit;
import stretchwright.lay.Buying;
import stretchwright.lay.ClothLay;
import stretchwright.lay.ClubLay;
import stretchwright.print.kit.Amounts;
import stretchwright.print.kit.Canvas;
import stretchwright.print.kit.LaidCloth;
import stretchwright.print.kit.Paper;
import stretchwright.print.kit.PdfFile;
import stretchwright.print.kit.Phrases;
import stretchwright.print.kit.SvgCanvas;
import stretchwright.print.kit.TextPages;

/**
 * The tables of a club: one drawing each as SVG, and all of them as PDF, a page for each table and behind it the list to
 * tick while cutting. The page is the smallest sheet on which a cuff can still be named; a long table gets a long page.
 */
public final class ClubSheets {
    private final List<ClubSheet> sheets = new ArrayList<>();
    private final Unit unit;
    private final Paper office;
    private final Buying buying;

    /**
     * @param laid the same tables, with what follows from their lays
     * @param unit of the maker
     * @param wanted paper of the maker: decides between A4 and Letter and their kin
     * @param buying for all tables together
     * @param elsewhere by garment the pieces that are cut from other cloth
     */
    public ClubSheets(
            List<ClubLay.Table> tables,
            List<ClothLay> laid,
            Unit unit,
            Paper wanted,
            Buying buying,
            Map<String, String> elsewhere) {
        this.unit = unit;
        this.office = wanted.office();
        this.buying = buying;
        for (int i = 0; i < tables.size(); i++) {
            ClothLay l = laid.get(i);
            LaidCloth cloth = new LaidCloth(unit, l.fabric(), l.lay(), l.use(), l.pieces());
            sheets.add(new ClubSheet(tables.get(i), i + 1, tables.size(), cloth, wanted, elsewhere));
        }
    }

    public List<Document> documents() {
        List<Document> out = new ArrayList<>();
        for (ClubSheet sheet : sheets) {
            out.add(svg(sheet));
        }
        out.add(pdf());
        return out;
    }

    private static Document svg(ClubSheet sheet) {
        SvgCanvas svg = new SvgCanvas(sheet.paper().width(), sheet.paper().height(), sheet.title());
        sheet.draw(svg);
        String name = "table-" + sheet.number() + ".svg";
        return new Document(name, "lay drawing", 1, svg.finished(sheet.words()).getBytes(StandardCharsets.UTF_8));
    }

    private Document pdf() {
        try (PdfFile file = new PdfFile(Phrases.of("club.file"))) {
            for (ClubSheet sheet : sheets) {
                Canvas page = file.page(sheet.paper().width(), sheet.paper().height());
                file.bookmark(sheet.title());
                sheet.draw(page);
                list(file, sheet);
            }
            return file.finished("club.pdf", "lay");
        }
    }

    private void list(PdfFile file, ClubSheet sheet) {
        TextPages pages = new TextPages(file, office, sheet.title(), Phrases.of("cut.foot"));
        if (sheet.number() == 1
                && sheet.cloth().fabric().roll().shape().outline().isEmpty()) {
            pages.heading(Phrases.of("buy.heading", Amounts.bought(buying)));
            pages.text(CuttingList.capital(ClothWords.sum(buying, unit) + "."));
        }
        pages.heading(Phrases.of("cut.heading"));
        CuttingList.write(pages, sheet.cloth());
        Leftovers.write(pages, sheet.cloth());
    }
}
