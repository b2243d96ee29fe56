package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Run;
import witnessmark.ledger.result.Clash;
import witnessmark.outcome.ProblemKind;

/** What must hold of any history when it is judged whole, entry by entry, or not at all. */
class CoherencePropertiesTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void what_is_found_when_all_is_judged_is_found_when_that_entry_is_judged_alone(long seed) {
        History history = HistoryGenerator.history(seed);
        Facts facts = history.story().facts();
        for (Clash clash : Coherence.clashes(facts, history.story().entries(), history.asOf())) {
            assertThat(Coherence.clashes(facts, List.of(clash.entry()), history.asOf()))
                    .as("%s of %s", clash.problem(), clash.entry())
                    .anyMatch(alone -> alone.entry().equals(clash.entry())
                            && alone.problem().kind() == clash.problem().kind());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void runs_overlap_and_parts_are_in_two_places_exactly_when_two_in_force_say_so(long seed) {
        History history = HistoryGenerator.history(seed);
        Facts facts = history.story().facts();
        Set<ProblemKind> found = EnumSet.noneOf(ProblemKind.class);
        Coherence.forEntries(facts, history.story().entries(), history.asOf())
                .forEach(problem -> found.add(problem.kind()));
        List<Run> runs = facts.of(Run.class)
                .inForce()
                .map(Entry::fact)
                .filter(run -> run.perhapsSame() == null)
                .toList();
        boolean overlap = false;
        for (Run run : runs) {
            for (Run other : runs) {
                overlap |= run != other
                        && run.engine().equals(other.engine())
                        && !run.start().isAfter(other.start())
                        && run.back().isAfter(other.start());
            }
        }
        assertThat(found.contains(ProblemKind.RUNS_OVERLAP)).isEqualTo(overlap);
        List<Fitment> fitments =
                facts.of(Fitment.class).inForce().map(Entry::fact).toList();
        boolean filledTwice = false;
        for (Fitment fitment : fitments) {
            for (Fitment other : fitments) {
                filledTwice |= !fitment.part().equals(other.part())
                        && fitment.position().equals(other.position())
                        && (fitment.engine() == null || fitment.engine().equals(other.engine()))
                        && !fitment.from().isAfter(other.from())
                        && (fitment.to() == null || fitment.to().isAfter(other.from()));
            }
        }
        assertThat(found.contains(ProblemKind.TWO_PARTS_IN_POSITION)).isEqualTo(filledTwice);
    }

    @Test
    void a_logbook_that_holds_together_is_left_alone() {
        History book = BigLogbook.of(3, 3, 4, 5);
        assertThat(Coherence.clashes(book.story().facts(), book.story().entries(), book.asOf()))
                .isEmpty();
    }

    @Test
    void nothing_changed_is_nothing_wrong() {
        History history = HistoryGenerator.history(1);
        assertThat(Coherence.forEntries(history.story().facts(), List.of(), history.asOf()))
                .isEmpty();
    }
}
