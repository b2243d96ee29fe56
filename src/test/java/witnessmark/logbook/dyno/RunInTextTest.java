package witnessmark.logbook.dyno;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.RunInStep;
import witnessmark.outcome.ProblemKind;

/** Steps in the order in which engines are run in (trade handbook 10.1). */
class RunInTextTest {
    private static final Id<Run> RUN = new Id<>(new UUID(0, 9));

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "10 min 3000 rpm 30 % cam bedded in | 600000 | 3000 | 300 | cam bedded in",
                "10 min at 3000 rpm, 30 % load, cam bedded in | 600000 | 3000 | 300 | cam bedded in",
                "8 min 2000-2500 rpm no load | 480000 | 2500 | - | from 2000 rpm, no load",
                "12 4 000 rpm 40% | 720000 | 4000 | 400 | ''",
                "1h20 | 4800000 | - | - | ''",
                "90 s 12,5 % coast | 90000 | - | 125 | coast",
                "15 min oil and filter changed | 900000 | - | - | oil and filter changed",
            })
    void how_long_how_fast_how_hard_and_what(String line, long millis, Integer rpm, Integer permille, String words) {
        RunInStep step = RunInText.steps(RunInText.read(line, RUN)).get(0);

        assertThat(step.lasted().millis()).isEqualTo(millis);
        assertThat(step.speed() == null ? null : step.speed().rpm()).isEqualTo(rpm);
        assertThat(step.loadPermille()).isEqualTo(permille);
        assertThat(step.words()).isEqualTo(words);
        assertThat(RunInText.steps(RunInText.read(RunInText.text(List.of(step)), RUN)))
                .as("read back")
                .containsExactly(step);
    }

    @ParameterizedTest
    @ValueSource(strings = {"some time at 3000", "0 min", "10 min 900000 rpm", "10 min 3000 rpm 130 %"})
    void what_is_no_step_is_named_with_its_line(String line) {
        List<RunInText.Line> lines = RunInText.read("5 min 2000 rpm\n\n" + line, RUN);

        assertThat(lines.get(2).problem()).isNotNull();
        assertThat(lines.get(2).problem().kind()).isEqualTo(ProblemKind.DYNO_LINE_UNREAD);
        assertThat(lines.get(2).problem().facts().get(0)).isEqualTo(3);
    }

    @Test
    void steps_are_counted_in_their_order() {
        assertThat(RunInText.steps(RunInText.read("5 min\n\n6 min\n7 min", RUN)))
                .extracting(RunInStep::number)
                .containsExactly(1, 2, 3);
    }
}
