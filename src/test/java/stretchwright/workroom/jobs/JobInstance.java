package stretchwright.workroom.jobs;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Database;

/** A program with workers at a database, to be killed: works until its input ends. */
public final class JobInstance {
    private JobInstance() {}

    public static void main(String[] args) throws IOException {
        Address at = args[0].equals("folder")
                ? new Address.Folder(Path.of(args[1]))
                : new Address.Server(args[1], "postgres", "");
        try (Database database = Database.open(at);
                Workers workers = Workers.start(database, 1, Integer.parseInt(args[2]))) {
            while (System.in.read() >= 0) {
                // whoever started this one is still there
            }
        }
    }

    static Process start(Address at, int spell) throws IOException {
        String where = at instanceof Address.Folder folder ? folder.path().toString() : ((Address.Server) at).server();
        List<String> command = new ArrayList<>(List.of(
                System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                "-Xmx200m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                JobInstance.class.getName(),
                at instanceof Address.Folder ? "folder" : "server",
                where,
                Integer.toString(spell)));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
