package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stretchwright.ground.Quantities;
import stretchwright.ground.Said;
import stretchwright.ground.Voice;
import stretchwright.pattern.Stitch;
import stretchwright.sewing.Place;
import stretchwright.sewing.SeveralPairs;
import stretchwright.sewing.SewingTerms;

/** Rows of the sewing, and of the settings that are kept with the fabric. */
public final class SewingKeys {
    private static final Range THREAD = new Range(10_000, 20_000_000, "why.thread");
    private static final Range PAIRS_RANGE = new Range(1, SeveralPairs.MOST_PAIRS, "why.pairs");
    private static final Range FEED_RANGE = new Range(0.5, 3, "why.feed");

    static final Key<Boolean> SEWING = Row.section("sewing", "{conversion: 15 min, pairs: 12}");

    public static final Key<Double> CONVERSION = Key.of(
                    "sewing.conversion", Row.minutes(0, 240, "why.conversion"), "20 min")
            .usually(SewingTerms.CONVERSION)
            .in(of(t -> Optional.of(t.conversion())));

    public static final Key<Double> CONE = thread("sewing.cone", SewingTerms.CONE, SewingTerms::cone, "2500 m");
    public static final Key<Double> SPOOL = thread("sewing.spool", SewingTerms.SPOOL, SewingTerms::spool, "500 m");

    public static final Key<Long> PAIRS = Key.of("sewing.pairs", new WholeKind(Optional.of(PAIRS_RANGE)), "12")
            .usually(1L)
            .in(of(t -> Optional.of((long) t.pairs())));

    public static final Key<Long> IN_WORK = Key.of("sewing.in work", new WholeKind(Optional.of(PAIRS_RANGE)), "4")
            .in(of(t -> Optional.of((long) t.inWork())));

    static final Key<String> EXTRA_NAME =
            Row.name("name", "name tape").worded("extra.name").needed();
    static final Key<Double> EXTRA_MINUTES = Key.of("minutes", Row.minutes(0.1, 240, "why.minutes"), "3 min")
            .worded("extra.minutes")
            .needed();
    static final Key<Place> EXTRA_PLACE = Row.choice(
                    "place", ChoiceKind.of(List.of(Place.TABLE, Place.IRON, Place.HAND), Place::word), "hand")
            .worded("extra.place")
            .usually(Place.HAND);
    static final Key<String> EXTRA_INSTRUCTION =
            Row.name("instruction", "Sew it on at the centre back.").worded("extra.instruction");
    static final Key<List<String>> EXTRA_AFTER =
            Key.of("after", new NamesKind(), "[join the waistband]").worded("extra.after");
    static final Key<List<String>> EXTRA_BEFORE =
            Key.of("before", new NamesKind(), "[press and cool]").worded("extra.before");

    static final Key<List<Answers>> EXTRA = Row.sections(
                    "sewing.extra",
                    List.of(EXTRA_NAME, EXTRA_MINUTES, EXTRA_PLACE, EXTRA_INSTRUCTION, EXTRA_AFTER, EXTRA_BEFORE),
                    SewingTerms.MOST_EXTRAS,
                    "[{name: name tape, place: hand, minutes: 3, after: [join the waistband], before: [press and cool]}]")
            .in(of(t -> Optional.of(t.extras())
                    .filter(all -> !all.isEmpty())
                    .map(all -> all.stream().map(SewingKeys::answers).toList())));

    static final Key<Stitch> STITCH = Row.choice(
                    "stitch", ChoiceKind.of(List.of(Stitch.values()), Stitch::plainName), "four-thread overlock")
            .worded("setting.stitch")
            .needed();
    static final Key<Double> STITCH_LENGTH = Row.length("stitch length", 0.2, 6, "why.stitch-length", 0.5, 6, "2.2 mm")
            .worded("setting.stitch-length")
            .needed();
    static final Key<String> NEEDLE = Row.name("needle", "stretch needle 75/11").worded("setting.needle");
    static final Key<String> THREAD_KIND = Row.name("thread", "polyester 120").worded("setting.thread");
    static final Key<Double> FEED = Key.of(
                    "feed", new QuantityKind(Quantities::number, FEED_RANGE, "", "feed.is-not", "feed.write"), "1.6")
            .worded("setting.feed")
            .also("differential feed");
    static final Key<String> NOTE = Row.name("note", "left needle 4").worded("setting.note");

    /** In the fabric section: what worked is kept with the cloth it worked in. */
    static final Key<List<Answers>> SETTINGS = Row.sections(
                    "fabric.settings",
                    List.of(STITCH, STITCH_LENGTH, NEEDLE, THREAD_KIND, FEED, NOTE),
                    Stitch.values().length,
                    "[{stitch: four-thread overlock, stitch length: 2.2 mm, feed: 1.6, note: left needle 4}]")
            .in(of(t -> Optional.of(t.kept()).filter(k -> !k.isEmpty()).map(SewingKeys::settings)));

    private SewingKeys() {}

    static List<Key<?>> rows() {
        return List.of(SEWING, CONVERSION, CONE, SPOOL, PAIRS, IN_WORK, EXTRA);
    }

    private static <T> Lens<T> of(Function<SewingTerms, Optional<T>> get) {
        return Lens.reading(m -> get.apply(m.sewing()));
    }

    private static Key<Double> thread(String path, double metres, Function<SewingTerms, Double> get, String example) {
        LengthKind kind = new LengthKind(THREAD, Optional.of(new LengthKind.Usual(50_000, 10_000_000)), false);
        return Key.of(path, kind, example).usually(metres * 1000).in(of(t -> Optional.of(get.apply(t) * 1000)));
    }

    private static Answers answers(SewingTerms.Extra extra) {
        Answers out = Answers.NONE
                .with(EXTRA_NAME.path(), extra.name())
                .with(EXTRA_MINUTES.path(), extra.minutes())
                .with(EXTRA_PLACE.path(), extra.place());
        out = extra.instruction().isEmpty() ? out : out.with(EXTRA_INSTRUCTION.path(), extra.instruction());
        out = extra.after().isEmpty() ? out : out.with(EXTRA_AFTER.path(), extra.after());
        return extra.before().isEmpty() ? out : out.with(EXTRA_BEFORE.path(), extra.before());
    }

    private static List<Answers> settings(java.util.Map<Stitch, stretchwright.sewing.Setting> all) {
        List<Answers> out = new ArrayList<>();
        for (Stitch stitch : Stitch.values()) {
            stretchwright.sewing.Setting setting = all.get(stitch);
            if (setting != null) {
                Answers kept =
                        Answers.NONE.with(STITCH.path(), stitch).with(STITCH_LENGTH.path(), setting.stitchLength());
                kept = own(kept, NEEDLE, setting.needle());
                kept = own(kept, THREAD_KIND, setting.thread());
                out.add(own(kept, NOTE, setting.note()));
            }
        }
        return out;
    }

    private static Answers own(Answers answers, Key<String> key, Said words) {
        return words.isNothing()
                ? answers
                : answers.with(key.path(), Voice.plain().say(words));
    }
}
