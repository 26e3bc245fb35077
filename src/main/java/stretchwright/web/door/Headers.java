package stretchwright.web.door;

import java.util.Map;

/** What every answer tells the browser to refuse. */
public final class Headers {
    private static final Map<String, String> ALL = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'; connect-src 'self'; worker-src 'self'; form-action 'self';"
                    + " base-uri 'none'; frame-ancestors 'none'",
            "X-Content-Type-Options",
            "nosniff",
            // with no-referrer browsers send "Origin: null" from our own form
            "Referrer-Policy",
            "same-origin",
            "Permissions-Policy",
            "camera=(), microphone=(), geolocation=(), payment=(), usb=(), serial=(), midi=(), hid=()",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Cache-Control",
            "no-store");

    private Headers() {}

    public static Map<String, String> all() {
        return ALL;
    }
}
