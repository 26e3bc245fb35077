package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stretchwright.ground.Quantities;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;
import stretchwright.sewing.Place;
import stretchwright.sewing.Setting;
import stretchwright.sewing.SeveralPairs;
import stretchwright.sewing.SewingTerms;

/** Reads what is said about the sewing, and the settings that were kept with the fabric. */
final class SewingReader {
    static final String SECTION = "sewing";
    /** In the fabric section: what worked is kept with the cloth it worked in. */
    static final String SETTINGS = "settings";

    private static final List<String> KEYS = List.of("conversion", "cone", "spool", "pairs", "in work", "extra");
    private static final List<String> EXTRA = List.of("name", "place", "minutes", "instruction", "after", "before");
    private static final List<String> SETTING = List.of("stitch", "stitch length", "needle", "thread", "feed", "note");
    private static final List<Place> PLACES = List.of(Place.TABLE, Place.IRON, Place.HAND);
    private static final String EXTRA_EXAMPLE =
            "[{name: name tape, place: hand, minutes: 3, after: [join the waistband], before: [press and cool]}]";
    private static final String SETTING_EXAMPLE =
            "[{stitch: four-thread overlock, stitch length: 2.2 mm, feed: 1.6, note: left needle 4}]";

    private SewingReader() {}

    static SewingTerms read(Section top, Optional<Section> fabric, Set<Machine> machines) {
        Map<Stitch, Setting> kept = fabric.map(SewingReader::kept).orElse(Map.of());
        Optional<Section> section = top.section(SECTION, KEYS);
        if (section.isEmpty()) {
            SewingTerms usual = SewingTerms.on(machines);
            return new SewingTerms(machines, usual.conversion(), usual.cone(), usual.spool(), 1, 1, List.of(), kept);
        }
        Section s = section.get();
        OptionalDouble conversion = minutes(s, "conversion", Limits.CONVERSION);
        double cone = s.length("cone", Limits.THREAD).orElse(SewingTerms.CONE * 1000) / 1000;
        double spool = s.length("spool", Limits.THREAD).orElse(SewingTerms.SPOOL * 1000) / 1000;
        int pairs = (int) count(s, "pairs").orElse(1);
        int inWork = (int) count(s, "in work").orElse(pairs);
        List<SewingTerms.Extra> extras = new ArrayList<>();
        for (Section extra : s.sections("extra", EXTRA, SewingTerms.MOST_EXTRAS, EXTRA_EXAMPLE)) {
            extra(extra).ifPresent(extras::add);
        }
        return new SewingTerms(
                machines,
                conversion.orElse(SewingTerms.CONVERSION),
                cone,
                spool,
                pairs,
                inWork,
                extras.stream().limit(SewingTerms.MOST_EXTRAS).toList(),
                kept);
    }

    private static Optional<SewingTerms.Extra> extra(Section s) {
        s.require("name", "name tape");
        s.require("minutes", "3 min");
        Optional<String> name = s.name("name");
        OptionalDouble minutes = minutes(s, "minutes", Limits.MINUTES);
        Place place = s.choice("place", PLACES, Place::word).orElse(Place.HAND);
        String instruction = s.name("instruction").orElse("");
        List<String> after = s.texts("after", "[join the waistband]");
        List<String> before = s.texts("before", "[press and cool]");
        return name.isEmpty() || minutes.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new SewingTerms.Extra(name.get(), place, minutes.getAsDouble(), instruction, after, before));
    }

    private static Map<Stitch, Setting> kept(Section fabric) {
        Map<Stitch, Setting> kept = new EnumMap<>(Stitch.class);
        for (Section s : fabric.sections(SETTINGS, SETTING, Stitch.values().length, SETTING_EXAMPLE)) {
            s.require("stitch", "four-thread overlock");
            s.require("stitch length", "2.2 mm");
            Optional<Stitch> stitch = s.choice("stitch", List.of(Stitch.values()), Stitch::plainName);
            OptionalDouble length = s.length("stitch length", Limits.STITCH_LENGTH);
            OptionalDouble feed = s.quantity(
                    "feed", Quantities::number, "a differential feed", "Write for example 1.5.", Limits.FEED, "");
            if (stitch.isPresent() && length.isPresent()) {
                Setting setting = Setting.kept(
                        length.getAsDouble(),
                        s.name("needle").orElse(""),
                        s.name("thread").orElse(""),
                        feed,
                        s.name("note").orElse(""));
                if (kept.put(stitch.get(), setting) != null) {
                    s.add("stitch", "is given twice.", "Keep one setting for each stitch.");
                }
            }
        }
        return kept;
    }

    private static OptionalDouble minutes(Section s, String key, Limits.Range range) {
        return s.quantity(
                key,
                text -> Quantities.number(
                        text.endsWith("min")
                                ? text.substring(0, text.length() - 3).strip()
                                : text),
                "a time",
                "Write minutes: 15 min.",
                range,
                "min");
    }

    private static OptionalDouble count(Section s, String key) {
        OptionalDouble count =
                s.quantity(key, Quantities::number, "a number", "Write a whole number.", Limits.PAIRS, "");
        if (count.isPresent() && count.getAsDouble() != Math.rint(count.getAsDouble())) {
            s.add(key, "is not a whole number.", "Write 1 to " + SeveralPairs.MOST_PAIRS + ".");
            return OptionalDouble.empty();
        }
        return count;
    }
}
