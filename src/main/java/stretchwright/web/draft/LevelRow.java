package stretchwright.web.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.body.Body;
import stretchwright.body.Measure;
import stretchwright.fit.FitReport;
import stretchwright.make.Session;
import stretchwright.pattern.Dimension.What;
import stretchwright.pattern.Level;
import stretchwright.pattern.WhichLeg;

/**
 * A level of the garment, with what is told of it.
 *
 * @param onHer girth of body or boot, mm
 * @param asCut flat width, mm
 * @param estimated whether the girth was not measured
 * @param looks whether a verdict asks to look there
 * @param why dimension by which it is explained; empty where there is none
 */
record LevelRow(Level level, double onHer, double asCut, boolean estimated, boolean looks, Optional<What> why) {
    private static final Map<Level.Name, Measure> TAKEN = new EnumMap<>(Map.of(
            Level.Name.WAIST, Measure.WAIST_GIRTH,
            Level.Name.HIP, Measure.HIP_GIRTH,
            Level.Name.CROTCH, Measure.THIGH_GIRTH,
            Level.Name.MID_THIGH, Measure.MID_THIGH_GIRTH,
            Level.Name.KNEE, Measure.KNEE_GIRTH,
            Level.Name.CALF, Measure.CALF_GIRTH,
            Level.Name.ANKLE, Measure.ANKLE_GIRTH));

    private static final Map<Level.Name, What> EXPLAINED = new EnumMap<>(Map.of(
            Level.Name.WAIST, What.WAIST_EDGE_LENGTH,
            Level.Name.HIP, What.HIP_WIDTH,
            Level.Name.CROTCH, What.CROTCH_WIDTH,
            Level.Name.MID_THIGH, What.MID_THIGH_WIDTH,
            Level.Name.KNEE, What.KNEE_WIDTH,
            Level.Name.CALF, What.CALF_WIDTH,
            Level.Name.HEM, What.HEM_LENGTH));

    /** From the top down; of legs that differ those of the left one. */
    static List<LevelRow> of(Session session) {
        Map<Level.Name, FitReport.LevelFit> fits = new HashMap<>();
        session.fit().levels().forEach(f -> fits.putIfAbsent(f.level(), f));
        List<LevelRow> rows = new ArrayList<>();
        for (Level level : session.pattern().levels()) {
            FitReport.LevelFit fit = fits.get(level.name());
            if (level.leg() != WhichLeg.RIGHT && fit != null) {
                rows.add(new LevelRow(
                        level,
                        fit.girth(),
                        fit.width(),
                        isEstimated(session.body(), level.name()),
                        looks(session.fit(), level.name()),
                        explained(session, level.name())));
            }
        }
        return rows;
    }

    private static boolean isEstimated(Body body, Level.Name level) {
        Measure measure = TAKEN.get(level);
        return measure != null && !body.isGiven(measure);
    }

    private static boolean looks(FitReport fit, Level.Name level) {
        return fit.verdicts().stream()
                .filter(v -> v.severity() != FitReport.Severity.NOTE)
                .anyMatch(v -> v.subject().level().filter(level::equals).isPresent());
    }

    private static Optional<What> explained(Session session, Level.Name level) {
        return Optional.ofNullable(EXPLAINED.get(level))
                .filter(what -> session.pattern().reasons().stream()
                        .anyMatch(r -> r.dimension().what() == what));
    }
}
