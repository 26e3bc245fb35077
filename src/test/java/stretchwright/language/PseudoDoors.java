package stretchwright.language;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stretchwright.cli.Commands;
import stretchwright.cli.ServeDoor;
import stretchwright.intake.WearingSymptom;
import stretchwright.web.Server;
import stretchwright.web.door.Opening;
import stretchwright.web.door.Phrase;
import stretchwright.workroom.store.Address;

/**
 * All doors of the program, one after the other, in a process of their own that was started in the pseudo-language. What each
 * prints goes into a folder, beside the files that it writes.
 */
final class PseudoDoors {
    private static final String ONE = "examples/evening-practice.yaml";
    private static final String OTHER = "examples/hockey-boots.yaml";
    private static final Pattern INPUT = Pattern.compile("<input ([^>]*)>");
    private static final Pattern SELECT =
            Pattern.compile("<select [^>]*name=\"([^\"]*)\"[^>]*>(.*?)</select>", Pattern.DOTALL);
    private static final Pattern OPTION = Pattern.compile("<option value=\"([^\"]*)\" selected");

    private static final HttpClient VISITOR = HttpClient.newHttpClient();

    /** To the first questions. */
    private static final List<String> ANSWERS = List.of(
            "wearer.name=Ada&wearer.figure=woman&style.leg=over+boot",
            "wearer.measurements.stature=165&unit=cm",
            "wearer.measurements.waist+girth=74",
            "wearer.measurements.hip+girth=97",
            "do=skip",
            "wearer.measurements.total+crotch+length=71",
            "do=skip",
            "fabric.stretch+across=160&fabric.stretch+along=145",
            "boot.top+girth=29",
            "boot.heel+girth=40",
            "boot.hem+girth=38.5",
            "boot.ankle+to+hem=9");

    /** What a browser was given with its first page. */
    private static final String SEAL = "0123456789abcdef".repeat(2);

    private final Path folder;
    private int number;

    private PseudoDoors(Path folder) {
        this.folder = folder;
    }

    /** @param args the folder */
    public static void main(String[] args) throws Exception {
        PseudoDoors doors = new PseudoDoors(Path.of(args[0]));
        doors.makes();
        doors.one();
        doors.many();
        doors.help();
        doors.wrong();
        doors.page();
        System.exit(0);
    }

    private void makes() throws IOException {
        List<String> examples = examples();
        List<String> make = new ArrayList<>(List.of("make"));
        make.addAll(examples);
        make.addAll(List.of("--files", "all", "--out", out("make")));
        run(make);
        for (String example : examples) {
            run("body", example, "--out", out("body"));
            run("cloth", example, "--out", out("cloth"));
            run("why", example);
            run("why", example, "width");
            run("compare", ONE, example, "--out", out("compare"));
        }
    }

