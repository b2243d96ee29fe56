package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Car;
import witnessmark.domain.Run;
import witnessmark.domain.RunKind;
import witnessmark.domain.StartKnown;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Today;

/** What stands for an empty time out. Cases by hand; British summer time, an hour before UTC. */
class EstimatedOutTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private record Clock(LocalDate day, Instant now) implements Today {}

    private static Instant at(String clock) {
        return Instant.parse("2026-07-25T" + clock + ":00Z").minusSeconds(3600);
    }

    private static RunSheet sheet(MemoryLogbook book, Instant now) {
        return new RunSheet(new Desk(book, new Clock(SATURDAY, now), "TE"), SampleBook.ids(), SampleBook.UNITS);
    }

    private static Map<RunField, String> typed(RunSheet sheet, @Nullable String outAt, String running) {
        var car = new MemoryLogbook(SampleBook.facts())
                .facts()
                .of(Car.class)
                .named("41")
                .orElseThrow();
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(car.id()));
        typed.put(RunField.OUT_AT, outAt == null ? "" : outAt);
        typed.put(RunField.RUNNING, running);
        return typed;
    }

    private static String out(RunSheet sheet, Map<RunField, String> typed) {
        Run run = Objects.requireNonNull(sheet.read(typed).run()).fact();
        assertThat(run.startKnown()).isEqualTo(StartKnown.ESTIMATE);
        return run.start().day() + " " + run.start().wallClock().toLocalTime();
    }

    @ParameterizedTest(name = "{1} min at {0}: {2}")
    @CsvSource({"09:18, 25, 08:53", "12:00, 20, 11:40", "23:59, 30, 23:29", "00:10, 25, 00:00"})
    void today_it_has_just_come_back(String now, String running, String out) {
        RunSheet sheet = sheet(new MemoryLogbook(SampleBook.facts()), at(now));
        assertThat(out(sheet, typed(sheet, null, running))).isEqualTo(SATURDAY + " " + out);
    }

    @Test
    void one_after_the_other_is_never_ahead_of_the_clock_and_keeps_its_turn() {
        MemoryLogbook book = new MemoryLogbook(SampleBook.facts());
        String[] clock = {"18:00", "18:01", "18:03"};
        String[] outs = {"17:35", "18:00", "18:03"};
        for (int i = 0; i < clock.length; i++) {
            RunSheet sheet = sheet(book, at(clock[i]));
            Map<RunField, String> typed = typed(sheet, null, "25");
            typed.put(RunField.PLANNED, Keys.kind(RunKind.TEST));
            assertThat(out(sheet, typed)).isEqualTo(SATURDAY + " " + outs[i]);
            assertThat(sheet.read(typed).problems()).as("nothing is asked").isEmpty();
            sheet.save(typed, "log").orThrow();
        }
    }

    @Test
    void a_known_run_goes_beside_an_estimated_one() {
        MemoryLogbook book = new MemoryLogbook(SampleBook.facts());
        RunSheet sheet = sheet(book, at("09:18"));
        Map<RunField, String> guessed = typed(sheet, null, "25");
        guessed.put(RunField.PLANNED, Keys.kind(RunKind.TEST));
        sheet.save(guessed, "log").orThrow();
        Map<RunField, String> known = typed(sheet, "09:00", "15");
        known.put(RunField.PLANNED, Keys.kind(RunKind.TEST));
        assertThat(sheet.read(known).stops()).isFalse();
        assertThat(sheet.save(known, "log").didWork()).isTrue();
    }

    @Test
    void another_day_has_noon_and_so_has_the_day_of_a_story() {
        RunSheet sheet = sheet(new MemoryLogbook(SampleBook.facts()), at("09:18"));
        Map<RunField, String> friday = typed(sheet, null, "25");
        friday.put(RunField.DATE, "24 Jul 2026");
        assertThat(out(sheet, friday)).isEqualTo("2026-07-24 12:00");
        RunSheet story = sheet(new MemoryLogbook(SampleBook.facts()), Instant.parse("2027-02-03T08:00:00Z"));
        assertThat(out(story, typed(story, null, "25"))).isEqualTo(SATURDAY + " 12:00");
    }
}
