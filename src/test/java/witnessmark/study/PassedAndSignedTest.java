package witnessmark.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.RunOn;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.trends.SeeTrends;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.study.result.Call;
import witnessmark.study.result.KindTrends;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.PlaceTrend;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.TrendWords;
import witnessmark.wording.Units;

/** A limit of readings that is passed and signed to go on: the springs VS-03 of the invented season, weak since June. */
class PassedAndSignedTest {
    private final Desk desk = SampleBook.written(SampleBook.OPENING);
    private final Id<Part> springs =
            desk.view().facts().of(Part.class).named("VS-03").orElseThrow().id();

    private record Found(KindTrends of, PlaceTrend place, LimitAhead limit) {}

    private Found passed() {
        Id<Engine> engine =
                desk.view().facts().of(Engine.class).named("K03").orElseThrow().id();
        for (KindTrends of : SeeTrends.of(desk.view(), engine)) {
            for (PlaceTrend place : of.places()) {
                for (LimitAhead limit : place.limits()) {
                    if (limit.passed()) {
                        return new Found(of, place, limit);
                    }
                }
            }
        }
        throw new AssertionError("nothing is past its limit");
    }

    private void sign(int hour, Id<ReadingLimit> limit, long upTo) {
        Moment at = Moment.of(desk.day().atTime(hour, 0), desk.view().zone());
        RunOn runOn = new RunOn(null, limit, springs, null, null, upTo, at, "Ines Marr", "", "", "last race");
        desk.write("run on", List.of(new Entry<>(SampleBook.ids().next(), runOn, Standing.IN_FORCE, null, 1)))
                .orThrow();
    }

    @Test
    void it_is_over_until_somebody_signs_and_run_on_until_what_was_signed_is_reached() {
        TrendWords words = new TrendWords(Texts.in(Locale.UK), new Measures(Texts.in(Locale.UK), Units.METRIC));
        Found before = passed();
        assertThat(before.limit().over()).isTrue();
        long run = desk.view().ledger().life(springs, Counter.RUNNING).highest();

        sign(11, before.limit().limit().id(), run + 3_600_000);
        Found signed = passed();
        assertThat(signed.limit().over()).isFalse();
        assertThat(signed.place().call())
                .as("the reading is past it all the same")
                .isEqualTo(before.place().call());
        if (signed.place().call() == Call.PAST_LIMIT) {
            assertThat(words.finding(signed.of(), signed.place())).contains("run on until it has run", "Ines Marr");
        }

        sign(12, before.limit().limit().id(), run);
        assertThat(passed().limit().over()).as("what was signed is reached").isTrue();
    }
}
