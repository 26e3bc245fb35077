package stretchwright.web.ask;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** What a new make takes over from the make that was changed last: whoever sews has the same machines and paper. */
public record TakenOver(Thing from, Form form) {
    public static final String MACHINES = "machines";
    public static final String PAPER = "print.paper";

    /** Empty where there is no make. */
    public static Optional<TakenOver> of(Bench bench) {
        return bench.room().store().list(Kind.MAKE, Place.HERE, "", 0, 1).stream()
                .findFirst()
                .map(last ->
                        new TakenOver(last, Form.of(bench.room().standing(last).text())));
    }

    /** What it says under a key, as people write it; empty for nothing. */
    public String told(String key) {
        return String.join(", ", form.typed().getOrDefault(key, List.of()));
    }

    Form into(Form make) {
        Map<String, List<String>> typed = new LinkedHashMap<>(make.typed());
        for (String key : List.of(MACHINES, PAPER)) {
            if (form.has(key)) {
                typed.put(key, form.typed().get(key));
            }
        }
        return new Form(typed);
    }
}
