package stretchwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.pattern.Seam;

/** What to sew or try besides a seam: common practice, no source, where not said otherwise in docs/maths/fit.md. */
public enum Reinforcement {
    SECOND_ROW(Tell.said("besides.second-row", new Part.Span(sewn(25), sewn(50)))),
    GUSSET_POINTS(Tell.said("besides.gusset-points")),
    NO_SECOND_ROW(Tell.said("besides.no-second-row")),
    OPENING_ENDS(Tell.said("besides.opening-ends")),
    TEST_SEAM(Tell.said("besides.test-seam"));

    private final Said said;

    Reinforcement(Said said) {
        this.said = said;
    }

    /** Of a seam of this role, which is asked for so much and stands so much; none where nothing is needed. */
    static List<Reinforcement> of(Seam.Role role, double needed, double stands) {
        List<Reinforcement> out = new ArrayList<>();
        usual(role).ifPresent(out::add);
        if (needed > Judge.EASY_SHARE * stands) {
            out.add(TEST_SEAM);
        }
        return out;
    }

    private static Optional<Reinforcement> usual(Seam.Role role) {
        return switch (role) {
            case FRONT_RISE, BACK_RISE -> Optional.of(SECOND_ROW);
            case GUSSET -> Optional.of(GUSSET_POINTS);
            case WAISTBAND_JOIN, CASING -> Optional.of(NO_SECOND_ROW);
            case POCKET_OPENING -> Optional.of(OPENING_ENDS);
            default -> Optional.empty();
        };
    }

    private static Part.Length sewn(double mm) {
        return new Part.Length(mm, Part.Told.SEWN, 0, false);
    }

    public Said said() {
        return said;
    }
}
