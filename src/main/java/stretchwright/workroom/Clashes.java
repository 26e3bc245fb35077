package stretchwright.workroom;

import java.util.List;
import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.workroom.store.Saved;

/** Of two who edited one thing the second is told, key by key, what the first made of it; both texts are kept. */
final class Clashes {
    private Clashes() {}

    /** Thrown where one of them did. */
    static void mustNot(List<Saved> saved) {
        for (Saved one : saved) {
            if (one instanceof Saved.Clash clash) {
                throw told(clash);
            }
        }
    }

    private static BadInput told(Saved.Clash clash) {
        Findings findings = new Findings("workroom");
        findings.add(
                clash.theirs().name(),
                Tell.said(
                        "clash",
                        Part.count(clash.theirs().number()),
                        Part.count(clash.yours().number())),
                Tell.said("clash.help"));
        List<Said> rows =
                Differences.between(clash.theirs().text(), clash.yours().text());
        rows.forEach(r -> findings.add(clash.theirs().name(), r, Said.NOTHING));
        return new BadInput(findings.all());
    }
}
