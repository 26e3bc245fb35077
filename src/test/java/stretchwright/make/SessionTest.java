package stretchwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.body.Body;
import stretchwright.body.Measured;
import stretchwright.fabric.Fabric;
import stretchwright.fit.FitReport;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Findings;
import stretchwright.ground.SampleSaid;
import stretchwright.intake.MakeFile;
import stretchwright.intake.PrintTerms;
import stretchwright.lay.ClothLay;
import stretchwright.lay.Lay;
import stretchwright.pattern.LayTerms;
import stretchwright.pattern.Pattern;
import stretchwright.pattern.Piece;
import stretchwright.pattern.Style;
import stretchwright.pattern.TopEnd;
import stretchwright.print.Printable;
import stretchwright.print.kit.FileGroup;
import stretchwright.sewing.SewingPlan;

class SessionTest {
    private final Counted rooms = new Counted();

    private static MakeFile example() {
        try {
            return Make.read("a.yaml", Files.readAllBytes(Path.of("examples/evening-practice.yaml")));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private Session session() {
        return Session.of(example(), rooms);
    }

    @Test
    void whoAsksForTheFitHasNothingLaidAndNothingSewn() {
        session().fit();
        assertThat(rooms.asked).isEqualTo(new TreeMap<>(java.util.Map.of("body", 1, "draft", 1, "fit", 1)));
    }

    @Test
    void eachStageIsComputedOnce() {
        Session session = session();
        session.lays();
        session.lays();
        session.fit();
        session.document("pattern-A4.pdf");
        session.document("pattern-A4.pdf");
        session.documents(FileGroup.usual());
        assertThat(rooms.asked)
                .containsEntry("body", 1)
                .containsEntry("lay", 1)
                .containsEntry("sewing", 1)
                .containsEntry("pattern-A4.pdf", 1);
    }

    @Test
    void twoWhoAskAtTheSameTimeGetTheSame() throws Exception {
        Session session = session();
        ExecutorService two = Executors.newFixedThreadPool(2);
        Callable<Pattern> ask = session::pattern;
        var answers = two.invokeAll(List.of(ask, ask));
        two.shutdown();
        assertThat(answers.get(0).get()).isSameAs(answers.get(1).get());
        assertThat(rooms.asked).containsEntry("draft", 1);
    }

    @Test
    void aChangedStyleKeepsTheBody() {
        Session session = session();
        session.fit();
        Style style = session.make().style();
        Session changed = session.with(session.make().with(style.with(TopEnd.band(80))));
        changed.fit();
        assertThat(changed.body()).isSameAs(session.body());
        assertThat(rooms.asked)
                .containsEntry("body", 1)
                .containsEntry("draft", 2)
                .containsEntry("fit", 2);
    }

    @Test
    void anotherWayOfLayingKeepsThePatternAndTheSewing() {
        Session session = session();
        session.made(Set.of());
        MakeFile make = session.make();
        Session changed = session.with(make.with(make.style().with(LayTerms.of(Style.LayWay.OPEN))));
        changed.made(Set.of());
        assertThat(changed.pattern()).isSameAs(session.pattern());
        assertThat(rooms.asked)
                .containsEntry("fit", 1)
                .containsEntry("sewing", 1)
                .containsEntry("lay", 2);
    }

    @Test
    void anotherPaperKeepsAllButTheFiles() {
        Session session = session();
        session.made(FileGroup.usual());
        MakeFile make = session.make();
        PrintTerms letter = new PrintTerms(
                "Letter",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                FileGroup.usual());
        Session changed = session.with(make.with(letter));
        changed.made(FileGroup.usual());
        assertThat(changed.pattern()).isSameAs(session.pattern());
        assertThat(rooms.asked)
                .containsEntry("lay", 1)
                .containsEntry("sewing", 1)
                .containsEntry("pattern-A4.pdf", 2);
    }

    @Test
    void nothingChangedKeepsEverything() {
        Session session = session();
        session.made(FileGroup.usual());
        java.util.Map<String, Integer> before = new TreeMap<>(rooms.asked);
        session.with(example()).made(FileGroup.usual());
        assertThat(rooms.asked).isEqualTo(before);
    }

    @Test
    void onlyTheFilesAskedForAreMade() {
        Made made = session().made(Set.of(FileGroup.LAY));
        assertThat(made.documents()).extracting(Document::name).containsExactly("lay.svg", "report.json");
        assertThat(rooms.asked).doesNotContainKey("pattern-A4.pdf");
    }

    @Test
    void thePatternIsDrawnWithoutFitAndLayAndOnce() {
        Session session = session();
        session.document("pattern.svg");
        session.document("pattern.svg");
        assertThat(rooms.asked).isEqualTo(new TreeMap<>(java.util.Map.of("body", 1, "draft", 1, "pattern.svg", 1)));
    }

    @Tag("slow")
    @Test
    void aFileThatTheMakeHasNotIsEmpty() {
        assertThat(session().document("../make.yaml")).isEmpty();
        assertThat(session().document("report.json")).isPresent();
    }

    @Test
    void whatIsWrongIsToldToEverybodyWhoAsks() {
        rooms.wrong = true;
        Session session = session();
        assertThatThrownBy(session::lays).isInstanceOf(BadInput.class);
        assertThatThrownBy(session::fit).isInstanceOf(BadInput.class).hasMessageContaining("wrong");
        assertThat(rooms.asked).containsEntry("draft", 1);
    }

    /** The sample rooms, counting what is asked of them. */
    private static final class Counted implements Stages {
        private final SampleRooms real = new SampleRooms();
        private final java.util.Map<String, Integer> asked = new TreeMap<>();
        private boolean wrong;

        private synchronized void count(String stage) {
            asked.merge(stage, 1, Integer::sum);
        }

        @Override
        public Optional<Body> body(Measured measured, Findings findings) {
            count("body");
            return real.body(measured, findings);
        }

        @Override
        public Optional<Pattern> draft(Body body, MakeFile make, Findings findings) {
            count("draft");
            if (wrong) {
                findings.add("style", SampleSaid.of("is wrong."), SampleSaid.of(""));
                return Optional.empty();
            }
            return real.draft(body, make, findings);
        }

        @Override
        public FitReport fit(Pattern pattern, Body body, MakeFile make) {
            count("fit");
            return real.fit(pattern, body, make);
        }

        /** Trials are not counted. */
        @Override
        public FitReport judge(Pattern pattern, Body body, MakeFile make) {
            return real.fit(pattern, body, make);
        }

        @Override
        public Optional<Lay> lay(List<Piece> pieces, Fabric fabric, MakeFile make, Findings findings) {
            count("lay");
            return real.lay(pieces, fabric, make, findings);
        }

        @Override
        public SewingPlan sewing(Pattern pattern, MakeFile make, FitReport fit) {
            count("sewing");
            return real.sewing(pattern, make, fit);
        }

        @Override
        public List<Printable> drawn(MakeFile make, Pattern pattern) {
            return counted(real.drawn(make, pattern));
        }

        @Override
        public List<Printable> printables(
                MakeFile make, Pattern pattern, FitReport fit, List<ClothLay> lays, SewingPlan sewing) {
            return counted(real.printables(make, pattern, fit, lays, sewing));
        }

        private List<Printable> counted(List<Printable> all) {
            return all.stream()
                    .map(p -> new Printable(p.name(), p.group(), () -> {
                        count(p.name());
                        return p.made();
                    }))
                    .toList();
        }
    }
}
