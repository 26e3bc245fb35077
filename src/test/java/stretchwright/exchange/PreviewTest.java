package stretchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import stretchwright.make.ExampleHandovers;
import stretchwright.pattern.Piece;

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

    private static BufferedImage read(Handover handover) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(Preview.of(handover.pattern())));
    }
}
