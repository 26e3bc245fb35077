package stretchwright.web.draw;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes all drawings as one page with a style sheet, to be looked at: run it with the style sheet and the folder. */
final class DrawingsGallery {
    private DrawingsGallery() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[1]);
        Files.createDirectories(folder);
        String css = Files.readString(Path.of(args[0]));
        Files.writeString(folder.resolve("page.css"), css);
        String only = args.length > 2 ? args[2] : "";
        StringBuilder page = new StringBuilder("<!DOCTYPE html><meta charset=utf-8><link rel=stylesheet href=page.css>"
                + "<style>.tool{fill:var(--sheet);stroke-width:1.6}figure{display:inline-block;margin:6px;background:var(--sheet);vertical-align:top}"
                + "figcaption{font-size:13px;max-width:390px;padding:0 6px}svg.mark,svg .mark{stroke-width:4.5}</style>");
        int count = 0;
        for (var drawing : AllDrawings.all().entrySet()) {
            if (drawing.getKey().matches(only.isEmpty() ? ".*" : only)) {
                page.append("<figure>").append(drawing.getValue().svg("d" + count++, "")).append("<figcaption>")
                        .append(Pen.escaped(drawing.getValue().title())).append("</figcaption></figure>");
            }
        }
        Files.writeString(folder.resolve("index.html"), page);
    }
}
