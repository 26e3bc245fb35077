package stretchwright.cli;

import java.io.PrintWriter;
import java.util.List;
import stretchwright.ground.Finding;
import stretchwright.ground.Progress;

/** Who is told what: results on standard output, everything else on standard error. */
record Console(PrintWriter out, PrintWriter err, boolean quiet, boolean json) {

    /** Lines of progress, each behind the label (empty for none). */
    Progress progress(String label) {
        if (quiet) {
            return Progress.silent();
        }
        return line -> {
            err.println(label.isEmpty() ? line : label + ": " + line);
            err.flush();
        };
    }

    void findings(List<Finding> findings) {
        findings.forEach(f -> err.println(f.line()));
    }

    /** Something the person should know whatever is asked. */
    void warn(String line) {
        err.println(line);
    }

    /** The summary: only where standard output is not wanted for the report. */
    void tell(String line) {
        if (!quiet && !json) {
            out.println(line);
        }
    }

    /** The report itself. */
    void print(String text) {
        out.print(text);
    }
}
