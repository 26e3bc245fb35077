package stretchwright.web.things;

import java.util.List;
import java.util.Optional;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;

/**
 * One thing to read off: how, where the reading goes, and what it means.
 *
 * @param where of how many it is
 * @param caution its full words; empty where there is none
 * @param readings the first stand side by side, so many as the tape is read
 * @param fits whether it agrees; empty before it was read, or where something is wrong
 * @param wrong what is wrong with it
 * @param skipped what is taken where it is left out
 * @param wide drawing for a desk, SVG
 * @param narrow the same for a phone
 * @param curve that grows with the readings, SVG; empty where there is none
 */
public record ReadingPage(
        Frame frame,
        Way way,
        String where,
        String title,
        String how,
        String caution,
        List<Blank> readings,
        Optional<Blank> third,
        List<Fold> folds,
        Optional<MayCut> fits,
        List<String> wrong,
        String skipped,
        String wide,
        String narrow,
        String curve) {
    public ReadingPage {
        readings = List.copyOf(readings);
        folds = List.copyOf(folds);
        wrong = List.copyOf(wrong);
    }

    /**
     * Where it is sent and what follows.
     *
     * @param action to which the form is sent
     * @param seen the version that was read
     * @param asker id of the make that asked; may be empty
     * @param goes on the first button
     * @param skip where one goes without it
     */
    public record Way(String action, long seen, String asker, String goes, String skip, String back) {}

    public String say(String key) {
        return Held.plain(key);
    }

    /** Whether the third reading is asked for. */
    public boolean thrice() {
        return third.filter(b -> !b.value().isEmpty()).isPresent()
                || wrong.contains(say("things.third"))
                || fits.filter(f -> f.why().equals(say("things.third"))).isPresent();
    }
}
