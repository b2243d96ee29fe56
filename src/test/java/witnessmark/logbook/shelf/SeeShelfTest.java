package witnessmark.logbook.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Engine;
import witnessmark.domain.Part;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.Where;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.sample.SampleBooks;

/** Which part is where and what is left in it. */
class SeeShelfTest {
    @TempDir
    private Path folder;

    private final Shelf shelf = SeeShelf.of(SmallShelf.view(SmallShelf.DAY));

    @Test
    void what_needs_a_hand_stands_first_then_what_stands_worst() {
        assertThat(SmallShelf.marks(shelf))
                .containsExactly("HD-06", "RS-03", "PN-07", "VS-03", "RS-01/1", "VS-06", "VS-15", "CR-05", "RS-01");
        assertThat(shelf.parts())
                .extracting(part -> part.where().state())
                .containsExactly(
                        Where.State.AWAY,
                        Where.State.SPARE,
                        Where.State.QUARANTINE,
                        Where.State.FITTED,
                        Where.State.SPARE,
                        Where.State.FITTED,
                        Where.State.SPARE,
                        Where.State.SCRAPPED,
                        Where.State.SPLIT);
    }

    @Test
    void a_part_carries_its_life_and_its_worst_mark_wherever_it_is() {
        ShelfPart springs = part("VS-03");
        assertThat(springs.row().running().total()).isEqualTo(780 * 60_000);
        assertThat(springs.worst().state()).isEqualTo(MarkState.OVER);
        assertThat(springs.there().place()).isEqualTo("K03");
        assertThat(springs.car()).isEqualTo("41");
        assertThat(part("VS-15").worst().state()).isEqualTo(MarkState.WITHIN);
        assertThat(part("CR-05").worst()).isNull();
    }

    @Test
    void a_borrowed_part_says_where_it_goes_back_to_and_a_spare_the_job_it_is_kept_for() {
        ShelfPart borrowed = part("VS-06");
        assertThat(borrowed.where().borrowed()).isTrue();
        assertThat(borrowed.before().place()).isEqualTo("K06");
        assertThat(part("VS-15").keptFor())
                .extracting(job -> job.fact().what())
                .containsExactly("change the head gasket of K03");
    }

    @Test
    void stock_that_is_short_stands_first_and_empty_batches_after_the_others() {
        assertThat(shelf.stock())
                .extracting(
                        row -> row.level().batch().fact().batch(),
                        row -> row.level().onShelf(),
                        row -> row.level().kept(),
                        row -> row.level().free(),
                        row -> row.level().isShort())
                .containsExactly(
                        tuple("FN-118", 4, 2, 2, true),
                        tuple("FN-101", 0, 0, 0, true),
                        tuple("drum 7", 9, 0, 0, false),
                        tuple("T-44", 24, 0, 24, false));
        assertThat(shelf.stock().get(0).level().onOrder()).isEqualTo(6);
    }

    @Test
    void one_late_two_undecided_and_one_design_short_make_four_that_need_a_hand() {
        assertThat(shelf.needHand()).isEqualTo(4);
        assertThat(SeeShelf.of(SmallShelf.view(LocalDate.parse("2026-05-10"))).needHand())
                .isZero();
    }

    @Test
    void what_needs_a_hand_is_the_same_number_counted_alone() {
        for (LocalDate day = SmallShelf.DAY.minusDays(90); !day.isAfter(SmallShelf.DAY); day = day.plusDays(1)) {
            assertThat(SeeShelf.needHand(SmallShelf.view(day)))
                    .isEqualTo(SeeShelf.of(SmallShelf.view(day)).needHand());
        }
    }

    @Test
    void in_the_sample_season_every_part_is_somewhere_once_and_what_is_fitted_is_what_the_engines_show() {
        Desk desk = new SampleBooks(folder).open();
        View view = desk.view();
        Shelf all = SeeShelf.of(view);
        assertThat(all.parts())
                .hasSize((int) view.facts().of(Part.class).inForce().count());
        long fitted = all.parts().stream()
                .filter(part -> part.where().state() == Where.State.FITTED)
                .filter(part -> part.there().engine() != null)
                .count();
        long inEngines = view.facts()
                .of(Engine.class)
                .inForce()
                .mapToLong(engine -> view.ledger()
                        .fittedAt(engine.id(), view.ledger().asOf().last())
                        .size())
                .sum();
        assertThat(fitted).isEqualTo(inEngines);
        desk.logbook().close();
    }

    private ShelfPart part(String mark) {
        return shelf.parts().stream()
                .filter(part -> part.mark().equals(mark))
                .findFirst()
                .orElseThrow();
    }
}
