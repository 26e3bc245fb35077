package stretchwright.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stretchwright.pattern.Machine;
import stretchwright.pattern.Stitch;
import stretchwright.sewing.Setting;
import stretchwright.sewing.SewingTerms;

/** What is said about the sewing, and the settings that were kept with the fabric. */
final class SewingReader {
    private SewingReader() {}

    static SewingTerms read(Given given, Set<Machine> machines) {
        int pairs = given.orUsual(SewingKeys.PAIRS).intValue();
        List<SewingTerms.Extra> extras = new ArrayList<>();
        given.each(SewingKeys.EXTRA).forEach(one -> extra(one).ifPresent(extras::add));
        return new SewingTerms(
                machines,
                given.orUsual(SewingKeys.CONVERSION),
                given.orUsual(SewingKeys.CONE) / 1000,
                given.orUsual(SewingKeys.SPOOL) / 1000,
                pairs,
                given.get(SewingKeys.IN_WORK).map(Long::intValue).orElse(pairs),
                extras,
                kept(given));
    }

    private static Optional<SewingTerms.Extra> extra(Given one) {
        Optional<String> name = one.get(SewingKeys.EXTRA_NAME);
        Optional<Double> minutes = one.get(SewingKeys.EXTRA_MINUTES);
        return name.isEmpty() || minutes.isEmpty()
                ? Optional.empty()
                : Optional.of(new SewingTerms.Extra(
                        name.get(),
                        one.orUsual(SewingKeys.EXTRA_PLACE),
                        minutes.get(),
                        one.get(SewingKeys.EXTRA_INSTRUCTION).orElse(""),
                        one.get(SewingKeys.EXTRA_AFTER).orElse(List.of()),
                        one.get(SewingKeys.EXTRA_BEFORE).orElse(List.of())));
    }

    private static Map<Stitch, Setting> kept(Given given) {
        Map<Stitch, Setting> kept = new EnumMap<>(Stitch.class);
        for (Given one : given.each(SewingKeys.SETTINGS)) {
            Optional<Stitch> stitch = one.get(SewingKeys.STITCH);
            Optional<Double> length = one.get(SewingKeys.STITCH_LENGTH);
            if (stitch.isPresent()
                    && length.isPresent()
                    && kept.put(stitch.get(), setting(one, length.get())) != null) {
                one.add(SewingKeys.STITCH, Tell.said("stitch.twice"), Tell.said("stitch.once"));
            }
        }
        return kept;
    }

    private static Setting setting(Given one, double length) {
        return Setting.kept(
                length,
                one.get(SewingKeys.NEEDLE).orElse(""),
                one.get(SewingKeys.THREAD_KIND).orElse(""),
                Row.unboxed(one.get(SewingKeys.FEED)),
                one.get(SewingKeys.NOTE).orElse(""));
    }
}
