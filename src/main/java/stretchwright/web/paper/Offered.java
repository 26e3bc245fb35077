package stretchwright.web.paper;

import java.util.Set;
import stretchwright.intake.MakeFile;
import stretchwright.intake.PrintKeys;
import stretchwright.print.kit.FileGroup;

/** The files that the page offers: those that were ticked; where none were, all, for each is made only when it is asked for. */
public final class Offered {
    private Offered() {}

    public static Set<FileGroup> of(MakeFile make) {
        return PrintKeys.FILES.of(make.answers()).orElseGet(FileGroup::all);
    }
}
