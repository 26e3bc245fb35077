package stretchwright.ground;

import java.util.List;

/** The input is wrong; carries all findings at once, never only the first. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Finding> findings;

    public BadInput(List<Finding> findings) {
        super(findings.isEmpty() ? "no finding" : findings.get(0).line());
        if (findings.isEmpty()) {
            throw new IllegalArgumentException("bad input without a finding");
        }
        this.findings = List.copyOf(findings);
    }

    public BadInput(Finding finding) {
        this(List.of(finding));
    }

    public List<Finding> findings() {
        return findings;
    }
}
