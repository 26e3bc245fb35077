package stretchwright.web.door;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.RequestTimeoutResponse;
import io.javalin.http.ServiceUnavailableResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import org.eclipse.jetty.io.EndPoint;

/** The bytes of a sent form: so many and no more, within seconds, and never so many forms at once that nobody else is served. */
final class SentForm {
    /** A filled-in form has about 3 kB and is here at once. */
    static final Duration PATIENCE = Duration.ofSeconds(4);

    /** Each holds one of the server's threads, of which it has 250. */
    private static final int AT_ONCE = 32;

    private static final Semaphore READING = new Semaphore(AT_ONCE);

    private final InputStream in;
    private final EndPoint line;
    private final long end;

    private SentForm(InputStream in, EndPoint line, long end) {
        this.in = in;
        this.line = line;
        this.end = end;
    }

    static byte[] read(Context ctx, int largest) {
        if (!READING.tryAcquire()) {
            throw new ServiceUnavailableResponse("Too many forms are being sent at this moment.");
        }
        EndPoint line = Streams.line(ctx);
        long usual = line.getIdleTimeout();
        long end = System.nanoTime() + PATIENCE.toNanos();
        try (InputStream in = ctx.req().getInputStream()) {
            return new SentForm(in, line, end).bytes(largest);
        } catch (IOException e) {
            ctx.header("Connection", "close");
            throw left(end) <= 0
                    ? new RequestTimeoutResponse("The form took too long.")
                    : new BadRequestResponse("The form did not come whole.");
        } finally {
            line.setIdleTimeout(usual);
            READING.release();
        }
    }

    private byte[] bytes(int largest) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        copy(bytes, largest + 1);
        if (bytes.size() > largest) {
            copy(new ByteArrayOutputStream(), 10 * largest); // so that the answer is read before the line is cut
            throw new ContentTooLargeResponse("A form of more than 200 kB is not read.");
        }
        return bytes.toByteArray();
    }

    /** Up to so many bytes; each waits no longer than what is left of the whole time. */
    private void copy(ByteArrayOutputStream to, int most) throws IOException {
        byte[] some = new byte[8192];
        while (to.size() < most) {
            if (left(end) <= 0) {
                throw new InterruptedIOException("the time is over");
            }
            line.setIdleTimeout(left(end) + 1);
            int n = in.read(some, 0, Math.min(some.length, most - to.size()));
            if (n < 0) {
                return;
            }
            to.write(some, 0, n);
        }
    }

    /** Milliseconds; not more than 0 when the time is over. */
    private static long left(long end) {
        return Duration.ofNanos(end - System.nanoTime()).toMillis();
    }
}
