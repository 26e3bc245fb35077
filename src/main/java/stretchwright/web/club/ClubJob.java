package stretchwright.web.club;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stretchwright.ground.Document;
import stretchwright.ground.Part;
import stretchwright.ground.Unit;
import stretchwright.ground.Voice;
import stretchwright.web.frame.Frame;
import stretchwright.web.frame.MayCut;
import stretchwright.workroom.jobs.Job;
import stretchwright.workroom.jobs.Jobs;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A club that was asked: in line, under way, or laid.
 *
 * @param inLine how many are before it
 * @param totals what to buy, and what laying together saves
 * @param tables as they are cut, each with its drawing
 */
public record ClubJob(Frame frame, Job job, long inLine, List<String> totals, List<Table> tables, List<File> files) {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int MOST = 500;

    public ClubJob {
        totals = List.copyOf(totals);
        tables = List.copyOf(tables);
        files = List.copyOf(files);
    }

    /** A file to download. */
    public record File(String address, String name, String kind) {}

    /**
     * What lies on one table.
     *
     * @param drawing address of its picture; empty where there is none
     */
    public record Table(String title, String length, List<String> garments, String drawing) {
        public Table {
            garments = List.copyOf(garments);
        }
    }

    static ClubJob of(Jobs jobs, Job job) {
        List<Document> documents = jobs.files(job.id());
        Optional<JsonNode> club = documents.stream()
                .filter(d -> d.name().equals("club.json"))
                .findFirst()
                .map(d -> JSON.readTree(new String(d.bytes(), StandardCharsets.UTF_8)));
        Voice voice =
                Voice.of(club.flatMap(c -> Unit.of(c.path("unit").asString())).orElse(Unit.CM));
        String at = "/club/" + job.id() + "/file/";
        List<String> drawings = documents.stream()
                .map(Document::name)
                .filter(n -> n.endsWith(".svg"))
                .toList();
        long before = jobs.list(MOST).stream()
                .filter(j -> !j.state().over() && j.number() < job.number())
                .count();
        return new ClubJob(
                Frame.plain("club", job.name()),
                job,
                before,
                club.map(c -> totals(c.path("club"), voice)).orElse(List.of()),
                club.map(c -> tables(c.path("club"), voice, at, drawings)).orElse(List.of()),
                documents.stream()
                        .map(d -> new File(at + d.name(), d.name(), d.kind()))
                        .toList());
    }

    private static List<String> totals(JsonNode club, Voice voice) {
        List<String> out = new ArrayList<>();
        out.add(voice.say(Tell.said(
                "club.needs",
                Part.count(club.path("garments").size()),
                Part.cloth(club.path("length").asDouble()),
                Part.cloth(club.path("buy").asDouble()))));
        double saved = club.path("saved").asDouble();
        Part alone = Part.cloth(club.path("alone").asDouble());
        out.add(voice.say(Tell.said(saved >= 0 ? "club.saves" : "club.loses", alone, Part.share(Math.abs(saved)))));
        return out;
    }

    private static List<Table> tables(JsonNode club, Voice voice, String at, List<String> drawings) {
        List<Table> out = new ArrayList<>();
        JsonNode all = club.path("tables");
        for (int i = 0; i < all.size(); i++) {
            List<String> garments = new ArrayList<>();
            all.get(i).path("garments").forEach(g -> garments.add(g.asString()));
            out.add(new Table(
                    voice.say(Tell.said("club.table", Part.count(i + 1))),
                    voice.say(Part.cloth(all.get(i).path("length").asDouble())),
                    garments,
                    i < drawings.size() ? at + drawings.get(i) : ""));
        }
        return out;
    }

    static String state(Job job) {
        return ClubPage.said(
                switch (job.state()) {
                    case QUEUED -> "club.queued";
                    case RUNNING -> "club.running";
                    case DONE -> "club.done";
                    case FAILED -> "club.failed";
                    case CANCELLED -> "club.cancelled";
                });
    }

    public boolean over() {
        return job.state().over();
    }

    public MayCut says() {
        String why = job.state() == Job.State.QUEUED && inLine > 0
                ? ClubPage.said("club.in-line", Part.count(inLine + 1))
                : over() ? "" : ClubPage.said("club.goes-on");
        MayCut.Mark mark = switch (job.state()) {
            case QUEUED, RUNNING -> MayCut.Mark.WORKS;
            case DONE -> job.told().isEmpty() ? MayCut.Mark.HOLDS : MayCut.Mark.LOOK;
            case FAILED, CANCELLED -> MayCut.Mark.STOP;
        };
        return new MayCut(mark, totals.isEmpty() ? state(job) : totals.get(0), totals.size() > 1 ? totals.get(1) : why);
    }

    /** Address of the papers to cut by; empty before they are there. */
    public String papers() {
        return files.stream()
                .filter(f -> f.name().endsWith(".pdf"))
                .map(File::address)
                .findFirst()
                .orElse("");
    }

    public String address() {
        return "/club/" + job.id();
    }

    public String say(String key) {
        return ClubPage.said(key);
    }
}
