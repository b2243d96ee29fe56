package witnessmark.logbook.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/** Lives by a moment, held against the ledger as of a day and against the tables of the sample season. */
class LifeThenTest {
    private final Facts facts = SampleBook.facts();

    private LifeThen.Ran ran(Moment at, Id<Part> part) {
        return LifeThen.at(facts, at, SampleBook.LONDON).of(part);
    }

    /** The season's own tables were made apart from this program. */
    @Test
    void what_each_part_of_the_season_had_run_is_what_its_incident_says() {
        List<Entry<IncidentPart>> parts = facts.of(IncidentPart.class).where(part -> true);
        assertThat(parts).hasSizeGreaterThan(10);
        for (Entry<IncidentPart> entry : parts) {
            IncidentPart part = entry.fact();
            Incident incident = facts.of(Incident.class).get(part.incident());
            LifeThen.Ran ran = ran(incident.at(), part.part());
            assertThat(ran.ran())
                    .as(
                            "%s, %s",
                            incident.mark(),
                            facts.of(Part.class).get(part.part()).mark())
                    .isEqualTo(part.ran());
        }
    }

    @Test
    void after_the_last_run_of_a_day_it_is_the_life_of_the_ledger_as_of_that_day() {
        List<Moment> evenings = facts.of(Run.class).where(run -> true).stream()
                .map(run -> Moment.endOf(run.fact().start().day(), SampleBook.LONDON))
                .distinct()
                .toList();
        assertThat(evenings).hasSizeGreaterThan(5);
        for (Moment evening : evenings) {
            LifeLedger ledger = LifeLedger.of(facts, new AsOf(evening.day(), SampleBook.LONDON));
            LifeThen then = LifeThen.at(facts, evening, SampleBook.LONDON);
            facts.of(Part.class).inForce().forEach(part -> {
                Life life = ledger.life(part.id(), Counter.RUNNING);
                LifeThen.Ran ran = then.of(part.id());
                assertThat(ran.ran().millis()).isEqualTo(life.total());
                assertThat(ran.atLeast()).isEqualTo(!life.complete());
            });
        }
    }

    /** Metamorphic: a moment before it went out a run is not in it, and when it has gone out it is in it whole. */
    @Test
    void a_run_that_went_out_later_that_day_does_not_count_and_one_that_had_gone_out_counts_whole() {
        int counted = 0;
        for (Entry<Run> run : facts.of(Run.class).where(each -> each.perhapsSame() == null)) {
            Moment out = run.fact().start();
            Id<Part> part = fitted(run.fact());
            if (part != null && !out.dayOnly()) {
                RunningTime before = ran(out.before(), part).ran();
                RunningTime after = ran(out, part).ran();
                assertThat(after.millis() - before.millis())
                        .isEqualTo(run.fact().running().millis());
                counted++;
            }
        }
        assertThat(counted).isGreaterThan(10);
    }

    private @Nullable Id<Part> fitted(Run run) {
        return facts
                .of(Fitment.class)
                .where(fitment -> run.engine().equals(fitment.engine())
                        && fitment.from().isBefore(run.start())
                        && (fitment.to() == null || run.start().isBefore(fitment.to())))
                .stream()
                .map(fitment -> fitment.fact().part())
                .findFirst()
                .orElse(null);
    }

    /** The season's figures: springs to be renewed at 12 h, at 12.87 h on 8 July. */
    @Test
    void the_limit_is_the_nearest_running_at_which_it_was_to_be_renewed() {
        Id<Part> springs = facts.of(Part.class).named("VS-03").orElseThrow().id();
        LifeThen.Ran ran = ran(Moment.endOf(SampleBook.OPENING, SampleBook.LONDON), springs);
        assertThat(ran.limit()).isEqualTo(new RunningTime(12 * 3_600_000L));
        assertThat(Math.round(ran.ran().millis() / 36_000.0)).isEqualTo(1_287);
    }
}
