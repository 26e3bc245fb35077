package stretchwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stretchwright.ground.Progress;
import stretchwright.ground.Voice;
import stretchwright.intake.MakeFile;
import stretchwright.make.Make;
import stretchwright.make.Session;
import stretchwright.workroom.store.Kind;
import stretchwright.workroom.store.Place;
import stretchwright.workroom.store.Thing;

/** The next make, and what cutting it leaves on the shelf. */
@Tag("slow")
class AgainTest {
    private static Workroom.Stored stored(Workroom room, Thing make) {
        return room.make(make.name()).orElseThrow();
    }

    @Test
    void theNextMakeIsFromTheOtherClothAndAllElseStays() {
        try (Workroom room = Rooms.fresh()) {
            Thing first = Rooms.with(room, "evening-practice");
            Thing other = Rooms.with(room, "hockey-boots");
            Thing cloth = room.store().thing(other.links().fabric()).orElseThrow();
            Again.Next next = new Again(room, stored(room, first)).with(cloth).run(Optional.empty(), Progress.silent());
            MakeFile was = stored(room, first).read();
            MakeFile is = stored(room, next.make()).read();
            assertThat(next.make().name()).isEqualTo("Evening practice (2)");
            assertThat(next.make().links().origin()).isEqualTo(first.id());
            assertThat(next.make().links().fabric()).isEqualTo(cloth.id());
            assertThat(is.measured()).isEqualTo(was.measured());
            assertThat(is.boot()).isEqualTo(was.boot());
            assertThat(is.style()).isEqualTo(was.style());
            assertThat(is.cloth()).isEqualTo(stored(room, other).read().cloth());
            assertThat(String.join("\n", next.comparison().table()))
                    .contains("fabric name", "leg: knee width", "cost of the fabric", "What the fit check says");
            assertThat(next.due()).isEmpty();
            assertThat(room.standing(next.make()).figures().orElseThrow()).contains("\"sizes\"", "\"pattern-A4.pdf\"");
            Again.Next third = new Again(room, stored(room, next.make())).run(Optional.empty(), Progress.silent());
            assertThat(third.make().name()).isEqualTo("Evening practice (3)");
        }
    }

    @Test
    void anotherWearerHasABootOfHerOwn() {
        try (Workroom room = Rooms.fresh()) {
            Thing first = Rooms.with(room, "evening-practice");
            Thing other = Rooms.with(room, "hockey-boots");
            Thing wearer = room.store().thing(other.links().wearer()).orElseThrow();
            Again.Next next =
                    new Again(room, stored(room, first)).with(wearer).run(Optional.empty(), Progress.silent());
            assertThat(next.lentBoot()).isFalse();
            assertThat(next.make().links().boot()).isEqualTo(other.links().boot());
            assertThat(stored(room, next.make()).read().boot())
                    .isEqualTo(stored(room, other).read().boot());
            room.store().move("bin", List.of(other.id(), next.make().id()), Place.BIN);
            Again.Next lent =
                    new Again(room, stored(room, first)).with(wearer).run(Optional.empty(), Progress.silent());
            assertThat(lent.lentBoot()).isTrue();
        }
    }

