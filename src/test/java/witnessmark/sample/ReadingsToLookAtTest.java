package witnessmark.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.PartKind;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.logbook.standing.StillOpen;
import witnessmark.study.result.Call;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.TrendWords;
import witnessmark.wording.Units;

/**
 * Design 14.23: on 6 October K06's cylinder 4 reads 3, 7, 6, 8 % and is to be looked at, and on no day before. Nothing is
 * said that is within, nor what is past its limit already, which is a mark.
 */
class ReadingsToLookAtTest {
    private static Facts facts = Facts.none();

    @BeforeAll
    static void tell() {
        facts = SampleViews.end().facts();
    }

    private static List<StillOpen.Going> on(Facts all, String day) {
        return SeeStanding.of(SampleViews.on(all, LocalDate.parse(day))).open().readings();
    }

    @Test
    void on_6_october_it_is_cylinder_4_of_k06() {
        assertThat(on(facts, "2026-10-06")).singleElement().satisfies(going -> {
            assertThat(going.engine().fact().number()).isEqualTo("K06");
            assertThat(going.kind().kind()).isEqualTo(ReadingKind.LEAK_DOWN);
            assertThat(going.place().place()).isEqualTo("4");
            assertThat(going.place().call()).isEqualTo(Call.LOOK);
            Texts texts = Texts.in(Locale.UK);
            TrendWords words = new TrendWords(texts, new Measures(texts, Units.METRIC));
            assertThat(words.where("K06", going.kind())).isEqualTo("K06, leak-down");
            assertThat(words.heading(going.kind(), going.place()))
                    .contains("7", "6", "8")
                    .contains("%");
            assertThat(words.rests(going.kind(), going.place()))
                    .containsIgnoringCase("the 3 others read 4")
                    .containsPattern("At this rate 10.% in about 4\\.5.h, not before 1\\.7.h");
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-02-01",
                "2026-03-24",
                "2026-04-14",
                "2026-05-03",
                "2026-05-26",
                "2026-06-14",
                "2026-07-07",
                "2026-07-08",
                "2026-09-15",
                "2026-10-05"
            })
    void on_the_other_days_of_the_table_nothing_is_said(String day) {
        assertThat(on(facts, day)).isEmpty();
    }

    /** The springs of K03 lose 1.5 N an hour and Round 6 takes 2.2 h: nearer than that, 7 % in place of 8 %, it is said. */
    @Test
    void a_limit_that_the_line_may_meet_at_the_next_event_is_said_and_one_further_off_is_not() {
        assertThat(on(facts, "2026-07-08")).isEmpty();
        Entry<ReadingLimit> limit = facts.of(ReadingLimit.class)
                .where(each -> each.partKind() == PartKind.VALVE_SPRINGS)
                .get(0);
        ReadingLimit was = limit.fact();
        ReadingLimit nearer = new ReadingLimit(
                was.name(),
                was.kind(),
                was.design(),
                was.partKind(),
                was.engine(),
                was.atLeast(),
                was.atMost(),
                was.changeAtMost(),
                700,
                was.worstGrade(),
                was.every(),
                was.rank(),
                was.source(),
                was.validFrom(),
                was.validTo());
        Facts changed = facts.with(
                List.of(new Entry<>(limit.id(), nearer, limit.standing(), limit.struckBecause(), limit.rev() + 1)));
        assertThat(on(changed, "2026-07-08")).singleElement().satisfies(going -> {
            assertThat(going.engine().fact().number()).isEqualTo("K03");
            assertThat(going.kind().part().fact().mark()).isEqualTo("VS-03");
            assertThat(going.place().place()).isEqualTo("mean of 16");
            assertThat(going.place().call()).isEqualTo(Call.WORSE);
        });
    }
}
