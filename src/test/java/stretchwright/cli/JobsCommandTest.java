package stretchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** Long work by its commands: into the queue, done, and had. */
@Tag("slow")
class JobsCommandTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private static final String INSTANCE = "{\"format\": \"strip-instance/1\", \"name\": \"six\", \"stripHeight\": 100,"
            + " \"rotations\": [0, 180], \"items\": [{\"id\": 0, \"demand\": 6,"
            + " \"polygon\": [[0, 0], [40, 0], [30, 50], [10, 50]]}]}";

    @TempDir
    Path folder;

    private Ran run(Object... args) {
        Object[] all = java.util.Arrays.copyOf(args, args.length + 2);
        all[args.length] = "--workroom";
        all[args.length + 1] = folder.resolve("room");
        return Ran.of(all);
    }

    private Ran good(Object... args) {
        Ran ran = run(args);
        assertThat(ran.code()).as("%s", ran.err()).isZero();
        return ran;
    }

    @Test
    void aLayAClubAndATableOfSizesAreQueuedDoneAndHad() throws IOException {
        Path instance = Files.writeString(folder.resolve("six.json"), INSTANCE);
        good("workroom", "import", "examples/evening-practice.yaml");
        assertThat(good("workroom", "queue", "lay", instance, "--rounds", "3,2").out())
                .contains("job 1");
        good(
                "workroom",
                "queue",
                "club",
                "Evening practice",
                "examples/evening-practice.yaml",
                "--rounds",
                "1,1",
                "--name",
                "Club");
        Path bodies = Files.writeString(
                folder.resolve("bodies.csv"),
                "name,figure,stature,waist girth,hip girth,crotch height\nA,woman,1650,740,980,770\nB,woman,1700,760,1000,800\n");
        good("workroom", "queue", "sizes", "Evening practice", "--bodies", bodies, "--unit", "mm");
        assertThat(good("workroom", "jobs").out()).contains("1  queued  lay", "2  queued  Club", "3  queued  sizes");
        assertThat(run("workroom", "jobs", "2", "--out", folder.resolve("early"))
                        .code())
                .isEqualTo(Exit.INPUT);
        assertThat(good("workroom", "work", "--until-empty").out()).contains("the queue is empty");
        assertThat(good("workroom", "jobs").out())
                .contains("1  done", "2  done", "3  done")
                .doesNotContain("queued");

        good("workroom", "jobs", "1", "--out", folder.resolve("lay"));
        good("workroom", "jobs", "2", "--out", folder.resolve("club"));
        good("workroom", "jobs", "3", "--out", folder.resolve("sizes"));
        assertThat(Ran.of("lay", instance, "--rounds", "3,2", "--out", folder.resolve("direct"))
                        .code())
                .isZero();
        assertThat(JSON.readTree(folder.resolve("lay/lay.json")).path("length"))
                .isEqualTo(JSON.readTree(folder.resolve("direct/lay.json")).path("length"));
        assertThat(folder.resolve("club/club.json")).exists();
        assertThat(folder.resolve("sizes/nest.json")).exists();
        assertThat(run("workroom", "jobs", "1", "--cancel").out()).contains("over already");

        good("workroom", "queue", "club", "Evening practice", "--rounds", "1,1");
        good("workroom", "jobs", "4", "--cancel");
        assertThat(good("workroom", "jobs", "--json").out()).contains("\"state\" : \"cancelled\"");
        good("workroom", "forget", "Rowan", "--yes");
        assertThat(good("workroom", "jobs").out()).contains("lay").doesNotContain("Club", "sizes");
    }

    @Test
    void aJobFromAFileIsForgottenWithItsWearer() throws IOException {
        good("workroom", "import", "examples/evening-practice.yaml");
        good("workroom", "queue", "club", "examples/evening-practice.yaml", "--rounds", "1,1");
        good("workroom", "queue", "club", "examples/hockey-boots.yaml", "--rounds", "1,1");
        good("workroom", "forget", "Rowan", "--yes");
        assertThat(good("workroom", "jobs").out()).contains("hockey").doesNotContain("evening");
        good("workroom", "jobs", "2", "--forget");
        assertThat(good("workroom", "jobs").out()).contains("no jobs");
        assertThat(run("workroom", "jobs", "2").code()).isEqualTo(Exit.INPUT);
    }

    @Test
    void eachJobIsFoundByItsNumberHoweverManyThereAre() throws IOException {
        Path instance = Files.writeString(folder.resolve("six.json"), INSTANCE);
        good("workroom", "queue", "lay", instance, "--rounds", "1,1");
        try (stretchwright.workroom.Workroom room = stretchwright.workroom.Workroom.open(
                new stretchwright.workroom.store.Address.Folder(folder.resolve("room")))) {
            room.store()
                    .database()
                    .write(h -> h.execute("WITH RECURSIVE n(i) AS (SELECT 2 UNION ALL SELECT i + 1 FROM n"
                            + " WHERE i < 1100) INSERT INTO job SELECT 'id' || i, i, kind, name, input, 'cancelled', 0, asked, 0, '',"
                            + " added, 0, 0 FROM job, n"));
        }
        assertThat(good("workroom", "jobs", "1").out()).contains("1  queued");
        assertThat(good("workroom", "jobs", "1", "--json").out()).contains("\"number\" : 1");
    }

    @Test
    void badInputIsTold() throws IOException {
        good("workroom", "import", "examples/evening-practice.yaml");
        Path instance = Files.writeString(folder.resolve("six.json"), INSTANCE);
        for (Object[] bad : new Object[][] {
            {"queue", "dance", instance},
            {"queue", "lay", folder.resolve("none.json")},
            {"queue", "lay", instance, instance},
            {"queue", "lay", instance, "--rounds", "-1,2"},
            {"queue", "lay", instance, "--rounds", "2000000000,2"},
            {"queue", "club", "nobody's"},
            {"queue", "club", "Evening practice", "--table", "3"},
            {"queue", "sizes", "Evening practice"},
            {"queue", "sizes", "Evening practice", "--bodies", folder.resolve("none.csv")},
            {"queue", "lay", instance, "--name", " "},
            {"jobs", "9"},
            {"jobs", "--out", folder.resolve("nowhere")},
            {"jobs", "--cancel"},
            {"work", "--threads", "0", "--until-empty"}
        }) {
            Object[] args = new Object[bad.length + 1];
            args[0] = "workroom";
            System.arraycopy(bad, 0, args, 1, bad.length);
            Ran ran = run(args);
            assertThat(ran.code())
                    .as("%s %s", java.util.Arrays.toString(bad), ran.err())
                    .isEqualTo(Exit.INPUT);
            assertThat(ran.err()).isNotBlank().doesNotContain("fault of the program");
        }
        assertThat(good("workroom", "jobs").out()).contains("no jobs");
    }
}