    @Test
    void theStashFallsByWhatTheLayUsedAndLeftoversComeBack() {
        try (Workroom room = Rooms.fresh()) {
            Thing make = Rooms.with(room, "evening-practice");
            Cutting.Cut cut = new Cutting(room, stored(room, make)).run(false);
            MakeFile read = stored(room, make).read();
            double needed = Session.of(read).lays().get(0).use().buying().needed();
            assertThat(cut.used()).isEqualTo(needed);
            assertThat(cut.left().orElseThrow()).isEqualTo(1600 - needed);
            Thing cloth = room.store().thing(make.links().fabric()).orElseThrow();
            assertThat(room.standing(cloth).text()).contains("\"" + (int) Math.floor(1600 - needed) + " mm\"");
            assertThat(cut.remnants()).isNotEmpty();
            String remnant = room.standing(cut.remnants().get(0)).text();
            String text = Parts.with(
                    stored(room, make).version().text(), "From a remnant", java.util.Map.of(Kind.FABRIC, remnant));
            MakeFile fromIt = Make.read("r.yaml", text.getBytes(StandardCharsets.UTF_8));
            assertThat(fromIt.cloth().test()).isEqualTo(read.cloth().test());
            assertThat(fromIt.cloth().roll().usableWidth()).isBetween(200.0, 735.0);
            org.assertj.core.api.Assertions.assertThatThrownBy(() -> new Cutting(room, stored(room, make)).run(false))
                    .hasMessageContaining("cut before");
            room.store().undo();
            assertThat(room.store().list(Kind.FABRIC, Place.HERE, "", 0, 9)).hasSize(1);
            assertThat(room.standing(room.store().thing(cloth.id()).orElseThrow())
                            .text())
                    .contains("1.6 m");
        }
    }

    @Test
    void aByteOrderMarkIsNoHindrance() {
        try (Workroom room = Rooms.fresh()) {
            String text = "\uFEFF" + new String(Rooms.example("ankle-length"), StandardCharsets.UTF_8);
            Thing first = room.incoming("bom.yaml", text.getBytes(StandardCharsets.UTF_8))
                    .take(Incoming.Same.ASK);
            Thing cloth = room.store()
                    .thing(Rooms.with(room, "evening-practice").links().fabric())
                    .orElseThrow();
            Again.Next next = new Again(room, stored(room, first)).with(cloth).run(Optional.empty(), Progress.silent());
            assertThat(next.make().name()).isEqualTo(first.name() + " (2)");
            assertThat(Differences.between(text, text.substring(1))).isEmpty();
        }
    }

    /** A wearer who was measured again is young; the measures of her old make are not. */
    @Test
    void measuresAreAsOldAsTheyThemselvesAre() {
        stretchwright.workroom.store.Address at = stretchwright.workroom.store.Databases.folder();
        java.time.Clock lastYear =
                java.time.Clock.fixed(java.time.Instant.parse("2025-06-01T12:00:00Z"), java.time.ZoneOffset.UTC);
        try (Workroom room = Workroom.open(at, lastYear)) {
            Rooms.with(room, "ankle-length");
        }
        try (Workroom room = Workroom.open(at, Rooms.NOVEMBER)) {
            Thing make = room.store().list(Kind.MAKE, Place.HERE, "", 0, 1).get(0);
            Thing wearer = room.store().thing(make.links().wearer()).orElseThrow();
            room.store().move("bin", List.of(wearer.id()), Place.BIN);
            room.store().undo();
            assertThat(new Again(room, stored(room, make))
                            .run(Optional.empty(), Progress.silent())
                            .due()
                            .orElseThrow()
                            .day())
                    .isEqualTo("2025-06-01");
            Thing binned = room.store().thing(wearer.id()).orElseThrow();
            String newer = room.standing(binned).text().replaceFirst("figure: ", "age: 34\n  figure: ");
            Thing again = room.change("save", binned, newer);
            assertThat(new Again(room, stored(room, make))
                            .run(Optional.empty(), Progress.silent())
                            .due())
                    .isPresent();
            assertThat(new Again(room, stored(room, make))
                            .with(again)
                            .run(Optional.empty(), Progress.silent())
                            .due())
                    .isEmpty();
        }
    }

