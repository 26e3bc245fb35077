package stretchwright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.function.ToIntBiFunction;
import java.util.stream.Stream;

/** A command that was run in a test: its exit code, and what it printed and told. */
record Ran(int code, String out, String err) {
    static Ran of(Object... args) {
        return by((out, err) -> Commands.run(out, err, words(args)));
    }

    /** With other jobs behind the commands. */
    static Ran with(Jobs jobs, Object... args) {
        return by((out, err) -> Commands.run(jobs, out, err, words(args)));
    }

    private static Ran by(ToIntBiFunction<PrintWriter, PrintWriter> command) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = command.applyAsInt(new PrintWriter(out), new PrintWriter(err));
        return new Ran(code, out.toString(), err.toString());
    }

    private static String[] words(Object... args) {
        return Stream.of(args).map(Object::toString).toArray(String[]::new);
    }
}