    static List<String> examples() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("examples"))) {
            return all.map(Path::toString)
                    .filter(n -> n.endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    /** What is asked of one make. */
    private void one() throws IOException {
        run("after", ONE);
        run("--json", "after", ONE);
        for (WearingSymptom symptom : WearingSymptom.values()) {
            for (String make : List.of(ONE, OTHER)) {
                if (symptom.asks()) {
                    run("after", make, symptom.word());
                    run("after", make, symptom.word(), "--answer", "no");
                }
                run(Stream.concat(
                                Stream.of("after", make, symptom.word()),
                                symptom.asks() ? Stream.of("--answer", "yes") : Stream.of())
                        .toList());
            }
        }
        run("--json", "after", ONE, "band slides down");
        run("--json", "why", ONE, "knee width");
        run("cloth", "--out", out("cloth"), "--paper", "Letter");
        run("body", "--guide");
    }

    private void many() throws IOException {
        String table = written(
                "table.csv",
                "figure,name,unit,stature,hip girth\nwoman,A,cm,164,96\nman,B,in,70,40\nchild,C,mm,1300,700\nwoman,D,cm,,12\n");
        run("club", ONE, ONE, "--seconds", "0", "--out", out("club"));
        run("club", ONE, ONE, "--table", "2 m", "--seconds", "0", "--out", out("club"));
        run("club", ONE, OTHER, "--seconds", "0", "--out", out("club"));
        run("sizes", ONE, "--bodies", table, "--out", out("sizes"));
        run("body", table, "--out", out("bodies"));
        run("--json", "body", table);
        run("survey", "--bodies", table, "--out", out("survey"));
        String instance = written(
                "instance.json",
                "{\"format\": \"strip-instance/1\", \"name\": \"two\", \"stripHeight\": 10, \"rotations\": [0], \"items\":"
                        + " [{\"id\": \"a\", \"demand\": 2, \"polygon\": [[0, 0], [4, 0], [4, 4]]}]}");
        run("lay", instance, "--rounds", "1,1", "--out", out("lay"));
    }

    private void help() throws IOException {
        run();
        run("--help");
        run("--version");
        for (String command : List.of(
                "make", "body", "why", "cloth", "lay", "sizes", "club", "compare", "after", "survey", "serve")) {
            run(command, "--help");
            run(command);
            run(command, "--nonsense");
        }
    }

    private void wrong() throws IOException {
        String good = Files.readString(Path.of(ONE));
        List<Function<String, String>> faults = List.of(
                t -> t.replace("unit: cm", "unit: furlong"),
                t -> t.replace("hip girth: 96.1", "hip girht: 96.1\n    knee girth: 1"),
                t -> t.replace("stretch across: 60 %", "stretch across: 0.6"),
                t -> t.replace("  top girth: 29.0", "  top girth: 290"),
                t -> t.replace(
                        "cuff: {height: 3.2}", "cuff: {height: 32}\n  growth: 3 cm\n  gusset: {length: 3, width: 40}"),
                t -> t.replace("rise: waist", "rise: 60\n  panel: {width: 29}\n  back: darts\n  side seam: shaped"),
                t -> t.replace("crotch height: 77.2", "crotch height: 40"),
                t -> t.replace("usable width: 147", "usable width: 21"),
                t -> t.replace("lay: any", "lay: {way: folded crosswise, match print at: nowhere}"),
                t -> t.replace(
                        "machines:",
                        "after wearing:\n  - {date: soon, symptom: nothing, change: {waist: 1}}\nmachines:"),
                t -> "[" + t,
                t -> "");
        for (int i = 0; i < faults.size(); i++) {
            String text = faults.get(i).apply(good);
            if (text.equals(good)) {
                throw new IllegalStateException("fault " + i + " changes nothing");
            }
            run("make", written("wrong-" + i + ".yaml", text), "--out", out("wrong"));
        }
        run("make", "nowhere.yaml", "--out", "src");
        run("after", ONE, "legs too lonk");
        run("after", ONE, "baggy knees", "--answer", "perhaps", "--date", "soon");
        run("why", ONE, "kne widht");
        run("club", ONE, "--table", "3", "--seconds", "-1", "--rounds", "1", "--out", out("wrong"));
        run("lay", ONE, "--threads", "7", "--seconds", "0", "--out", out("wrong"));
        run("lay", written("items.json", "{\"format\": \"strip-instance/1\", \"items\": [{}]}"), "--out", out("wrong"));
        run("body", written("rows.csv", "figure,unit,stature,nose\nwoman,mm,1,2,3\n"), "--out", out("wrong"));
        run("body", written("bodies.csv", "figure,unit,stature\ncat,ell,1\nwoman,mm,many\n"), "--out", out("wrong"));
        run("serve", "--port", "70000");
        run("serve", "--pass-phrase-file", written("phrase.txt", "short"));
        run("serve", "--share", "--pass-phrase-file", written("phrase.txt", "short"));
        run("serve", "--share", "198.51.100.7");
        run("serve", "--share");
    }

    private void page() throws Exception {
        Server server =
                Server.start(new Address.Folder(folder.resolve("page-room")), 0).orElseThrow();
        String at = server.address();
        saved("page-start", get(at));
        for (String screen : List.of("", "/lay", "/print", "/sew", "/sew/2", "/numbers")) {
            saved("page-demo" + screen.replace('/', '-'), get(at + "makes/demo" + screen));
        }
        saved("page-why", get(at + "makes/demo?why=KNEE_WIDTH"));
        saved("page-form", get(at + "all"));
        saved("page-wrong", post(at + "all", "").body());
        HttpResponse<String> made =
                post(at + "all", filled(get(at + "makes/demo/all")).replaceAll("(^|&)seen=[0-9]*", ""));
        saved("page-made", made.body());
        String make = at + made.headers().firstValue("Location").orElseThrow().substring(1);
        saved("page-make", get(make));
        saved("page-refused", post(make + "/change", "style.front+waist=700+mm").body());
        String of = "";
        for (int i = 1; i <= 12; i++) {
            saved("page-ask-" + i, get(at + "new/" + i + "?of=" + of));
            saved("page-ask-wrong-" + i, post(at + "new/" + i, "of=" + of).body());
            String next = post(at + "new/" + i, "of=" + of + "&" + ANSWERS.get(i - 1))
                    .headers()
                    .firstValue("Location")
                    .orElseThrow();
            of = next.contains("of=") ? next.replaceAll(".*of=", "") : of;
        }
        saved("page-filled", get(at));
        saved("page-nothing", get(at + "nothing"));
        saved("page-join-alone", get(at + "join"));
        server.stop();
        shared();
    }

    /** The page as a phone sees it that has not joined. */
    private void shared() throws Exception {
        Phrase phrase = Phrase.of("chalk canvas comet oyster");
        Opening opening = new Opening("127.0.0.1", 0, Optional.of(phrase));
        Server server = Server.start(new Address.Folder(folder.resolve("page-room")), opening)
                .orElseThrow();
        String at = server.address();
        saved("page-join", get(at + "join"));
        saved("page-join-wrong", post(at + "join", "phrase=x").body());
        saved("page-join-first", post(at + "all", "").body());
        HttpResponse<String> in = post(at + "join", "phrase=chalk+canvas+comet+oyster");
        HttpRequest joined = HttpRequest.newBuilder(URI.create(at + "join"))
                .header(
                        "Cookie",
                        in.headers().firstValue("Set-Cookie").orElseThrow().replaceAll(";.*", ""))
                .build();
        saved(
                "page-joined",
                HttpClient.newHttpClient()
                        .send(joined, HttpResponse.BodyHandlers.ofString())
                        .body());
        server.stop();
    }

    /** The fields of a form as a browser would send them. */
    private static String filled(String page) {
        List<String> pairs = new ArrayList<>();
        Matcher m = INPUT.matcher(page);
        while (m.find()) {
            String name = attribute(m.group(1), "name");
            boolean ticked =
                    !m.group(1).contains("type=\"checkbox\"") || m.group(1).contains(" checked");
            if (!name.isEmpty() && !name.equals("seal") && ticked) {
                pairs.add(name + "=" + encoded(attribute(m.group(1), "value")));
            }
        }
        Matcher s = SELECT.matcher(page);
        while (s.find()) {
            Matcher chosen = OPTION.matcher(s.group(2));
            pairs.add(s.group(1) + "=" + (chosen.find() ? encoded(chosen.group(1)) : ""));
        }
        return String.join("&", pairs);
    }

    private static String attribute(String tag, String name) {
        Matcher m = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(tag);
        return m.find() ? m.group(1).replace("&#34;", "\"").replace("&amp;", "&") : "";
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String get(String address) throws Exception {
        return answer(address).body();
    }

    private static HttpResponse<String> answer(String address) throws Exception {
        return VISITOR.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpResponse<String> post(String address, String form) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address))
                .header("Cookie", "stretchwright-seal=" + SEAL)
                .header("Seal", SEAL)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build();
        return VISITOR.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private void saved(String name, String html) throws IOException {
        Files.writeString(folder.resolve(name + ".html"), html);
    }

    private String written(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private String out(String name) {
        return folder.resolve(name + "-" + ++number).toString();
    }

    private void run(String... args) throws IOException {
        run(Arrays.asList(args));
    }

    private void run(List<String> args) throws IOException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        ServeDoor none = (room, port, share) -> java.util.Optional.empty();
        Commands.run(none, new PrintWriter(out), new PrintWriter(err), args.toArray(String[]::new));
        String name = String.format(java.util.Locale.ROOT, "run-%03d", ++number);
        String line = String.join(" ", args) + "\n";
        Files.writeString(folder.resolve(name + ".out"), line + out);
        Files.writeString(folder.resolve(name + ".err"), line + err);
    }
}
