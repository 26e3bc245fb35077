package stretchwright;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Inside a room: classes that need each other in a ring have to be read, changed and tested together. A ring of more than
 * {@link #MOST} classes fails, unless it is listed here with its size and its reason. A nested class counts as its outer one.
 */
class RingsTest {
    private static final int MOST = 4;

    /** Of each ring left, by its alphabetically first class: how many classes it has, and why it is left. */
    private record Left(int classes, String reason) {}

    private static final Map<String, Left> LEFT = Map.of();

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("stretchwright");

    @Test
    void noRoomHasALargeRingThatIsNotListed() {
        List<String> found = new ArrayList<>();
        for (Set<String> ring : rings(arrows(CLASSES))) {
            Left left = LEFT.get(ring.iterator().next());
            if (ring.size() > MOST && (left == null || ring.size() > left.classes())) {
                found.add(ring.size() + ": " + ring);
            }
        }
        assertThat(found).as("rings that are not listed, or have grown").isEmpty();
    }

    @Test
    void theListHoldsNothingIdle() {
        Map<String, Integer> sizes = new TreeMap<>();
        rings(arrows(CLASSES)).forEach(ring -> sizes.put(ring.iterator().next(), ring.size()));
        LEFT.forEach((first, left) -> {
            assertThat(left.reason()).as(first).isNotBlank();
            assertThat(sizes.getOrDefault(first, 0))
                    .as("the ring of %s is as large as listed", first)
                    .isEqualTo(left.classes());
        });
    }

    @Test
    void aRingIsFound() {
        Map<String, Set<String>> arrows = Map.of(
                "a", Set.of("b"),
                "b", Set.of("c"),
                "c", Set.of("a", "d"),
                "d", Set.of("e"),
                "e", Set.of());
        assertThat(rings(arrows)).containsExactly(Set.of("a", "b", "c"));
    }

    /** From each class to those of its own room that it uses. */
    private static Map<String, Set<String>> arrows(JavaClasses classes) {
        Map<String, Set<String>> arrows = new TreeMap<>();
        for (JavaClass from : classes) {
            Set<String> to = arrows.computeIfAbsent(outermost(from), n -> new TreeSet<>());
            for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                JavaClass target = dependency.getTargetClass().getBaseComponentType();
                if (room(target).equals(room(from))) {
                    to.add(outermost(target));
                }
            }
            to.remove(outermost(from));
        }
        return arrows;
    }

    /** Its inner rooms belong to it. */
    private static String room(JavaClass type) {
        return type.getPackageName().replaceFirst("^(stretchwright\\.[a-z]+).*", "$1");
    }

    private static String outermost(JavaClass type) {
        return type.getEnclosingClass()
                .map(RingsTest::outermost)
                .orElse(type.getFullName().replace("stretchwright.", ""));
    }

    /** Strongly connected components of two classes and more, each in alphabetical order (Tarjan, SIAM J. Comput. 1, 1972). */
    private static List<Set<String>> rings(Map<String, Set<String>> arrows) {
        Search search = new Search(arrows);
        new TreeSet<>(arrows.keySet()).forEach(search::visit);
        return search.rings;
    }

    private static final class Search {
        private final Map<String, Set<String>> arrows;
        private final Map<String, Integer> number = new HashMap<>();
        private final Map<String, Integer> lowest = new HashMap<>();
        private final Deque<String> open = new ArrayDeque<>();
        private final Set<String> isOpen = new HashSet<>();
        private final List<Set<String>> rings = new ArrayList<>();

        Search(Map<String, Set<String>> arrows) {
            this.arrows = arrows;
        }

        void visit(String at) {
            if (number.containsKey(at)) {
                return;
            }
            number.put(at, number.size());
            lowest.put(at, number.get(at));
            open.push(at);
            isOpen.add(at);
            for (String to : arrows.getOrDefault(at, Set.of())) {
                boolean seen = number.containsKey(to);
                visit(to);
                if (isOpen.contains(to)) {
                    lowest.merge(at, seen ? number.get(to) : lowest.get(to), Math::min);
                }
            }
            if (lowest.get(at).equals(number.get(at))) {
                close(at);
            }
        }

        private void close(String root) {
            Set<String> ring = new TreeSet<>();
            String member;
            do {
                member = open.pop();
                isOpen.remove(member);
                ring.add(member);
            } while (!member.equals(root));
            if (ring.size() > 1) {
                rings.add(ring);
            }
        }
    }
}
