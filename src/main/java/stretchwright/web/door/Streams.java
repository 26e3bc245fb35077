package stretchwright.web.door;

import io.javalin.http.Context;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.io.EndPoint;

/** The lines that are kept open for what happens on the page: they end when the program does, which would wait for them else. */
public final class Streams {
    private static final String KIND = "text/event-stream";

    private final Set<EndPoint> open = ConcurrentHashMap.newKeySet();

    /** Before a request that may ask for one. */
    public void note(Context ctx) {
        String kind = ctx.header("accept");
        if (kind == null || !kind.startsWith(KIND)) {
            return;
        }
        open.removeIf(line -> !line.isOpen());
        open.add(line(ctx));
    }

    static EndPoint line(Context ctx) {
        return ServletContextRequest.getServletContextRequest(ctx.req())
                .getConnectionMetaData()
                .getConnection()
                .getEndPoint();
    }

    public void end() {
        open.forEach(EndPoint::close);
    }
}
