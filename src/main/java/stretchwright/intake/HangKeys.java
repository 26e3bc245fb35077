package stretchwright.intake;

import java.util.List;
import stretchwright.fabric.Hung;
import stretchwright.fabric.LoadCurve;

/** Rows of the hanging test: lengths of a strip under weights, and what else the strip tells. */
public final class HangKeys {
    /** mm: a reading of a ruler is told to a millimetre. */
    private static final double READ_TO = 1.01;

    private static final List<String> OUT = List.of("100 g", "250 g", "500 g");
    private static final List<String> BACK = List.of("250 g", "100 g");
    private static final int MOST = 20;

    private static final LengthKind LENGTH = Row.lengthKind(20, 400, "why.hang", 80, 400);

    public static final Key<List<LoadCurve.Reading>> ACROSS =
            hung("fabric.hang across", OUT, true, "[{112}, {125}, {148}]").needing(Need.oneOf("across"));

    public static final Key<List<LoadCurve.Reading>> ALONG =
            hung("fabric.hang along", OUT, true, "[{108}, {118}, {134}]").needing(Need.oneOf("along"));

    static final Key<Boolean> STRIP =
            Row.section("fabric.strip", "{width across: {43}}").also("hanging strip");

    public static final Key<List<LoadCurve.Reading>> BACK_ACROSS = back("fabric.strip.back across", "[{131}, {116}]");
    public static final Key<List<LoadCurve.Reading>> BACK_ALONG = back("fabric.strip.back along", "[{122}, {111}]");

    public static final Key<Double> WIDTH_ACROSS = width("fabric.strip.width across", "{43}");
    public static final Key<Double> WIDTH_ALONG = width("fabric.strip.width along", "{45}");

    public static final Key<Double> AFTER = Key.of("fabric.strip.after 30 min", LENGTH, "{151}")
            .onRoll(Roll.within(READ_TO))
            .echoed("strip.after30Min");

    private HangKeys() {}

    static List<Key<?>> rows() {
        return List.of(ACROSS, ALONG, STRIP, BACK_ACROSS, WIDTH_ACROSS, BACK_ALONG, WIDTH_ALONG, AFTER);
    }

    private static Key<List<LoadCurve.Reading>> back(String path, String example) {
        Key<List<LoadCurve.Reading>> row = hung(path, BACK, false, example);
        return row.echoed("strip." + row.camel()).onRoll(Roll.whereTold(HangKeys::alike));
    }

    /** On one roll the load curves that come of it are compared. */
    private static Key<List<LoadCurve.Reading>> hung(String path, List<String> usual, boolean out, String example) {
        return Key.of(path, new HangsKind(LENGTH, FabricKeys.HUNG_ON, usual, out, MOST), example);
    }

    /** A strip may come out wider, which is told in words of its own. */
    private static Key<Double> width(String path, String example) {
        Key<Double> row = Row.length(path, 5, 2 * Hung.WIDTH, "why.strip-width", 15, 60, example)
                .onRoll(Roll.within(READ_TO));
        return row.echoed("strip." + row.camel());
    }

    private static boolean alike(List<LoadCurve.Reading> a, List<LoadCurve.Reading> b) {
        boolean alike = a.size() == b.size();
        for (int i = 0; i < a.size() && alike; i++) {
            alike = Math.abs(HangsKind.mm(a.get(i)) - HangsKind.mm(b.get(i))) <= READ_TO
                    && Math.abs(a.get(i).tension() - b.get(i).tension()) <= READ_TO;
        }
        return alike;
    }
}
