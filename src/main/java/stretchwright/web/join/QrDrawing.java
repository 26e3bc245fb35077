package stretchwright.web.join;

import io.nayuki.qrcodegen.QrCode;

/** A QR code as a drawing: dark on light whatever the page's colours, with the quiet border of four that a camera needs. */
final class QrDrawing {
    private static final int BORDER = 4;

    private QrDrawing() {}

    /** @param says what it is, for who does not see it */
    static String of(String text, String says) {
        QrCode code = QrCode.encodeText(text, QrCode.Ecc.MEDIUM);
        int side = code.size + 2 * BORDER;
        StringBuilder dark = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    dark.append('M')
                            .append(x + BORDER)
                            .append(' ')
                            .append(y + BORDER)
                            .append("h1v1h-1z");
                }
            }
        }
        return "<svg class=\"qr\" viewBox=\"0 0 " + side + " " + side + "\" role=\"img\" aria-label=\"" + escaped(says)
                + "\" shape-rendering=\"crispEdges\"><rect width=\"" + side + "\" height=\"" + side
                + "\" fill=\"#fff\"/><path d=\"" + dark + "\" fill=\"#000\"/></svg>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
