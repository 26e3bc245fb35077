package stretchwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stretchwright.ground.Part;

/** Where standard output or standard error goes. It remembers what could not be written, which a PrintWriter keeps to itself. */
final class Terminal extends Writer {
    private final Writer to;
    private @Nullable IOException lost;

    Terminal(Writer to) {
        this.to = to;
    }

    /** For everything that is told or printed. */
    PrintWriter shown() {
        return new PrintWriter(new Writer() {
            @Override
            public void write(char[] chars, int from, int count) throws IOException {
                Terminal.this.write(Visible.text(new String(chars, from, count)));
            }

            @Override
            public void flush() throws IOException {
                Terminal.this.flush();
            }

            @Override
            public void close() {
                // the program's streams stay open
            }
        });
    }

    /** For the help, which may be coloured; it holds nothing of anybody else. */
    PrintWriter help() {
        return new PrintWriter(this);
    }

    /** Why something that was to be written is lost. That the other side wanted no more of it is nothing wrong. */
    Optional<Part> lost() {
        return Optional.ofNullable(lost)
                .filter(e -> !String.valueOf(e.getMessage()).contains("Broken pipe"))
                .map(Reason::of);
    }

    @Override
    public void write(char[] chars, int from, int count) throws IOException {
        try {
            to.write(chars, from, count);
        } catch (IOException e) {
            throw noted(e);
        }
    }

    @Override
    public void flush() throws IOException {
        try {
            to.flush();
        } catch (IOException e) {
            throw noted(e);
        }
    }

    private IOException noted(IOException e) {
        lost = lost == null ? e : lost;
        return e;
    }

    @Override
    public void close() {
        // the program's streams stay open
    }
}
