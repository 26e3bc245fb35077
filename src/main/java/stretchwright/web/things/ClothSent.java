package stretchwright.web.things;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;
import stretchwright.web.form.Form;

/** What is read off a cloth: its fields, and the keys of the make file that they fill. */
final class ClothSent {
    /** Marks are so far apart, mm and inches. */
    private static final double MARKED_MM = 100;

    private static final double MARKED_IN = 4;

    /** The usual weights on the strip, as the fields are called. */
    static final List<String> WEIGHTS = List.of("100 g", "250 g", "500 g");

    private final ClothTest test;
    private final Unit unit;

    ClothSent(ClothTest test, Unit unit) {
        this.test = test;
        this.unit = unit;
    }

    /** In which marks are read: mm, for whoever thinks in cm too. */
    Unit marks() {
        return unit == Unit.IN ? Unit.IN : Unit.MM;
    }

    private double marked() {
        return unit == Unit.IN ? Unit.IN.toMm(MARKED_IN) : MARKED_MM;
    }

    /** The fields as they were kept. */
    Map<String, String> kept(Form form) {
        Map<String, String> out = new LinkedHashMap<>();
        switch (test) {
            case FOLD, FOLD_ALONG -> {
                List<String> fold = listed(form.value(test.keys().get(0)), marks());
                String share = form.value(test.keys().get(1));
                out.put("was", fold.size() == 3 ? fold.get(0) : "");
                out.put("pulled", fold.size() == 3 ? fold.get(1) : share);
                out.put("rested", fold.size() == 3 ? fold.get(2) : "");
            }
            case HANGING, HANGING_ALONG -> hung(form, out);
            case WRAP -> {
                out.put("hip", Held.shown(form.value("fabric.wrap hip"), unit));
                out.put("calf", Held.shown(form.value("fabric.wrap calf"), unit));
            }
            case SHOW_THROUGH -> out.put("at", form.value("fabric.shows through at"));
            case WASH -> {
                out.put("across", form.value("fabric.shrinkage across"));
                out.put("along", form.value("fabric.shrinkage along"));
            }
        }
        return out;
    }

    private static List<String> listed(String typed, Unit unit) {
        return Arrays.stream(typed.split(";"))
                .map(t -> Held.shown(t, unit))
                .filter(t -> !t.isEmpty())
                .toList();
    }

    private void hung(Form form, Map<String, String> out) {
        List<String> others = new ArrayList<>();
        List<String> read = Arrays.stream(form.value(test.keys().get(0)).split(";"))
                .map(String::strip)
                .filter(t -> !t.isEmpty())
                .toList();
        for (int i = 0; i < read.size(); i++) {
            String[] pair = read.get(i).split("=");
            if (pair.length == 1 && i < WEIGHTS.size()) {
                out.put(WEIGHTS.get(i), Held.shown(pair[0], marks()));
            } else if (pair.length == 2 && WEIGHTS.contains(pair[0].strip())) {
                out.put(pair[0].strip(), Held.shown(pair[1], marks()));
            } else {
                others.add(read.get(i));
            }
        }
        out.put("others", String.join("; ", others));
        List<String> back = listed(form.value(test.keys().get(1)), marks());
        out.put("back-1", back.isEmpty() ? "" : back.get(0));
        out.put("back-2", back.size() < 2 ? "" : back.get(1));
        out.put("width", Held.shown(form.value(test.keys().get(2)), marks()));
        if (test == ClothTest.HANGING) {
            out.put("after", Held.shown(form.value(test.keys().get(3)), marks()));
        }
    }

    /** What the cloth's text says with what was sent. */
    Form changed(Form before, Form sent) {
        Map<String, String> out = new LinkedHashMap<>();
        test.keys().forEach(k -> out.put(k, ""));
        switch (test) {
            case FOLD, FOLD_ALONG -> fold(sent, out);
            case HANGING, HANGING_ALONG -> hang(sent, out);
            case WRAP -> {
                out.put("fabric.wrap hip", with(sent.value("hip"), unit));
                out.put("fabric.wrap calf", with(sent.value("calf"), unit));
            }
            case SHOW_THROUGH -> out.put("fabric.shows through at", percent(sent.value("at")));
            case WASH -> {
                out.put("fabric.shrinkage across", shrunk(sent.value("across")));
                out.put("fabric.shrinkage along", shrunk(sent.value("along")));
            }
        }
        return before.with(out);
    }

    /** Three lengths are a fold test, two of them or a share the stretch alone. */
    private void fold(Form sent, Map<String, String> out) {
        String was = sent.value("was").isBlank() ? Double.toString(marks().fromMm(marked())) : sent.value("was");
        String pulled = sent.value("pulled");
        if (!sent.value("rested").isBlank()) {
            out.put(
                    test.keys().get(0),
                    Stream.of(was, pulled, sent.value("rested"))
                            .map(t -> with(t, marks()))
                            .collect(Collectors.joining("; ")));
            return;
        }
        OptionalDouble from = Quantities.length(was, marks());
        OptionalDouble to = Quantities.length(pulled, marks());
        boolean lengths = from.isPresent() && to.isPresent() && to.getAsDouble() > from.getAsDouble();
        out.put(test.keys().get(1), lengths ? share(to.getAsDouble() / from.getAsDouble() - 1) : pulled);
    }

    private void hang(Form sent, Map<String, String> out) {
        List<String> pairs = new ArrayList<>();
        WEIGHTS.stream()
                .filter(w -> !sent.value(w).isBlank())
                .forEach(w -> pairs.add(w + " = " + with(sent.value(w), marks())));
        Arrays.stream(sent.value("others").split(";"))
                .map(String::strip)
                .filter(t -> !t.isEmpty())
                .forEach(pairs::add);
        pairs.sort(Comparator.comparingDouble(
                p -> Quantities.force(p.split("=")[0]).orElse(Double.MAX_VALUE)));
        out.put(test.keys().get(0), String.join("; ", pairs));
        String back = Stream.of("back-1", "back-2")
                .map(sent::value)
                .filter(t -> !t.isBlank())
                .map(t -> with(t, marks()))
                .collect(Collectors.joining("; "));
        boolean second = sent.value("back-1").isBlank() && !back.isEmpty();
        boolean first = sent.value("back-2").isBlank() && !back.isEmpty();
        out.put(test.keys().get(1), second ? "100 g = " + back : first ? "250 g = " + back : back);
        out.put(test.keys().get(2), with(sent.value("width"), marks()));
        if (test == ClothTest.HANGING) {
            out.put(test.keys().get(3), with(sent.value("after"), marks()));
        }
    }

    /** What 100 mm became, or the share that was lost. */
    private String shrunk(String typed) {
        OptionalDouble mm = Quantities.length(typed, marks());
        return mm.isPresent() && mm.getAsDouble() <= marked() && mm.getAsDouble() > marked() / 2
                ? share(1 - mm.getAsDouble() / marked())
                : percent(typed);
    }

    private static String share(double share) {
        return Math.round(1000 * share) / 10.0 + " %";
    }

    private static String percent(String typed) {
        return Quantities.number(typed).isPresent() ? typed.strip() + " %" : typed;
    }

    private static String with(String typed, Unit unit) {
        return Quantities.number(typed).isPresent() ? typed.strip() + " " + unit.symbol() : typed;
    }
}
