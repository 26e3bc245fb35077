package stretchwright.cli;

import java.io.PrintWriter;
import java.util.List;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Progress;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.make.Lines;

/** Who is told what: results on standard output, everything else on standard error; a line is one line whatever stands in it. */
record Console(PrintWriter out, PrintWriter err, boolean quiet, boolean json) {

    /** Lines of progress, each behind the label (empty for none). */
    Progress progress(String label) {
        if (quiet) {
            return Progress.silent();
        }
        return line -> {
            if (label.isEmpty()) {
                warn(line);
            } else {
                warn(Tell.said("labelled", Part.text(label), Part.text(line)));
            }
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

    /** The same, where there is no make whose unit it could be told in. */
    void warn(Said said) {
        warn(Voice.plain().say(said));
    }

    void tell(Said said) {
        tell(Voice.plain().say(said));
    }

    /** A line of the summary: what it is about stands in a column of its own, as wide as that of the lines before it. */
    void about(int column, Said label, Part told) {
        Lines lines = new Lines(Voice.plain(), column);
        lines.about(label, told);
        lines.all().forEach(this::tell);
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
