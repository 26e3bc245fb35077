package stretchwright.intake;

import java.util.List;
import java.util.Optional;
import stretchwright.ground.Findings;
import stretchwright.ground.Part;
import stretchwright.ground.Said;
import stretchwright.ground.Unit;

/**
 * A value of the file while it is read: what stands there, under which key, and where findings about it go.
 *
 * @param path of the key in full, as the file has it
 * @param like an example of it, to be told where the value is none: "usable width: 147"
 * @param unit of bare numbers; empty where the file names none, which is a finding already
 */
record Spot(Tree tree, String path, String like, Findings findings, Optional<Unit> unit) {
    void add(Said problem, Said remedy) {
        findings.at(path, tree.line(), problem, remedy);
    }

    /** One item of the list that stands here. */
    Spot of(Tree item) {
        return new Spot(item, path, like, findings, unit);
    }

    /** "Write for example: ...". */
    Said likeThis() {
        return Tell.said("example", Part.text(like));
    }

    boolean isText() {
        return tree instanceof Tree.Text;
    }

    /** The single value, stripped; a finding where it is a list, a section or blank. */
    Optional<String> text() {
        if (!(tree instanceof Tree.Text value)) {
            add(Tell.said("single.wanted", tree.said()), Said.NOTHING);
            return Optional.empty();
        }
        if (isEmpty(tree)) {
            add(Tell.said("value.none"), Tell.said("value.give"));
            return Optional.empty();
        }
        return Optional.of(value.text().strip());
    }

    /** The items of the list; a finding where it is none. */
    Optional<List<Tree>> items() {
        if (tree instanceof Tree.Items list) {
            return Optional.of(list.items());
        }
        add(isEmpty(tree) ? Tell.said("list.none") : Tell.said("list.wanted", tree.said()), likeThis());
        return Optional.empty();
    }

    static boolean isEmpty(Tree at) {
        return at instanceof Tree.Text value
                && List.of("", "~", "null").contains(value.text().strip());
    }
}
