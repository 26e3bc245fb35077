package stretchwright.workroom.jobs;

import stretchwright.ground.BadInput;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;

/** What this room tells: keys of workroom/words.properties with what fills their gaps. */
final class Tell {
    private Tell() {}

    static Said said(String key, Part... parts) {
        return Said.of("workroom", key, parts);
    }

    static BadInput wrong(String about, String key, Said wrong, Said right) {
        Findings findings = new Findings(about);
        findings.add(key, wrong, right);
        return new BadInput(findings.all());
    }
}
