package stretchwright.print.sheets;

import java.util.List;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.print.kit.Job;
import stretchwright.print.kit.Letters;

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

    /** A sentence for each. */
    static List<String> stops(FitReport fit, Voice voice) {
        return fit.verdicts().stream()
                .filter(v -> v.severity() == FitReport.Severity.STOP)
                .map(v -> voice.say(v.message().and(v.remedy())))
                .toList();
    }

    String cloth() {
        return Letters.shortened(fabric.roll().name(), Letters.LONGEST_NAME);
    }
}
