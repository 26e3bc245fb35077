package stretchwright.web.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.Unit;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Opened;

/**
 * Flaws and the outline of a remnant, as they stand in the make and can be told by its maker: each is a key of it.
 *
 * @param outline one corner a line; empty for cloth with straight selvages
 * @param sent what was typed and refused; empty else
 */
public record OwnCloth(List<Flaw> flaws, String outline, String unit, Form sent) {
    static final String FLAWS = "fabric.flaws";
    static final String ON_HAND = "fabric.on hand";
    static final String OUTLINE = ON_HAND + ".outline";
    private static final List<String> PARTS = List.of("from left", "from end", "wide", "long");

    public OwnCloth {
        flaws = List.copyOf(flaws);
    }

    /** A place to lay round, as it was written. */
    public record Flaw(int number, String fromLeft, String fromEnd, String wide, String along) {}

    static OwnCloth of(Opened make, Form sent) {
        Form form = Form.of(make.text());
        List<Flaw> flaws = new ArrayList<>();
        for (int i = 1; form.has(FLAWS + "." + i); i++) {
            String at = FLAWS + "." + i + ".";
            flaws.add(new Flaw(
                    i,
                    form.value(at + "from left"),
                    form.value(at + "from end"),
                    form.value(at + "wide"),
                    form.value(at + "long")));
        }
        Unit unit = make.session().make().unit();
        String outline = sent.value("do").equals("outline")
                ? sent.value("outline")
                : form.value(OUTLINE).replaceAll("\\s*;\\s*", "\n");
        return new OwnCloth(flaws, outline, unit.symbol(), sent);
    }

    /** Of a flaw that was refused. */
    public String typed(String part) {
        return isRefused("flaw") ? sent.value(part) : "";
    }

    /** Whether that is what was typed last, and refused. */
    public boolean isRefused(String what) {
        return sent.value("do").equals(what);
    }

    /** The make with one flaw more. */
    static String with(String text, Form sent) {
        Form form = Form.of(text);
        int next = 1;
        while (form.has(FLAWS + "." + next)) {
            next++;
        }
        Map<String, String> changes = new LinkedHashMap<>();
        for (String part : PARTS) {
            String value = sent.value(part);
            if (value.isBlank()) {
                throw new Touched.Refused("lay.flaw-lacks");
            }
            changes.put(FLAWS + "." + next + "." + part, value);
        }
        return form.with(changes).makeText();
    }

    /** The make without that flaw. */
    static String without(String text, String number) {
        Form form = Form.of(text);
        if (!number.matches("[0-9]{1,3}") || !form.has(FLAWS + "." + number)) {
            throw new Touched.Refused("lay.no-flaw");
        }
        Map<String, List<String>> left = new LinkedHashMap<>(form.typed());
        left.keySet().removeIf(k -> k.startsWith(FLAWS + "." + number + "."));
        return Form.sent(left).makeText();
    }

    /** The make laid on a remnant with these corners; on cloth with straight selvages where there are none. */
    static String outlined(String text, String corners) {
        Form form = Form.of(text);
        String typed = corners.lines()
                .map(String::strip)
                .filter(l -> !l.isEmpty())
                .map(l -> l.contains("=") ? l : l.replaceFirst("\\s*[,;]\\s*|\\s+(?=[0-9.]+\\s*\\p{L}*$)", " = "))
                .collect(java.util.stream.Collectors.joining("; "));
        Map<String, String> changes = new LinkedHashMap<>();
        if (typed.isEmpty() && form.value(OUTLINE).isEmpty()) {
            return text;
        }
        changes.put(ON_HAND, "");
        changes.put(OUTLINE, typed);
        return form.with(changes).makeText();
    }
}
