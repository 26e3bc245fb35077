package stretchwright.web;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** The page of a new workroom, open for all tests of a class, and somebody who visits it. */
final class OpenPage implements BeforeAllCallback, AfterAllCallback {
    private @Nullable Server server;
    private @Nullable Visitor visitor;

    @Override
    public void beforeAll(ExtensionContext context) {
        server = Visitor.started();
        visitor = new Visitor(server());
    }

    @Override
    public void afterAll(ExtensionContext context) {
        if (server != null) {
            server.stop();
        }
    }

    Server server() {
        return Objects.requireNonNull(server);
    }

    Visitor visitor() {
        return Objects.requireNonNull(visitor);
    }
}
