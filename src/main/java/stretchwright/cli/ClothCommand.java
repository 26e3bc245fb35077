package stretchwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stretchwright.advice.ClothNeeds;
import stretchwright.ground.BadInput;
import stretchwright.ground.Document;
import stretchwright.ground.Finding;
import stretchwright.ground.Findings;
import stretchwright.intake.MakeFile;
import stretchwright.print.kit.Paper;

/** The cards to test a cloth with. */
@Command(name = "cloth")
final class ClothCommand extends Task {
    @Parameters(paramLabel = "MAKE", arity = "0..1", descriptionKey = "make")
    private String file = "";

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private String out = "";

    @Option(names = "--paper", paramLabel = "P", defaultValue = "A4")
    private String paper = "A4";

    private final Jobs jobs;

    ClothCommand(Desk desk, Jobs jobs) {
        super(desk);
        this.jobs = jobs;
    }

    @Override
    public Integer call() throws IOException {
        Optional<Paper> sheet =
                Paper.of(paper).filter(p -> List.of("A4", "Letter").contains(p.name()));
        if (sheet.isEmpty()) {
            throw new Arguments(line(), Tell.said("args.paper", Tell.quoted(paper)));
        }
        Console console = console();
        Findings aboutOut = new Findings(out);
        Optional<OutFolder> folder = folder(out, aboutOut);
        List<Finding> wrong = new ArrayList<>(aboutOut.all());
        try {
            Optional<List<Document>> cards = cards(sheet.get(), wrong);
            if (wrong.isEmpty() && cards.isPresent() && folder.isPresent()) {
                folder.get().write(cards.get());
                if (console.json()) {
                    console.print(ClothNeeds.json(cards.get()));
                }
                console.tell(Tell.said("cloth.written"));
                return Exit.DONE;
            }
        } catch (BadInput e) {
            wrong.addAll(e.findings());
        }
        console.findings(wrong);
        return Exit.INPUT;
    }

    private Optional<List<Document>> cards(Paper sheet, List<Finding> wrong) {
        if (file.isEmpty()) {
            return Optional.of(ClothNeeds.usualCards(sheet));
        }
        Findings aboutFile = new Findings(file);
        Optional<byte[]> bytes = named().read(file, MakeFile.LARGEST, aboutFile);
        wrong.addAll(aboutFile.all());
        return bytes.map(b -> ClothNeeds.cards(jobs.read(file, b), sheet));
    }
}
