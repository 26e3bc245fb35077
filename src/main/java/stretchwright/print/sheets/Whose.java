package stretchwright.print.sheets;

import java.util.List;
import java.util.stream.Stream;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.print.kit.ClothName;
import stretchwright.print.kit.Job;

/**
 * What the sheets of a pattern say of it.
 *
 * @param wearer or wearers
 * @param stops what speaks against cutting
 */
record Whose(String make, String wearer, Fabric fabric, Unit unit, List<String> stops) {
    Whose {
        stops = List.copyOf(stops);
    }

    static Whose of(Job job) {
        return new Whose(job.make(), job.wearer(), job.fabric(), job.unit(), stops(job.fit(), Voice.of(job.unit())));
    }

    /** Letters that a sentence against cutting may have here: the fit sheet has all of it. */
    static final int LONGEST_STOP = 400;

    /** Some sentences for each, all of them or as many as have room. */
    static List<String> stops(FitReport fit, Voice voice) {
        return fit.verdicts().stream()
                .filter(v -> v.severity() == FitReport.Severity.STOP)
                .map(v -> Stream.of(v.message().and(v.remedy()), v.message())
                        .map(voice::say)
                        .filter(words -> words.length() <= LONGEST_STOP)
                        .findFirst()
                        .orElseGet(() -> voice.say(v.message().first())))
                .toList();
    }

    String cloth() {
        return ClothName.of(fabric);
    }
}
