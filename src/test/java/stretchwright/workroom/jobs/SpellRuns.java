package stretchwright.workroom.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stretchwright.benchmarks.Instances;
import stretchwright.ground.Findings;
import stretchwright.lay.nest.Effort;
import stretchwright.lay.nest.LayClock;
import stretchwright.lay.nest.StripInstance;
import stretchwright.lay.nest.StripLay;

/** What cutting a search into spells costs or gains: densities of the same rounds in one go and in spells. FOLDER ROUNDS NAME... */
public final class SpellRuns {
    private SpellRuns() {}

    public static void main(String[] args) throws Exception {
        int rounds = Integer.parseInt(args[1]);
        for (String name : List.of(args).subList(2, args.length)) {
            StripInstance instance = Instances.read(Path.of(args[0], name + ".json"));
            for (long seed = 1; seed <= 3; seed++) {
                Effort effort = new Effort(rounds * 4 / 5, rounds / 5);
                double plain = StripLay.lay(instance, seed, effort, 2, LayClock.NONE, s -> {}, new Findings(name))
                        .orElseThrow()
                        .density();
                System.out.printf(
                        Locale.ROOT,
                        "%s, seed %d, %d rounds: in one go %.2f %%, in spells %.2f %%%n",
                        name,
                        seed,
                        rounds,
                        100 * plain,
                        100 * inSpells(new Asked.Lay(instance, seed, effort)));
            }
        }
    }

    private static double inSpells(Asked.Lay asked) {
        LaySpells spells = new LaySpells(asked, 2, LayClock.NONE, LaySpells.LONG);
        LaySpells.State state = spells.next(Optional.empty());
        while (!spells.over(state.reached())) {
            state = spells.next(Optional.of(state));
        }
        return state.best().density();
    }
}
