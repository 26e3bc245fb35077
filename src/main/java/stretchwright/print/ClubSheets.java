package stretchwright.print;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Unit;
import stretchwright.lay.ClubLay;

/**
 * The tables of a club: one drawing each as SVG, and all of them as PDF, a page for each table. The page is the smallest
 * sheet on which a cuff can still be named; a long table gets a long page.
 */
public final class ClubSheets {
    private final List<ClubSheet> sheets = new ArrayList<>();

    private ClubSheets(List<ClubLay.Table> tables, Fabric fabric, Unit unit, Paper wanted) {
        for (ClubLay.Table table : tables) {
            sheets.add(new ClubSheet(table, sheets.size() + 1, tables.size(), fabric, unit, wanted));
        }
    }

    /** @param unit of the maker; @param wanted paper of the maker: decides between A4 and Letter and their kin */
    public static List<Document> documents(List<ClubLay.Table> tables, Fabric fabric, Unit unit, Paper wanted) {
        ClubSheets all = new ClubSheets(tables, fabric, unit, wanted);
        List<Document> out = new ArrayList<>();
        for (ClubSheet sheet : all.sheets) {
            out.add(svg(sheet));
        }
        out.add(all.pdf());
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
            }
            return file.finished("club.pdf", "lay");
        }
    }
}
