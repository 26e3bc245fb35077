package stretchwright.web;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** A browser for all tests of a class; where the machine has none the class is skipped, and says so. */
final class OpenBrowser implements BeforeAllCallback, AfterAllCallback {
    private @Nullable Browsing browsing;

    @Override
    public void beforeAll(ExtensionContext context) {
        browsing = Browsing.open();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        if (browsing != null) {
            browsing.close();
        }
    }

    Browsing browsing() {
        return Objects.requireNonNull(browsing);
    }
}
