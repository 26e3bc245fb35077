package stretchwright.web.things;

import java.util.Optional;
import stretchwright.ground.BadInput;
import stretchwright.web.form.Form;
import stretchwright.web.frame.Bench;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Thing;

/**
 * A wearer, cloth or boot on its shelf: where it is opened, and in few words what is known of it.
 *
 * @param due whether that asks for something
 * @param dye of a cloth; empty where nobody said it
 * @param metres of a cloth that are left; 0 where that is not known
 */
public record Shelved(String address, String name, String known, boolean due, String dye, double metres) {
    public static Shelved of(Bench bench, Thing thing) {
        Held held = new Held(bench, thing, Form.of(bench.room().standing(thing).text()), Optional.empty());
        String name = thing.name();
        try {
            return switch (thing.kind()) {
                case WEARER -> WearerPage.shelved(held);
                case FABRIC -> ClothPage.shelved(held);
                case BOOT -> new Shelved(held.to(""), name, BootPage.known(held), false, "", 0);
                case STYLE, MAKE, NOTE -> throw new IllegalArgumentException("no shelf for a " + thing.kind());
            };
        } catch (BadInput e) {
            return new Shelved(held.to(""), name, "", true, "", 0);
        }
    }

    /** Where a new one of a kind begins. */
    public static String fresh(Kind kind) {
        return kind == Kind.WEARER ? "/wearers/new" : kind == Kind.FABRIC ? "/cloths/new" : "/boots/new";
    }
}
