package stretchwright.web.things;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.BadInput;
import stretchwright.ground.Finding;
import stretchwright.ground.Part;
import stretchwright.ground.Quantities;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.Need;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.Workroom;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/**
 * A wearer, cloth or boot that is looked at.
 *
 * @param form what its text says
 * @param asker the make that asked for it, to which one goes back
 */
record Held(Bench bench, Thing thing, Form form, Optional<Opened> asker) {
    /** @param asker id of a make, or nothing */
    static Held of(Bench bench, Context ctx, Kind kind, String asker) {
        Thing thing = bench.thing(ctx, kind);
        Form form = Form.of(bench.room().standing(thing).text());
        return new Held(bench, thing, form, asker.isEmpty() ? Optional.empty() : Optional.of(make(bench, asker)));
    }

    private static Opened make(Bench bench, String id) {
        Thing make = bench.room()
                .store()
                .thing(id)
                .filter(t -> t.kind() == Kind.MAKE && t.place() == Place.HERE)
                .orElseThrow(NotFoundResponse::new);
        return bench.opened(new Workroom.Stored(make, bench.room().standing(make)));
    }

    static String asker(Context ctx) {
        return Optional.ofNullable(ctx.queryParam("for")).orElse("");
    }

    /** Address under the thing's own, which remembers who asked. */
    String to(String path) {
        String word = switch (thing.kind()) {
            case WEARER -> "/wearers/";
            case FABRIC -> "/cloths/";
            case BOOT -> "/boots/";
            case STYLE, MAKE, NOTE -> throw new IllegalStateException("no shelf for a " + thing.kind());
        };
        return word + thing.id() + path + asker.map(a -> "?for=" + a.id()).orElse("");
    }

    String askerId() {
        return asker.map(Opened::id).orElse("");
    }

    Unit unit() {
        return Unit.of(form.value("unit")).orElse(Unit.CM);
    }

    String say(Part said) {
        return Voice.of(unit()).say(said);
    }

    String say(String key, Part... parts) {
        return say(Tell.said(key, parts));
    }

    static String plain(String key, Part... parts) {
        return Voice.plain().say(Tell.said(key, parts));
    }

    List<String> words(List<Finding> wrong) {
        return wrong.stream().map(f -> f.told(Voice.of(unit()))).distinct().toList();
    }

    /** A length as it stands in a field of this unit. */
    static String shown(String written, Unit unit) {
        OptionalDouble mm = Quantities.length(written, unit);
        String plain = written.strip();
        if (mm.isEmpty() || Quantities.number(plain).isPresent()) {
            return plain;
        }
        return plain.endsWith(unit.symbol()) && !(unit == Unit.M && !plain.matches(".*[0-9 ]m"))
                ? plain.substring(0, plain.length() - unit.symbol().length()).strip()
                : Voice.of(unit).bare(Part.length(mm.getAsDouble()));
    }

    /**
     * What it says now is stored, and the make that asked is brought up to date as soon as it can be; nothing happens where it says nothing new.
     *
     * @param seen number of the version that was on the screen
     * @throws BadInput where the make cannot be drafted so, or somebody else was first
     */
    void save(String what, Form changed, String seen) {
        Workroom room = bench.room();
        String text = room.own(thing.kind(), changed.makeText());
        boolean same = text.equals(room.own(thing.kind(), form.makeText()));
        if (same
                && asker.map(m -> room.own(thing.kind(), m.text()).equals(text)).orElse(true)) {
            return;
        }
        long number = seen.matches("[0-9]{1,12}") ? Long.parseLong(seen) : thing.now();
        Thing then = new Thing(
                thing.id(), thing.kind(), thing.name(), number, thing.place(), thing.links(), thing.changed());
        if (asker.filter(m -> takes(m, then, text)).isPresent()) {
            room.change(what, then, text, asker.get().stored());
        } else {
            room.change(what, then, text);
        }
    }

    /** Whether the make can be brought up to date already; a boot of which only the first measure is there waits for the others. */
    private boolean takes(Opened make, Thing then, String text) {
        try {
            bench.tried(make, bench.room().with(make.stored(), then, text))
                    .session()
                    .pattern();
            return true;
        } catch (BadInput e) {
            if (e.findings().stream().allMatch(f -> Need.isLack(f.wrong()))) {
                return false;
            }
            throw e;
        }
    }
}
