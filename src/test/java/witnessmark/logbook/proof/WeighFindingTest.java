package witnessmark.logbook.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Cause;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.Speaks;
import witnessmark.domain.Standing;
import witnessmark.domain.Weighing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Weighing a finding of the sample season against a cause. */
class WeighFindingTest {
    private final Desk desk = SampleBook.on(SampleBook.OPENING);
    private final WeighFinding weigh = new WeighFinding(desk, SampleBook.ids());

    private Evidence.Pair pair() {
        return new Evidence.Pair(
                desk.view()
                        .facts()
                        .of(Finding.class)
                        .where(each -> each.place() == FindingPlace.CRANK_PIN)
                        .get(0)
                        .id(),
                desk.view()
                        .facts()
                        .of(Cause.class)
                        .where(each -> each.statement().startsWith("housing of rod 3"))
                        .get(0)
                        .id());
    }

    private List<Entry<Weighing>> of(Evidence.Pair pair) {
        return desk.view()
                .facts()
                .of(Weighing.class)
                .where(each ->
                        each.finding().equals(pair.finding()) && each.cause().equals(pair.cause()));
    }

    @Test
    void weighed_again_it_is_the_same_weighing_and_its_why_stays() {
        Evidence.Pair pair = pair();
        weigh.speaks(pair, Speaks.FOR, "by hand").orThrow();
        weigh.because(pair, "  blue all round ", "by hand").orThrow();
        weigh.speaks(pair, Speaks.STRONGLY_FOR, "by hand").orThrow();

        assertThat(of(pair)).singleElement().satisfies(entry -> {
            assertThat(entry.rev()).isEqualTo(3);
            assertThat(entry.fact().speaks()).isEqualTo(Speaks.STRONGLY_FOR);
            assertThat(entry.fact().why()).isEqualTo("blue all round");
            assertThat(entry.fact().by()).isEqualTo(desk.who());
        });
    }

    @Test
    void the_same_way_once_more_is_strongly_and_what_it_says_already_is_no_change() {
        Evidence.Pair pair = pair();
        assertThat(weigh.towards(pair, Speaks.FOR, Speaks::code).orThrow()).contains(Speaks.FOR);
        assertThat(weigh.towards(pair, Speaks.FOR, Speaks::code).orThrow()).contains(Speaks.STRONGLY_FOR);
        assertThat(weigh.towards(pair, Speaks.FOR, Speaks::code).orThrow()).contains(Speaks.FOR);
        assertThat(weigh.towards(pair, Speaks.AGAINST, Speaks::code).orThrow()).contains(Speaks.AGAINST);
        assertThat(weigh.towards(pair, Speaks.NEITHER, Speaks::code).orThrow()).contains(Speaks.NEITHER);
        assertThat(weigh.towards(pair, Speaks.NEITHER, Speaks::code).orThrow()).isEmpty();
        assertThat(of(pair)).singleElement().extracting(Entry::rev).isEqualTo(5L);
    }

    @Test
    void taken_away_it_is_struck_out_with_a_reason_and_undo_brings_it_back() {
        Evidence.Pair pair = pair();
        weigh.speaks(pair, Speaks.AGAINST, "by hand").orThrow();
        Entry<Weighing> before = of(pair).get(0);
        weigh.takeAway(pair, "says nothing of it", "by hand").orThrow();

        assertThat(of(pair)).isEmpty();
        Entry<Weighing> struck =
                desk.view().facts().of(Weighing.class).find(before.id()).orElseThrow();
        assertThat(struck.standing()).isEqualTo(Standing.STRUCK_OUT);
        assertThat(struck.struckBecause()).isEqualTo("says nothing of it");
        desk.undo().orThrow();
        assertThat(of(pair)).hasSize(1);
    }

    @Test
    void a_why_needs_a_weighing_and_so_does_taking_away() {
        Evidence.Pair pair = pair();
        for (var refused :
                List.of(weigh.because(pair, "blue", "by hand"), weigh.takeAway(pair, "nothing", "by hand"))) {
            assertThat(refused.didWork()).isFalse();
            assertThat(refused.problems())
                    .extracting(Problem::kind)
                    .as("says that it is not weighed")
                    .containsExactly(ProblemKind.NOT_WEIGHED);
        }
        assertThat(of(pair)).isEmpty();
    }

    @Test
    void as_of_an_earlier_day_nothing_is_written() {
        Evidence.Pair pair = pair();
        desk.lookAsOf(SampleBook.OPENING.minusDays(3));
        assertThat(weigh.speaks(pair, Speaks.FOR, "by hand").didWork()).isFalse();
    }
}
