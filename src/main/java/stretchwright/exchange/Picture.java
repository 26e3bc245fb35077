package stretchwright.exchange;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** PNG that says how large it is meant to be shown. */
final class Picture {
    private static final String PNG = "javax_imageio_png_1.0";

    private Picture() {}

    /** @param perMm points per mm; written to the nearest whole number of points per metre (pHYs, ISO/IEC 15948, 11.3.5.3) */
    static byte[] png(BufferedImage image, double perMm) {
        Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName("png");
        if (!writers.hasNext()) {
            throw new IllegalStateException("this Java cannot write PNG");
        }
        ImageWriter writer = writers.next();
        ImageIO.setUseCache(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            IIOMetadata data = writer.getDefaultImageMetadata(
                    ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
            data.mergeTree(PNG, size(perMm));
            writer.write(new IIOImage(image, null, data));
        } catch (IOException e) {
            throw new UncheckedIOException("a picture in memory could not be written", e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    private static IIOMetadataNode size(double perMm) {
        String perMetre = Long.toString(Math.round(1000 * perMm));
        IIOMetadataNode size = new IIOMetadataNode("pHYs");
        size.setAttribute("pixelsPerUnitXAxis", perMetre);
        size.setAttribute("pixelsPerUnitYAxis", perMetre);
        size.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode root = new IIOMetadataNode(PNG);
        root.appendChild(size);
        return root;
    }
}
