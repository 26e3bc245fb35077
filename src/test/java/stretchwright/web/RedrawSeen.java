package stretchwright.web;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** From an arrow key at a slab of chalk until the browser has painted the pattern anew, in a real browser; for benchmarks/seen. */
final class RedrawSeen {
    private static final int WARM = 200;

    /** One press; ms until the frame after the drawing was put in place. */
    private static final String PRESS = """
            () => new Promise(done => {
              const grip = document.getElementById('grip-hem');
              grip.focus();
              const from = performance.now();
              document.addEventListener('htmx:afterSwap', () => requestAnimationFrame(() => setTimeout(() => done(performance.now() - from))), { once: true });
              grip.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowUp', bubbles: true, cancelable: true }));
            })""";

    private RedrawSeen() {}

    public static void main(String[] args) throws Exception {
        int presses = args.length > 0 ? Integer.parseInt(args[0]) : 300;
        Server server = Visitor.started();
        try (Browsing browsing = Browsing.open()) {
            String make = server.address() + new Visitor(server).make();
            for (Browsing.Device device : List.of(Browsing.Device.LAPTOP, Browsing.Device.PHONE)) {
                Page page = browsing.page(device);
                double[] ms = pressed(page, make, presses, device.touch() ? "grip-hem-small" : "grip-hem");
                System.out.printf(
                        "%s: median %.0f ms, 95 %% within %.0f ms, slowest %.0f ms of %d%n",
                        device.touch() ? "phone" : "laptop",
                        ms[ms.length / 2],
                        ms[(int) (ms.length * 0.95)],
                        ms[ms.length - 1],
                        ms.length);
            }
        } finally {
            server.stop();
        }
    }

    /** Sorted, after some that warm the program. */
    private static double[] pressed(Page page, String make, int presses, String grip) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < WARM + presses; i++) {
            if (i % 15 == 0) {
                // the line does not go on for ever
                page.navigate(make);
            }
            double ms = ((Number) page.evaluate(PRESS.replace("grip-hem", grip))).doubleValue();
            if (i >= WARM) {
                all.add(ms);
            }
        }
        double[] out = all.stream().mapToDouble(d -> d).toArray();
        Arrays.sort(out);
        return out;
    }
}
