package stretchwright.workroom.jobs;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import stretchwright.ground.Progress;
import stretchwright.make.Made;
import stretchwright.make.Make;
import stretchwright.workroom.store.Address;
import stretchwright.workroom.store.Database;
import stretchwright.workroom.store.Databases;
import stretchwright.workroom.store.Edit;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Links;
import stretchwright.workroom.store.Store;

/**
 * What docs/scale.md plans with: seconds a make takes warm (by the wall and of all cores), bytes it takes in the store, saves a
 * second on each database. EXAMPLES [MAKES] [SAVES]
 */
public final class WorkshopRuns {
    private static final int WARM = 10;

    private WorkshopRuns() {}

    public static void main(String[] args) throws IOException {
        int makes = args.length > 1 ? Integer.parseInt(args[1]) : 60;
        int saves = args.length > 2 ? Integer.parseInt(args[2]) : 2000;
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of(args[0]))) {
            files = all.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
        Made last = makes(files, makes);
        String text = Files.readString(Path.of(args[0], "evening-practice.yaml"));
        String report = new String(last.report().bytes(), StandardCharsets.UTF_8);
        System.out.printf("a make file of %d bytes, its report of %d%n", text.length(), report.length());
        Databases.all().forEach(at -> saves(at, saves, text, report, "with the whole report"));
        Databases.all().forEach(at -> saves(at, saves, text, "{}", "without"));
    }

    private static Made makes(List<Path> files, int makes) throws IOException {
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        List<Double> wall = new ArrayList<>();
        List<Double> cores = new ArrayList<>();
        Made last = null;
        for (int i = 0; i < WARM + makes; i++) {
            Path file = i == WARM + makes - 1
                    ? files.get(0).resolveSibling("evening-practice.yaml")
                    : files.get(i % files.size());
            byte[] bytes = Files.readAllBytes(file);
            long start = System.nanoTime();
            long spent = machine.getProcessCpuTime();
            last = Make.run(Make.read(file.toString(), bytes), Progress.silent());
            if (i >= WARM) {
                wall.add((System.nanoTime() - start) / 1e9);
                cores.add((machine.getProcessCpuTime() - spent) / 1e9);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d makes of %d files, warm: median %.2f s by the wall, %.2f s of one core; mean %.2f s of one core; 95 %% below %.2f s%n",
                makes,
                files.size(),
                share(wall, 0.5),
                share(cores, 0.5),
                cores.stream().mapToDouble(c -> c).average().orElseThrow(),
                share(cores, 0.95));
        return java.util.Objects.requireNonNull(last);
    }

    private static double share(List<Double> values, double share) {
        return values.stream().sorted().toList().get((int) (share * (values.size() - 1)));
    }

    private static void saves(Address at, int saves, String text, String report, String what) {
        try (Database database = Database.open(at)) {
            Store store = new Store(database, Clock.systemUTC());
            long before = size(database, at);
            List<Double> each = new ArrayList<>();
            long start = System.nanoTime();
            for (int i = 0; i < saves; i++) {
                long one = System.nanoTime();
                store.save(Edit.fresh(Kind.MAKE, "make " + i, text, Links.NONE).with(report, "1"));
                each.add((System.nanoTime() - one) / 1e9);
            }
            double seconds = (System.nanoTime() - start) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "%s, %s: %d saves, %.0f a second, median %.1f ms, 95 %% below %.1f ms, %d bytes each%n",
                    at instanceof Address.Folder ? "SQLite" : "PostgreSQL",
                    what,
                    saves,
                    saves / seconds,
                    1000 * share(each, 0.5),
                    1000 * share(each, 0.95),
                    (size(database, at) - before) / saves);
        }
    }

    private static long size(Database database, Address at) {
        if (at instanceof Address.Folder folder) {
            return folder.file().toFile().length();
        }
        return database.read(h -> h.createQuery("SELECT pg_database_size(current_database())")
                .mapTo(long.class)
                .one());
    }
}
