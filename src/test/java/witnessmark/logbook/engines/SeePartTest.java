package witnessmark.logbook.engines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.PriorLife;
import witnessmark.logbook.Desk;
import witnessmark.quantity.Counter;
import witnessmark.sample.SampleBooks;

/** Where parts have been and what they did there, on the invented sample season. */
class SeePartTest {
    @TempDir
    static Path folder;

    private static Desk desk;

    @BeforeAll
    static void open() {
        desk = new SampleBooks(folder).open();
    }

    @AfterEach
    void backToToday() {
        desk.lookAsOf(null);
    }

    /** Looked up in the season's table of fitments by hand. */
    @Test
    void a_head_that_came_off_and_went_on_again_tells_both_times_the_latest_first() {
        assertThat(sheet("HD-06").times())
                .extracting(
                        time -> time.fitted().place(),
                        time -> time.fitted().stay().from().day(),
                        time -> time.fitted().lasts())
                .containsExactly(
                        tuple("K06", LocalDate.of(2026, 6, 5), true), tuple("K06", LocalDate.of(2026, 2, 26), false));
    }

    @Test
    void a_part_that_came_off_says_from_where_and_when() {
        FittedTime last = sheet("RB-03a").row().last();
        assertThat(last).isNotNull();
        assertThat(last.place()).isEqualTo("K03");
        assertThat(last.position()).isEqualTo("rod bolts");
        assertThat(last.stay().to().day()).isEqualTo(LocalDate.of(2026, 5, 8));
    }

    @Test
    void before_it_came_off_it_is_still_there() {
        desk.lookAsOf(LocalDate.of(2026, 5, 1));
        assertThat(sheet("RB-03a").row().inEngine()).isTrue();
        desk.lookAsOf(LocalDate.of(2026, 1, 20));
        assertThat(sheet("RB-03a").times()).isEmpty();
    }

    @Test
    void every_part_tells_every_fitment_that_is_written_down_of_it() {
        for (Entry<Part> part : parts()) {
            Set<Id<Fitment>> written = new HashSet<>();
            desk
                    .view()
                    .facts()
                    .of(Fitment.class)
                    .where(fitment -> fitment.part().equals(part.id()))
                    .stream()
                    .map(Entry::id)
                    .forEach(written::add);
            assertThat(sheet(part.fact().mark()).times())
                    .as(part.fact().mark())
                    .extracting(time -> time.fitted().stay().fitment().id())
                    .containsExactlyInAnyOrderElementsOf(written);
        }
    }

    /** What it ran in each place, and what was carried in, add up to its life. */
    @Test
    void the_times_add_up_to_the_life() {
        for (Entry<Part> part : parts()) {
            PartSheet sheet = sheet(part.fact().mark());
            long there =
                    sheet.times().stream().mapToLong(time -> time.ran().total()).sum();
            long carriedIn = desk
                    .view()
                    .facts()
                    .of(PriorLife.class)
                    .where(prior -> part.id().equals(prior.part()) && prior.counter() == Counter.RUNNING)
                    .stream()
                    .mapToLong(prior -> prior.fact().amount())
                    .sum();
            assertThat(there + carriedIn)
                    .as(part.fact().mark())
                    .isEqualTo(sheet.row().running().total());
        }
    }

    /** With the builds of all engines, the list leaves out no part and names none twice. */
    @Test
    void every_part_is_in_a_build_or_a_head_or_among_those_off_the_engines() {
        Engines engines = SeeEngine.all(desk.view());
        List<String> marks = new ArrayList<>();
        engines.heads().forEach(head -> marks.add(head.head().fact().mark()));
        engines.offEngines().forEach(row -> marks.add(row.part().fact().mark()));
        engines.engines().stream()
                .flatMap(row -> SeeEngine.of(desk.view(), row.engine().id()).orElseThrow().build().stream())
                .map(FittedPart::part)
                .filter(part -> part != null && kind(part) != PartKind.HEAD)
                .forEach(part -> marks.add(part.fact().mark()));
        assertThat(marks)
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(
                        parts().stream().map(part -> part.fact().mark()).toList());
        assertThat(engines.offEngines())
                .filteredOn(row -> row.last() == null)
                .extracting(row -> row.part().fact().mark())
                .contains("BE-S1", "WP-S1");
    }

    private static List<Entry<Part>> parts() {
        return desk.view().facts().of(Part.class).inForce().toList();
    }

    private static PartKind kind(Entry<Part> part) {
        return desk.view()
                .facts()
                .of(PartDesign.class)
                .get(part.fact().design())
                .kind();
    }

    private static PartSheet sheet(String mark) {
        Id<Part> id =
                desk.view().facts().of(Part.class).named(mark).orElseThrow().id();
        return SeePart.of(desk.view(), id).orElseThrow();
    }
}
