package stretchwright.web;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Said;
import stretchwright.web.door.Headers;
import stretchwright.web.frame.Pages;

/** What cannot even be read as a request is answered in plain words too, and with nothing that was not asked for. */
final class PlainAnswers extends ErrorHandler {
    private static final String HTML = "text/html; charset=utf-8";

    private PlainAnswers() {}

    static void use(Server server) {
        server.setErrorHandler(new PlainAnswers());
    }

    @Override
    public boolean errorPageForMethod(String method) {
        return true;
    }

    @Override
    protected void generateResponse(
            Request request,
            Response response,
            int code,
            String message,
            @Nullable Throwable cause,
            Callback callback) {
        Headers.all().forEach(response.getHeaders()::put);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, HTML);
        response.write(true, page(code), callback);
    }

    private static ByteBuffer page(int status) {
        return ByteBuffer.wrap(Pages.text("plain.jte", PlainPage.of(title(status), help(status)))
                .getBytes(StandardCharsets.UTF_8));
    }

    private static Said title(int status) {
        return switch (status) {
            case 404 -> Tell.said("plain.404");
            case 405, 501 -> Tell.said("plain.405");
            case 408 -> Tell.said("plain.408");
            case 413 -> Tell.said("plain.413");
            case 414, 431 -> Tell.said("plain.431");
            case 503 -> Tell.said("plain.503");
            default -> status < 500 ? Tell.said("plain.400") : Tell.said("plain.500");
        };
    }

    private static Said help(int status) {
        return switch (status) {
            case 404 -> Tell.said("plain.404-help");
            case 405, 501 -> Tell.said("plain.405-help");
            case 408 -> Tell.said("plain.408-help");
            case 413 -> Tell.said("plain.413-help");
            case 414, 431 -> Tell.said("plain.431-help");
            case 503 -> Tell.said("plain.503-help");
            default -> status < 500 ? Tell.said("plain.400-help") : Tell.said("plain.500-help");
        };
    }
}