    @Test
    void aLongNameIsShortenedForWhatFollows() {
        try (Workroom room = Rooms.fresh()) {
            String text = new String(Rooms.example("evening-practice"), StandardCharsets.UTF_8)
                    .replace("Heavy performance knit, ink", "k".repeat(120));
            Thing make = room.incoming("l.yaml", text.getBytes(StandardCharsets.UTF_8))
                    .take(Incoming.Same.ASK);
            Cutting.Cut cut = new Cutting(room, stored(room, make)).run(false);
            Thing remnant = cut.remnants().get(0);
            assertThat(remnant.name()).hasSize(120).endsWith("k, remnant 1");
            String next = Parts.with(
                    text,
                    "n".repeat(120),
                    java.util.Map.of(Kind.FABRIC, room.standing(remnant).text()));
            assertThat(Make.read("n.yaml", next.getBytes(StandardCharsets.UTF_8))
                            .cloth()
                            .roll()
                            .name())
                    .isEqualTo(remnant.name());
            String named = text.replace("name: Evening practice", "name: " + "n".repeat(120));
            Thing other = room.incoming("n.yaml", named.getBytes(StandardCharsets.UTF_8))
                    .take(Incoming.Same.KEEP);
            assertThat(new Again(room, stored(room, other))
                            .run(Optional.empty(), Progress.silent())
                            .make()
                            .name())
                    .hasSize(120)
                    .endsWith("n (2)");
        }
    }

    @Test
    void aRemnantThatIsUsedUpGoesIntoTheBin() {
        try (Workroom room = Rooms.fresh()) {
            Thing make = Rooms.with(room, "from-a-remnant");
            Thing cloth = room.store().thing(make.links().fabric()).orElseThrow();
            Cutting.Cut cut = new Cutting(room, stored(room, make)).run(false);
            assertThat(cut.left()).isEmpty();
            assertThat(room.store().thing(cloth.id()).orElseThrow().place()).isEqualTo(Place.BIN);
            room.store().undo();
            Thing back = room.store().thing(cloth.id()).orElseThrow();
            assertThat(back.place()).isEqualTo(Place.HERE);
            assertThat(room.standing(back).text()).contains("outline");
        }
    }

    @Test
    void oldMeasuresAreAskedFor() {
        MakeFile adult = read("");
        MakeFile child = Make.read("c.yaml", Rooms.example("roller-child"));
        LocalDate today = LocalDate.of(2026, 11, 30);
        LocalDate june = LocalDate.of(2026, 6, 1);
        assertThat(Due.of(adult, june, today)).isEmpty();
        assertThat(Due.of(adult, LocalDate.of(2025, 11, 29), today)).isPresent();
        assertThat(Due.of(child, june, today)).isPresent();
        assertThat(Due.of(child, LocalDate.of(2026, 8, 31), today)).isEmpty();
        assertThat(Due.of(child, LocalDate.of(2026, 8, 29), today)).isPresent();
        Due due = Due.of(read("  measured on: 2024-02-29\n"), today, today).orElseThrow();
        assertThat(Voice.plain().say(due.said()))
                .contains("taken on 2024-02-29", "12 months", "hip girth", "crotch height");
        assertThat(Due.of(read("  measured on: 2026-02-31\n"), today, today)).isEmpty();
    }

    private static MakeFile read(String more) {
        String text = new String(Rooms.example("evening-practice"), StandardCharsets.UTF_8)
                .replace("  figure: woman", more + "  figure: woman");
        return Make.read("a.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void figuresTellWhichFilesAreOthersNow() {
        try (Workroom room = Rooms.fresh()) {
            Thing make = Rooms.with(room, "ankle-length");
            var made = Make.run(stored(room, make).read(), Progress.silent());
            assertThat(room.keep(make, made)).isEmpty();
            assertThat(room.keep(make, made)).isEmpty();
            String figures = room.standing(make).figures().orElseThrow();
            assertThat(figures.length()).isLessThan(30_000);
            String altered = figures.replaceFirst("\"lay.svg\":\"[0-9a-f]{8}", "\"lay.svg\":\"00000000");
            room.store().figures(make, altered, "0.0.1");
            assertThat(room.keep(make, made)).isEqualTo(List.of("lay.svg"));
        }
    }
}
