package stretchwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Rows of the contrasts: the fabric's own quality in another colour or print, so only what may differ is asked for. */
public final class ContrastKeys {
    static final Key<String> NAME = Row.name("name", "Rust").worded("contrast.name");

    static final Key<List<String>> PIECES = Key.of("pieces", new NamesKind(), "[cuff, waistband]")
            .worded("contrast.pieces")
            .needed();

    public static final Key<List<Answers>> CONTRASTS = Row.sections(
                    "fabric.contrasts", rows(), 4, "[{name: Rust, pieces: [cuff, waistband], usable width: {1470}}]")
            .also("contrast", "contrast fabric")
            .in(Lens.reading(m -> Optional.of(m.contrasts())
                    .filter(all -> !all.isEmpty())
                    .map(all -> all.stream().map(ContrastKeys::answers).toList())))
            .echoed("contrasts");

    private ContrastKeys() {}

    private static List<Key<?>> rows() {
        List<Key<?>> rows = new ArrayList<>(List.of(NAME, PIECES));
        rows.addAll(RollKeys.CONTRAST.rows());
        return rows;
    }

    /** Of a contrast only what may differ from the fabric, as the report repeats it. */
    private static Answers answers(Contrast contrast) {
        RollKeys roll = RollKeys.CONTRAST;
        return Answers.NONE
                .with(NAME.path(), contrast.fabric().roll().name())
                .with(PIECES.path(), contrast.pieces())
                .with(roll.width.path(), contrast.fabric().roll().usableWidth())
                .with(roll.oneWay.path(), contrast.fabric().roll().oneWay())
                .with(roll.repeat.path(), contrast.fabric().roll().repeatAlong());
    }
}
