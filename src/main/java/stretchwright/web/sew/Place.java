package stretchwright.web.sew;

import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import stretchwright.sewing.SewingPlan;
import stretchwright.sewing.SewingPlan.Operation;
import stretchwright.web.frame.Opened;
import stretchwright.workroom.Remembered;
import stretchwright.workroom.SewingPlace;
import stretchwright.workroom.store.Store;

/** How far the sewing of a make is, the same for every device. Of the demo nothing is kept. */
final class Place {
    private final Store store;
    private final Opened make;
    private final SewingPlan plan;
    private final List<Stop> stops;

    Place(Store store, Opened make) {
        this.store = store;
        this.make = make;
        plan = make.session().sewing();
        stops = Stop.of(plan);
    }

    List<Stop> stops() {
        return stops;
    }

    /** The stop of that key; empty where the plan has none. */
    Optional<Stop> stop(String key) {
        return stops.stream().filter(s -> s.key().equals(key)).findFirst();
    }

    /** Which stop a device means that has seen a step of this name under that key: another one where the plan was changed meanwhile. */
    Optional<Stop> meant(String key, String name) {
        if (name.isEmpty()) {
            return stop(key);
        }
        Optional<Stop> step = plan.operations().stream()
                .filter(o -> o.name().word().equals(name))
                .findFirst()
                .map(o -> new Stop(o.step(), Stop.isSetUp(key)));
        return step.map(s -> stops.contains(s) ? s : new Stop(s.step(), false));
    }

    /** How many stops are done. */
    int done() {
        return make.demo()
                ? 0
                : done(Remembered.of(store, make.stored().thing(), Remembered.SEWING)
                        .orElse(""));
    }

    private int done(String text) {
        return SewingPlace.of(text)
                .map(p -> p.isEnded() ? stops.size() : stops.indexOf(next(p)))
                .orElse(0);
    }

    /** By its name; by its number where the plan has none of that name. */
    private Stop next(SewingPlace place) {
        int number = plan.operations().stream()
                .filter(o -> o.name().word().equals(place.name()))
                .findFirst()
                .map(Operation::step)
                .orElse(Math.max(1, Math.min(place.next(), plan.operations().size())));
        Stop wanted = new Stop(number, place.setUp());
        return stops.contains(wanted) ? wanted : new Stop(number, false);
    }

    /** A stop is done, and with it all before it; what was done already stays so, whoever is told late. */
    void done(Stop stop) {
        remember(before -> Math.max(done(before), stops.indexOf(stop) + 1));
    }

    /** A stop is the next one, whatever was done. */
    void goOnFrom(Stop stop) {
        remember(before -> stops.indexOf(stop));
    }

    private void remember(ToIntFunction<String> done) {
        if (!make.demo()) {
            Remembered.update(store, make.stored().thing(), Remembered.SEWING, before -> text(done.applyAsInt(before)));
        }
    }

    private String text(int done) {
        List<Operation> all = plan.operations();
        if (done == stops.size()) {
            return new SewingPlace(all.size() + 1, false, all.size(), 0, "").text();
        }
        Stop next = stops.get(done);
        long left = Math.round(all.stream()
                .filter(o -> o.step() >= next.step())
                .mapToDouble(Operation::minutes)
                .sum());
        String name = all.get(next.step() - 1).name().word();
        return new SewingPlace(next.step(), next.setUp(), all.size(), left, name).text();
    }
}
