package stretchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.Piece;

@Tag("slow")
class PreviewTest {
    private static final int WHITE = 0xFFFFFFFF;

    @Test
    void everyPatternIsSeenOnWhite() throws IOException {
        for (Handover handover : ExampleHandovers.all().values()) {
            BufferedImage image = read(handover);
            assertThat(Math.max(image.getWidth(), image.getHeight())).isEqualTo(1200);
            for (int x = 0; x < image.getWidth(); x++) {
                assertThat(image.getRGB(x, 0)).isEqualTo(WHITE);
                assertThat(image.getRGB(x, image.getHeight() - 1)).isEqualTo(WHITE);
            }
        }
    }

    /** What is not white is as much as the pieces cover, at the scale of the picture. */
    @Test
    void thePiecesCoverWhatTheyCover() throws IOException {
        for (Handover handover : ExampleHandovers.all().values()) {
            BufferedImage image = read(handover);
            int inked = 0;
            int low = image.getHeight();
            int high = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    if (image.getRGB(x, y) != WHITE) {
                        inked++;
                        low = Math.min(low, y);
                        high = Math.max(high, y);
                    }
                }
            }
            double tallest = handover.pattern().pieces().stream()
                    .mapToDouble(p -> p.cutLine().box().height())
                    .max()
                    .orElseThrow();
            double mm = tallest / (high - low);
            double area = handover.pattern().pieces().stream()
                    .map(Piece::cutLine)
                    .mapToDouble(c -> c.area())
                    .sum();
            assertThat(inked * mm * mm / area).isBetween(0.99, 1.04);
        }
    }

    /** By hand: 50 points per inch are 1968.5 per metre; the picture says so, and its pieces have that size. */
    @Test
    void aPreviewWithAFinenessIsTrueToScale() throws IOException {
        Handover handover = ExampleHandovers.all().values().iterator().next();
        byte[] usual = Preview.of(handover.pattern(), OptionalInt.empty());
        byte[] png = Preview.of(handover.pattern(), OptionalInt.of(50));
        assertThat(perMetre(png)).isEqualTo(1969);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(usual));
        double mm = image.getHeight() * 25.4 / 50;
        assertThat(small.getHeight() / mm).isCloseTo(perMetre(usual) / 1000.0, within(0.002));
        double tallest = handover.pattern().pieces().stream()
                .mapToDouble(p -> p.cutLine().box().height())
                .max()
                .orElseThrow();
        assertThat(mm).isGreaterThan(tallest);
    }

    /** The pHYs chunk as ISO/IEC 15948 has it: its name, points per metre across and down, 1 for metres. */
    private static int perMetre(byte[] png) {
        int at = new String(png, StandardCharsets.ISO_8859_1).indexOf("pHYs");
        ByteBuffer data = ByteBuffer.wrap(png, at + 4, 9);
        int across = data.getInt();
        assertThat(data.getInt()).isEqualTo(across);
        assertThat(data.get()).isEqualTo((byte) 1);
        return across;
    }

    private static BufferedImage read(Handover handover) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(Preview.of(handover.pattern(), OptionalInt.empty())));
    }
}
