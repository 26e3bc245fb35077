package stretchwright.web.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stretchwright.ground.Said;
import stretchwright.print.kit.FileGroup;
import stretchwright.report.Report;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.web.frame.Opened;

/** The files of a make. */
public record PrintPage(Frame frame, Opened make, MayCut says, List<File> files) {
    public PrintPage {
        files = List.copyOf(files);
    }

    public record File(String name, String address, String kind) {}

    static PrintPage of(Opened make) {
        return new PrintPage(
                Frame.of(make, Frame.Stop.PRINT), make, MayCut.of(make.session().fit(), make.voice()), files(make));
    }

    private static List<File> files(Opened make) {
        List<File> files = new ArrayList<>();
        Set<FileGroup> offered = Offered.of(make.session().make());
        make.session().printables().stream()
                .filter(p -> offered.contains(p.group()))
                .forEach(p -> files.add(file(make, p.name(), kind(p.group()))));
        files.add(file(make, Report.NAME, Tell.said("file.report")));
        return files;
    }

    private static File file(Opened make, String name, Said kind) {
        return new File(name, make.address() + "/file/" + name, make.voice().say(kind));
    }

    public String say(String key) {
        return make.voice().say(Tell.said(key));
    }

    private static Said kind(FileGroup group) {
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
