package stretchwright.web.things;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stretchwright.fabric.Fabric;
import stretchwright.ground.Finding;
import stretchwright.intake.MakeFile;
import stretchwright.intake.Need;
import stretchwright.web.form.Form;
import stretchwright.web.form.Trial;
import stretchwright.workroom.store.Kind;

/** A cloth as the core reads it, on the wearer of the make that asked, or on somebody. */
record ClothTrial(Form whole) {
    /** What was wrapped is nobody's where no make asked. */
    private static final List<String> WRAPPED = List.of("fabric.wrap hip", "fabric.wrap calf", "fabric.reaches pose");

    static ClothTrial of(Held cloth, Form now) {
        Form own = Form.of(cloth.bench().room().own(Kind.FABRIC, now.makeText()));
        Map<String, List<String>> all = new LinkedHashMap<>();
        cloth.asker()
                .ifPresentOrElse(
                        make -> Form.of(make.text()).typed().forEach((k, v) -> {
                            if (!k.startsWith("fabric.")) {
                                all.put(k, v);
                            }
                        }),
                        () -> {
                            all.put("unit", List.of(cloth.unit().symbol()));
                            all.put("wearer.measurements.stature", List.of("168 cm"));
                        });
        own.typed().forEach((k, v) -> {
            if (k.startsWith("fabric.") && (cloth.asker().isPresent() || !WRAPPED.contains(k))) {
                all.put(k, v);
            }
        });
        return new ClothTrial(new Form(all));
    }

    /** What is wrong with the cloth, not what is still lacking. */
    List<Finding> wrong() {
        return Trial.wrong(whole).stream()
                .filter(f -> f.key().startsWith("fabric") && !Need.isLack(f.wrong()))
                .toList();
    }

    Optional<Fabric> fabric() {
        return Trial.make(whole).map(MakeFile::cloth);
    }

    /** Whether its stretch that way was found, in whichever way. */
    boolean knows(String way) {
        return whole.has("fabric.stretch " + way)
                || whole.has("fabric.fold " + way)
                || whole.has("fabric.hang " + way)
                || whole.has(way.equals("across") ? "fabric.wrap hip" : "fabric.reaches pose");
    }
}
