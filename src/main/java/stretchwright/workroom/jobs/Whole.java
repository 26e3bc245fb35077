package stretchwright.workroom.jobs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.lay.ClubClock;
import stretchwright.lay.SearchWork;
import stretchwright.lay.nest.LayClock;
import stretchwright.make.Make;
import stretchwright.many.Club;
import stretchwright.many.Sizes;

/**
 * Work that is done in one go, and from the beginning where it was broken off: a club, whose tables hang on each other,
 * and a table of sizes, which takes less than a second.
 *
 * @param files none where nothing could be done
 */
record Whole(List<String> told, List<Document> files) {
    /**
     * @param stop only ends it sooner, and then what comes is to be thrown away
     * @throws BadInput where it cannot be done as it was asked
     */
    static Whole of(Asked asked, LayClock stop) {
        return asked instanceof Asked.Club club ? club(club, stop) : sizes((Asked.Sizes) asked);
    }

    private static Whole club(Asked.Club asked, LayClock stop) {
        Map<Asked.File, MakeFile> read = new HashMap<>();
        List<MakeFile> makes = asked.makes().stream()
                .map(f -> read.computeIfAbsent(f, Whole::make))
                .toList();
        SearchWork work = new SearchWork(asked.seed(), asked.effort(), ClubClock.of((from, to) -> stop, stop));
        Club club = Club.of(makes, new Club.Wish(asked.table(), work), Progress.silent());
        return new Whole(club.stopLines(), club.documents());
    }

    /** The good rows are done though others are broken; what is wrong with those is told. */
    private static Whole sizes(Asked.Sizes asked) {
        Sizes sizes = Sizes.of(
                make(asked.make()), asked.bodies().name(), asked.bodies().bytes(), asked.unit());
        List<String> told =
                new ArrayList<>(sizes.findings().stream().map(Finding::line).toList());
        told.addAll(sizes.stopLines());
        return new Whole(told, sizes.documents());
    }

    private static MakeFile make(Asked.File file) {
        return Make.read(file.name(), file.bytes());
    }
}
