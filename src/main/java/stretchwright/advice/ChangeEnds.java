package stretchwright.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.advice.ChangeLever.Way;
import stretchwright.ground.Part;
import stretchwright.intake.MakeFile;
import stretchwright.intake.TopKeys;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.pattern.TopEnd.Band.Shape;

/** Changes of band, back edge and cuff; each empty where the make could not have it. */
final class ChangeEnds {
    /** Higher bands than this reach up the ribs, mm (common practice, no source). */
    private static final double HIGHEST_BAND = 110;

    /** Higher cuffs than this bunch, mm (common practice, no source). */
    private static final double HIGHEST_CUFF = 60;

    private final MakeFile make;
    private final Style s;
    private final ChangeSteps steps;

    ChangeEnds(MakeFile make) {
        this.make = make;
        this.s = make.style();
        this.steps = new ChangeSteps(make.unit());
    }

    ChangeLever lowerBand() {
        double now = steps.down(s.bandHeight());
        return new ChangeLever(
                        steps.within(
                                s.bandHeight() - TopKeys.BAND_HEIGHT.range().least()),
                        Tell.said(
                                "style.lowest-band",
                                Part.length(TopKeys.BAND_HEIGHT.range().least())),
                        n -> 0.8 + steps.mm(n) / 40,
                        n -> Tell.said("style.lower-band", Part.length(now - steps.mm(n))),
                        n -> lowBand(now - steps.mm(n)))
                .by(Way.LOWER_BAND);
    }

    private Optional<MakeFile> lowBand(double height) {
        TopEnd.Band b = s.top().band();
        boolean room = b.shape() == Shape.STRAIGHT
                && b.channel() <= height
                && b.keyPocket().isEmpty();
        return height < TopKeys.BAND_HEIGHT.range().least() || !room
                ? Optional.empty()
                : Optional.of(make.with(s.with(s.top().with(b.high(height)))));
    }

    ChangeLever higherBack() {
        double now = s.top().backRaise();
        int most = steps.within(TopKeys.BACK_WAIST.range().most() - now);
        return new ChangeLever(
                        most,
                        Tell.said("style.highest-back", Part.length(steps.mm(most))),
                        n -> 0.9 + steps.mm(n) / 30,
                        n -> Tell.said(
                                "style.higher-back",
                                Part.length(steps.mm(n)),
                                Part.length(steps.onTape(now + steps.mm(n)))),
                        n -> now + steps.mm(n) > TopKeys.BACK_WAIST.range().most()
                                ? Optional.empty()
                                : Optional.of(make.with(
                                        s.with(s.top().raised(s.top().frontRaise(), steps.onTape(now + steps.mm(n)))))))
                .by(Way.HIGHER_BACK);
    }

    /** An elastic in a straight band: the next wider ones that are sold and have room. */
    Optional<ChangeLever> elastic() {
        TopEnd.Band band = s.top().band();
        double now = band.elastic().orElse(0);
        List<Double> wider = TopEnd.Band.ELASTICS.stream()
                .filter(w -> w > now && band.hasRoomFor(w))
                .toList();
        if (band.shape() != Shape.STRAIGHT || band.drawstring() || wider.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ChangeLever(
                wider.size(),
                Tell.said("style.widest-elastic", Part.length(wider.get(wider.size() - 1))),
                n -> 0.7 + n / 10.0,
                n -> Tell.said("style.elastic", Part.length(wider.get(n - 1))),
                n -> Optional.of(make.with(s.with(s.top().with(band.withElastic(wider.get(n - 1))))))));
    }

    /** A higher straight band grips more. */
    Optional<ChangeLever> higherBand() {
        double now = s.bandHeight();
        int most = steps.within(HIGHEST_BAND - now);
        return s.top().band().shape() != Shape.STRAIGHT || most < 1
                ? Optional.empty()
                : Optional.of(new ChangeLever(
                        most,
                        Tell.said("style.highest-band", Part.length(steps.onTape(now + steps.mm(most)))),
                        n -> 1 + steps.mm(n) / 30,
                        n -> Tell.said("style.higher-band", Part.length(steps.onTape(now + steps.mm(n)))),
                        n -> Optional.of(make.with(s.with(
                                s.top().with(s.top().band().high(steps.onTape(now + steps.mm(n)))))))));
    }

    /** More cuff on the boot or ankle. */
    Optional<ChangeLever> higherCuff() {
        OptionalDouble now = s.cuffHeight();
        if (now.isEmpty()) {
            return Optional.empty();
        }
        int most = steps.within(HIGHEST_CUFF - now.getAsDouble());
        return most < 1
                ? Optional.empty()
                : Optional.of(new ChangeLever(
                        most,
                        Tell.said("style.highest-cuff", Part.length(steps.mm(most))),
                        n -> 0.9 + steps.mm(n) / 30,
                        n -> Tell.said("style.higher-cuff", Part.length(steps.onTape(now.getAsDouble() + steps.mm(n)))),
                        n -> Optional.of(
                                make.with(s.with(s.lower().withCuff(steps.onTape(now.getAsDouble() + steps.mm(n))))))));
    }
}
