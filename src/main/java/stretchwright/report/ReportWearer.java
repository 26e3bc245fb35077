package stretchwright.report;

import java.util.List;
import java.util.Map;
import stretchwright.body.Body;
import stretchwright.body.Doubt;
import stretchwright.body.Measure;
import stretchwright.body.Measured;
import stretchwright.body.Measuring;
import stretchwright.body.NextMeasure;
import stretchwright.body.Readings;
import stretchwright.body.Side;
import stretchwright.body.Stance;
import stretchwright.body.Value;
import stretchwright.ground.Numbers;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.intake.WearingEntry;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The wearer in the report: every measure with origin and spread, each leg where they differ, what is in doubt. */
public final class ReportWearer {
    private ReportWearer() {}

    static void wearer(ObjectNode out, MakeFile make, Body body) {
        out.put("name", make.wearer());
        out.put("figure", body.figure().word());
        body.age().ifPresent(age -> out.put("age", Numbers.mm(age)));
        out.put("seated", body.seated());
        stance(out, body.stance());
        ObjectNode measurements = out.putObject("measurements");
        for (Measure measure : Measure.values()) {
            ObjectNode one = measurements.putObject(measure.term());
            value(one, body.value(measure));
            readings(one, make.measured().whole().get(measure));
            sides(one, measure, make.measured(), body);
        }
        doubts(out.putArray("doubts"), body, make.unit());
        Measuring.next(body).ifPresent(next -> next(out.putObject("measureNext"), next, make.unit()));
    }

    private static void stance(ObjectNode out, Stance stance) {
        stance.frontWaist().ifPresent(mm -> out.put("frontWaistHeight", Numbers.mm(mm)));
        stance.backWaist().ifPresent(mm -> out.put("backWaistHeight", Numbers.mm(mm)));
        if (!stance.variations().isEmpty()) {
            ObjectNode named = out.putObject("figureShifts");
            stance.variations().forEach((variation, mm) -> named.put(variation.word(), Numbers.mm(mm)));
        }
    }

    public static void next(ObjectNode out, NextMeasure next, Unit unit) {
        out.put("measure", next.measure().term());
        out.put("why", Voice.of(unit).say(next.why()));
        out.put("narrows", Numbers.share(next.narrows()));
    }

    /** Each leg of which something is known for itself. */
    public static void sides(ObjectNode one, Measure measure, Measured measured, Body body) {
        for (Side side : Side.values()) {
            side(one, side, measure, measured, body);
        }
    }

    private static void side(ObjectNode measure, Side side, Measure which, Measured measured, Body body) {
        Map<Measure, Value> own = body.legs().own(side);
        boolean hard = body.legs().hard(side).contains(which);
        Value value = own.get(which);
        if (value == null && !hard) {
            return;
        }
        ObjectNode out = measure.putObject(side.word());
        value(out, value == null ? body.value(which) : value);
        readings(out, measured.side(side).get(which));
        if (hard) {
            out.put("hard", true);
        }
    }

    public static void value(ObjectNode out, Value value) {
        out.put("value", Numbers.mm(value.mm()));
        String origin = value.origin() == Value.Origin.GIVEN ? "given" : "estimated";
        out.put("origin", origin);
        out.put(origin, true);
        out.put("spread", Numbers.mm(value.spread()));
    }

    private static void readings(ObjectNode out, @org.jspecify.annotations.Nullable Readings readings) {
        if (readings != null && readings.mm().size() > 1) {
            ArrayNode list = out.putArray("readings");
            readings.mm().forEach(mm -> list.add(Numbers.mm(mm)));
        }
    }

    public static void doubts(ArrayNode out, Body body, Unit unit) {
        for (Doubt doubt : Measuring.doubts(body)) {
            out.addObject()
                    .put("measure", doubt.measure().term())
                    .put("expected", Numbers.mm(doubt.expected()))
                    .put("spread", Numbers.mm(doubt.spread()))
                    .put("message", Voice.of(unit).say(doubt.message()));
        }
    }

    /** What was changed after wearing, oldest first, lengths in mm; nothing where nothing was changed. */
    public static void history(ObjectNode report, List<WearingEntry> worn) {
        if (worn.isEmpty()) {
            return;
        }
        ArrayNode out = report.putArray("afterWearing");
        for (WearingEntry entry : worn) {
            ObjectNode one = out.addObject().put("date", entry.date()).put("symptom", entry.symptom());
            if (!entry.answer().isEmpty()) {
                one.put("answer", entry.answer());
            }
            change(one.putObject("change"), entry);
        }
    }

    public static void change(ObjectNode out, WearingEntry entry) {
        entry.change().forEach((key, mm) -> {
            if (key.isChoice()) {
                out.put(key.word(), key.choice());
            } else {
                out.put(key.word(), Numbers.mm(mm));
            }
        });
    }
}
