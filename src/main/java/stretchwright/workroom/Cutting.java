package stretchwright.workroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Numbers;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.intake.NameKind;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Leftover;
import stretchwright.lay.OnHand;
import stretchwright.make.Session;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Names;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Store;
import stretchwright.workroom.store.Thing;

/**
 * A make that was cut: its cloth falls by what the lay used, and what is left over of it comes back as remnants; a remnant
 * that is used up goes into the bin. One step, so that it can be undone. Contrasts have no place in the stash, and stay as they are.
 */
public final class Cutting {
    /** Heading of the note that says it. */
    public static final String CUT = "cut";

    /** Smaller remnants are not worth a shelf, mm; no cloth may be narrower in a make file. */
    private static final double LEAST = 200;

    /** Less than this is no cloth any more, mm: no make file may name it. */
    private static final double NOTHING = 50;

    private final Workroom room;
    private final Workroom.Stored make;

    public Cutting(Workroom room, Workroom.Stored make) {
        this.room = room;
        this.make = make;
    }

    /**
     * What became of the cloth.
     *
     * @param used mm
     * @param left mm; empty where nobody wrote down how much there was, or nothing is left
     */
    public record Cut(Optional<Thing> cloth, double used, OptionalDouble left, List<Thing> remnants) {
        public Cut {
            remnants = List.copyOf(remnants);
        }
    }

    /** @param again whether it may be cut once more */
    public Cut run(boolean again) {
        Store store = room.store();
        if (!again) {
            mustBeUncut();
        }
        MakeFile read = make.read();
        ClothLay lay = Session.of(read).lays().get(0);
        double used = OnHand.needed(lay.lay().length(), lay.fabric(), lay.use().buying());
        Optional<Thing> cloth = store.thing(make.version().links().fabric()).filter(t -> t.place() == Place.HERE);
        List<Edit> edits = new ArrayList<>();
        OptionalDouble left = OptionalDouble.empty();
        List<Edit> remnants = new ArrayList<>();
        if (cloth.isPresent()) {
            ClothText text = new ClothText(room.standing(cloth.get()).text());
            left = left(text, used);
            Edit after = Edit.after(cloth.get(), cloth.get().name(), text.onHand(left));
            // of a roll nothing left is to be bought again; a remnant is gone
            edits.add(left.isEmpty() && isRemnant(cloth.get(), text) ? after.intoBin() : after);
            remnants.addAll(remnants(lay, text, cloth.get()));
        }
        edits.addAll(remnants);
        edits.add(Edit.fresh(Kind.NOTE, CUT, used(used), Links.from(make.thing().id())));
        Clashes.mustNot(store.save(CUT, edits));
        List<Thing> back = remnants.stream()
                .flatMap(e -> store.named(Kind.FABRIC, e.name()).stream())
                .toList();
        return new Cut(cloth, used, left, back);
    }

    private static String used(double mm) {
        return Numbers.plain(Unit.M.fromMm(mm)) + " " + Unit.M.symbol();
    }

    private static boolean isRemnant(Thing cloth, ClothText text) {
        return text.hasOutline() || !cloth.links().origin().isEmpty();
    }

    /** Empty where it was never told, or too little remains to be told. */
    private static OptionalDouble left(ClothText text, double used) {
        OptionalDouble had = text.onHand();
        return had.isPresent() && had.getAsDouble() - used >= NOTHING
                ? OptionalDouble.of(had.getAsDouble() - used)
                : OptionalDouble.empty();
    }

    private void mustBeUncut() {
        boolean cut = room.store().from(make.thing().id(), Kind.NOTE).stream()
                .anyMatch(n -> n.name().equals(CUT));
        if (cut) {
            Findings findings = new Findings("workroom");
            findings.add(
                    Kind.MAKE.word(),
                    Tell.said("cut.before", Tell.quoted(make.thing().name())),
                    Tell.said("cut.again"));
            throw new BadInput(findings.all());
        }
    }

    /** Rectangles that are large enough; of two layers two, or one twice as wide at the fold. */
    private List<Edit> remnants(ClothLay lay, ClothText text, Thing cloth) {
        List<Edit> out = new ArrayList<>();
        for (Leftover l : lay.use().leftovers()) {
            boolean opened = l.atFold() && 2 * l.width() >= LEAST;
            double width = opened ? 2 * l.width() : l.width();
            if (width < LEAST || l.height() < LEAST) {
                continue;
            }
            for (int copy = opened ? 1 : 0; copy < (opened ? 2 : l.layers()); copy++) {
                String name = freeName(cloth, out);
                out.add(Edit.fresh(Kind.FABRIC, name, text.remnant(name, width, l.height()), Links.from(cloth.id())));
            }
        }
        return out;
    }

    private String freeName(Thing cloth, List<Edit> taken) {
        int number = 1;
        String name;
        do {
            name = nameOf(cloth, number++);
        } while (isTaken(name, taken));
        return name;
    }

    private boolean isTaken(String name, List<Edit> taken) {
        return taken.stream().anyMatch(e -> e.name().equals(name))
                || room.store().named(Kind.FABRIC, name).isPresent();
    }

    private static String nameOf(Thing cloth, int number) {
        return Names.within(
                cloth.name(),
                NameKind.LONGEST, // it stands in make files too
                name -> Voice.plain().say(Tell.said("remnant.name", Part.text(name), Part.count(number))));
    }
}
