package stretchwright.web.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stretchwright.ground.Said;
import stretchwright.print.Printable;
import stretchwright.print.kit.FileGroup;
import stretchwright.report.Report;
import stretchwright.web.frame.Opened;

/** The files of a make, in the order in which they are used, plainly named. */
public final class FileList {
    private FileList() {}

    /** Files of one use. */
    public record Group(String title, List<File> files) {
        public Group {
            files = List.copyOf(files);
        }
    }

    public record File(String name, String address) {}

    static List<Group> of(Opened make) {
        Set<FileGroup> offered = Offered.of(make.session().make());
        Map<String, List<File>> groups = new LinkedHashMap<>();
        for (FileGroup group : FileGroup.values()) {
            for (Printable p : make.session().printables()) {
                if (p.group() == group && offered.contains(group)) {
                    groups.computeIfAbsent(say(make, title(group)), g -> new ArrayList<>())
                            .add(file(make, p.name()));
                }
            }
        }
        groups.computeIfAbsent(say(make, Tell.said("file.report")), g -> new ArrayList<>())
                .add(file(make, Report.NAME));
        return groups.entrySet().stream()
                .map(e -> new Group(e.getKey(), e.getValue()))
                .toList();
    }

    private static String say(Opened make, Said said) {
        return make.voice().say(said);
    }

    private static File file(Opened make, String name) {
        return new File(name, make.address() + "/file/" + name);
    }

    private static Said title(FileGroup group) {
        return switch (group) {
            case PATTERN -> Tell.said("file.pattern");
            case OTHER_PAPERS -> Tell.said("file.other-papers");
            case PROJECTOR -> Tell.said("file.projector");
            case TRACING -> Tell.said("file.tracing");
            case LAY -> Tell.said("file.lay");
            case PLAN -> Tell.said("file.plan");
            case BOOKLET -> Tell.said("file.booklet");
            case CHECKLIST -> Tell.said("file.checklist");
            case STEPS -> Tell.said("file.steps");
            case FIT -> Tell.said("file.fit");
            case EXCHANGE -> Tell.said("file.exchange");
        };
    }
}
