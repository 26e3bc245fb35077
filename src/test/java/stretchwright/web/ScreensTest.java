package stretchwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;

/**
 * Every screen in a real browser, laptop and phone, light and dark: open to all, nothing wider than its window, no complaint of a
 * script. Pictures of them anew: {@code mvn -Pcheck test -Dtest=ScreensTest -Dpictures.write=true}.
 */
@Tag("slow")
class ScreensTest {
    private static final Path PICTURES = Path.of("docs/pictures/page");
    private static final double SCALE = 0.6;

    @RegisterExtension
    private static final OpenBrowser BROWSER = new OpenBrowser();

    private static Server server;
    private static final Map<String, String> SCREENS = new LinkedHashMap<>();

    @BeforeAll
    static void open() throws Exception {
        Path folder = Files.createTempDirectory("stretchwright-screens");
        stretchwright.workroom.store.Address.Folder at =
                new stretchwright.workroom.store.Address.Folder(folder.resolve("room"));
        try (Workroom room = Workroom.open(at)) {
            for (String example : List.of("roller-child", "hockey-boots", "evening-practice")) {
                room.incoming(example, Files.readAllBytes(Path.of("examples", example + ".yaml")))
                        .take(stretchwright.workroom.Incoming.Same.KEEP);
            }
            String make = id(room, Kind.MAKE, "Evening practice");
            SCREENS.put("workroom", "");
            SCREENS.put("question", "new/1");
            SCREENS.put("question-measure", "new/6");
            SCREENS.put("question-cloth", "new/8");
            SCREENS.put("machines", "machines");
            SCREENS.put("question-boot", "new/10");
            SCREENS.put("draft", "makes/" + make);
            SCREENS.put("draft-why", "makes/" + make + "?why=KNEE_WIDTH");
            SCREENS.put("draft-versions", "makes/" + make + "/versions");
            SCREENS.put("draft-other-cloth", "makes/" + make + "/other/fabric");
            SCREENS.put("draft-numbers", "makes/" + make + "/numbers");
            SCREENS.put("draft-all", "makes/" + make + "/all");
            SCREENS.put("lay", "makes/" + make + "/lay");
            SCREENS.put("print", "makes/" + make + "/print");
            SCREENS.put("sew", "makes/" + make + "/sew");
            SCREENS.put("worn", "makes/" + make + "/worn");
            SCREENS.put("wearer", "wearers/" + id(room, Kind.WEARER, "Rowan"));
            SCREENS.put("measure", "wearers/" + id(room, Kind.WEARER, "Rowan") + "/knee-girth");
            SCREENS.put("cloth", "cloths/" + first(room, Kind.FABRIC));
            SCREENS.put("boots", "boots/" + first(room, Kind.BOOT));
            SCREENS.put("club", "club");
            SCREENS.put("join", "join");
        }
        server = Server.start(at, 0).orElseThrow();
    }

    private static String id(Workroom room, Kind kind, String name) {
        return room.need(kind, name).id();
    }

    private static String first(Workroom room, Kind kind) {
        return room.store().list(kind, Place.HERE, "", 0, 1).get(0).id();
    }

    @AfterAll
    static void close() {
        if (server != null) {
            server.stop();
        }
    }

    @Test
    void everyScreenIsOpenToAll() throws IOException {
        boolean write = Boolean.getBoolean("pictures.write");
        List<String> faults = new ArrayList<>();
        Map<String, List<BufferedImage>> pictures = new LinkedHashMap<>();
        for (Browsing.Device device : Browsing.devices().toList()) {
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                Page page = BROWSER.browsing().page(device, scheme, true);
                for (Map.Entry<String, String> screen : SCREENS.entrySet()) {
                    int status =
                            page.navigate(server.address() + screen.getValue()).status();
                    String where = screen.getKey() + ", " + device + ", " + scheme;
                    if (status != 200) {
                        faults.add(where + ": " + status);
                        continue;
                    }
                    if (Browsing.tooWide(page) > 0) {
                        faults.add(where + " is wider than its window by " + Browsing.tooWide(page));
                    }
                    boolean dark = scheme == ColorScheme.DARK;
                    if (dark != device.touch()) {
                        Browsing.barriers(page).forEach(b -> faults.add(where + ": " + b));
                    }
                    if (write) {
                        pictures.computeIfAbsent(screen.getKey(), k -> new ArrayList<>())
                                .add(ImageIO.read(new ByteArrayInputStream(page.screenshot())));
                    }
                }
                page.context().close();
            }
        }
        BROWSER.browsing().complaints().forEach(c -> faults.add("a complaint of " + c));
        for (Map.Entry<String, List<BufferedImage>> p : pictures.entrySet()) {
            written(p.getKey(), p.getValue());
        }
        assertThat(faults).isEmpty();
    }

    /** The four of a screen beside each other. */
    private static void written(String name, List<BufferedImage> four) throws IOException {
        Files.createDirectories(PICTURES);
        int width =
                four.stream().mapToInt(i -> (int) (SCALE * i.getWidth()) + 8).sum();
        int height =
                four.stream().mapToInt(i -> (int) (SCALE * i.getHeight())).max().orElse(0);
        BufferedImage sheet = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = sheet.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        int x = 0;
        for (BufferedImage one : four) {
            int w = (int) (SCALE * one.getWidth());
            g.drawImage(one, x, 0, w, (int) (SCALE * one.getHeight()), null);
            x += w + 8;
        }
        g.dispose();
        File to = PICTURES.resolve(name + ".png").toFile();
        ImageIO.write(sheet, "png", to);
    }
}
