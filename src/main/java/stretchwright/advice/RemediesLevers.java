package stretchwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stretchwright.fit.FitReport.Verdict;
import stretchwright.fit.Subject;
import stretchwright.intake.MakeFile;
import stretchwright.pattern.Level;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.TopEnd;

/** Which changes are worth trying for which verdict, the smallest effort first. */
final class RemediesLevers {
    private final ChangeStyle style;
    private final ChangeEnds ends;
    private final ChangeCloth cloth;
    private final double share;
    private final List<ChangeLever> out = new ArrayList<>();

    private RemediesLevers(MakeFile make, Pattern pattern) {
        this.style = new ChangeStyle(make);
        this.ends = new ChangeEnds(make);
        this.cloth = new ChangeCloth(make);
        this.share = pattern.reductions().across();
    }

    static List<ChangeLever> of(Verdict verdict, MakeFile make, Pattern pattern) {
        RemediesLevers levers = new RemediesLevers(make, pattern);
        levers.collect(verdict.subject());
        levers.out.sort(Comparator.comparingDouble(l -> l.effort().applyAsDouble(1)));
        return List.copyOf(levers.out);
    }

    private void collect(Subject subject) {
        switch (subject.kind()) {
            case BAND_OPENING -> {
                out.add(style.wider(Level.Name.WAIST));
                style.contoured().ifPresent(out::add);
                out.add(style.lowerRise());
                style.machine(Machine.OVERLOCKER).ifPresent(out::add);
                clothAcross();
            }
            case HEM_OPENING -> {
                out.add(style.wider(Level.Name.HEM));
                style.legFirst().ifPresent(out::add);
                hold();
                style.machine(Machine.COVERSTITCH).ifPresent(out::add);
                style.machine(Machine.OVERLOCKER).ifPresent(out::add);
                clothAcross();
            }
            case LEG_OPENING -> {
                out.add(style.wider(Level.Name.ANKLE));
                out.add(style.wider(Level.Name.CALF));
                hold();
                style.legFirst().ifPresent(out::add);
                clothAcross();
            }
            case STRAIN, POSE_ACROSS -> {
                wider(subject);
                hold();
                clothAcross();
            }
            case PRESSURE -> {
                wider(subject);
                hold();
                cloth.softer().ifPresent(out::add);
                clothAcross();
            }
            case RISING_PRESSURE -> {
                out.add(style.widerThigh(level(subject)));
                hold();
                cloth.softer().ifPresent(out::add);
                clothAcross();
            }
            case POSE_ALONG -> along(subject.level());
            case SEAM -> {
                style.machine(Machine.OVERLOCKER).ifPresent(out::add);
                style.machine(Machine.COVERSTITCH).ifPresent(out::add);
                hold();
                out.add(ends.higherBack());
                out.add(cloth.turned());
                out.add(cloth.moreAlong());
            }
            case TAKEN_IN -> {
                style.back(TopEnd.BackShape.SHAPED_SEAM).ifPresent(out::add);
                style.back(TopEnd.BackShape.DARTS).ifPresent(out::add);
                out.add(style.lowerRise());
                style.contoured().ifPresent(out::add);
            }
            case HIGH_BAND -> {
                out.add(ends.lowerBand());
                out.add(style.lowerRise());
            }
            case BAND_SLIPS -> {
                ends.elastic().ifPresent(out::add);
                out.add(ends.higherBack());
                ends.higherBand().ifPresent(out::add);
            }
            case HEM_RISES -> {
                ends.higherCuff().ifPresent(out::add);
                out.add(cloth.moreAlong());
            }
            case LOW_HEM -> style.higherHem().ifPresent(out::add);
            case SHOW_THROUGH -> {
                hold();
                out.add(style.wider(Level.Name.HIP));
                out.add(cloth.turned());
                out.add(cloth.denser());
            }
            case SHRINKAGE -> out.add(cloth.washed());
            case RECOVERY -> out.add(cloth.recovering());
            case CLOTH_DIRECTION -> out.add(cloth.turned());
            case NONE -> {}
        }
    }

    private static Level.Name level(Subject subject) {
        return subject.level().orElseThrow();
    }

    private void wider(Subject subject) {
        out.add(style.wider(level(subject)));
    }

    private void along(Optional<Level.Name> level) {
        if (level.filter(Level.Name.KNEE::equals).isPresent()) {
            style.kneeShaping().ifPresent(out::add);
        } else {
            out.add(ends.higherBack());
        }
        out.add(cloth.turned());
        out.add(cloth.moreAlong());
    }

    private void hold() {
        style.lightHold().ifPresent(out::add);
        style.smallerShare(share).ifPresent(out::add);
    }

    private void clothAcross() {
        out.add(cloth.turned());
        out.add(cloth.moreAcross());
    }
}
