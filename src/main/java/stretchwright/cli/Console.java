package stretchwright.cli;

import java.io.PrintWriter;
import java.util.List;
import stretchwright.ground.Finding;
import stretchwright.ground.Progress;

/** Who is told what: results on standard output, everything else on standard error; a line is one line whatever stands in it. */
record Console(PrintWriter out, PrintWriter err, boolean quiet, boolean json) {

    /** Lines of progress, each behind the label (empty for none). */
    Progress progress(String label) {
        if (quiet) {
            return Progress.silent();
        }
        return line -> {
            warn(label.isEmpty() ? line : label + ": " + line);
            err.flush();
        };
    }

    void findings(List<Finding> findings) {
        findings.forEach(f -> warn(f.line()));
    }

    /** Something the person should know whatever is asked. */
    void warn(String line) {
        err.println(Visible.line(line));
    }

    /** The summary: only where standard output is not wanted for the report. */
    void tell(String line) {
        if (!quiet && !json) {
            out.println(Visible.line(line));
        }
    }

    /** The report itself. */
    void print(String text) {
        out.print(text);
    }
}
