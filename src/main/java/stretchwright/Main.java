package stretchwright;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import stretchwright.cli.Commands;

/** The program's entry: hands the arguments to the command door. Output is UTF-8 whatever the terminal's setting. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(Commands.run(utf8(FileDescriptor.out), utf8(FileDescriptor.err), args));
    }

    private static PrintWriter utf8(FileDescriptor to) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(to), StandardCharsets.UTF_8), false);
    }
}
