package stretchwright.web.ask;

import stretchwright.ground.Part;
import stretchwright.ground.Voice;
import stretchwright.web.form.Form;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Store;

/** What a new make is called, until its maker calls it otherwise. */
final class NewName {
    private NewName() {}

    /** "Rowan, first pair", with a number where that hangs there already. */
    static String of(Store store, Form answers) {
        String wearer = answers.value("wearer.name");
        String plain = wearer.isBlank() ? said("ask.new-name") : said("ask.new-name-of", Part.text(wearer));
        String name = plain;
        for (int i = 2; store.named(Kind.MAKE, name).isPresent(); i++) {
            name = plain + " " + i;
        }
        return name;
    }

    private static String said(String key, Part... parts) {
        return Voice.plain().say(Tell.said(key, parts));
    }
}
