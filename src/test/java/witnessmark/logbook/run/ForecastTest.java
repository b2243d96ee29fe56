package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.Run;
import witnessmark.domain.Zone;
import witnessmark.ledger.Marks;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Today;
import witnessmark.quantity.Counter;

/** What a run would do, held against what it did once it was saved. */
class ForecastTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");

    private final Desk book = SampleBook.on(SATURDAY);
    private final RunSheet sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);

    private Map<RunField, String> typed(String running) {
        Id<Car> car =
                book.view().facts().of(Car.class).named("41").orElseThrow().id();
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(car));
        typed.put(RunField.RUNNING, running);
        return typed;
    }

    private RunDoes does(String running) {
        return sheet.does(sheet.read(typed(running))).orElseThrow();
    }

    /** The sample's K03 had run 12.87 h since its rebuild; 28 min 20 s more is 13.34 h. */
    @Test
    void the_engine_goes_from_its_life_before_to_its_life_after() {
        RunDoes does = does("28:20");

        assertThat(does.engine()).isEqualTo("K03");
        assertThat(does.after().total() - does.before().total()).isEqualTo(1_700_000);
        assertThat(new witnessmark.quantity.RunningTime(does.before().total()).hours(2))
                .hasToString("12.87");
        assertThat(new witnessmark.quantity.RunningTime(does.after().total()).hours(2))
                .hasToString("13.34");
    }

    /** Metamorphic: looking ahead and saving come to the same. */
    @ParameterizedTest
    @ValueSource(strings = {"3", "28:20", "2h", "23h"})
    void what_was_shown_is_what_comes_true(String running) {
        RunDoes does = does(running);
        Id<Engine> engine =
                book.view().facts().of(Engine.class).named("K03").orElseThrow().id();

        assertThat(sheet.save(typed(running), "run").didWork()).isTrue();

        Life after = book.view().ledger().sinceRebuild(engine, java.util.EnumSet.of(Zone.BOTTOM_END), Counter.RUNNING);
        assertThat(after).isEqualTo(does.after());
        for (MarkEffect mark : does.marks()) {
            LimitUse shown = mark.after().use();
            if (shown != null && shown.part() != null && shown.since() == null) {
                assertThat(book.view().ledger().life(shown.part(), shown.used().counter()))
                        .as(mark.after().serial())
                        .isEqualTo(shown.used());
            }
        }
    }

    /**
     * Round trip: every run left in the sample's timetables, logged in order on its day with the running it is expected
     * to take, every third revved higher than it may. The marks shown before saving are those the logbook has after it,
     * with what is to come; none is missing that the saving changed or that holds the engine, its car or a part there.
     */
    @Test
    void the_marks_shown_before_saving_come_true_after_saving_in_every_run_left_in_the_season() {
        Clock clock = new Clock();
        Desk season = new Desk(new MemoryLogbook(SampleBook.facts()), clock, "TE");
        RunSheet own = new RunSheet(season, SampleBook.ids(), SampleBook.UNITS);
        Set<MarkState> met = EnumSet.noneOf(MarkState.class);
        int saved = 0;
        for (LocalDate day : daysLeft(season.view().facts())) {
            clock.day = day;
            for (Entry<Car> car : season.view().facts().of(Car.class).inForce().toList()) {
                for (Map<RunField, String> run = next(own, season, car.id());
                        run != null;
                        run = next(own, season, car.id())) {
                    run.put(RunField.HIGHEST, ++saved % 3 == 0 ? "9400" : "8300");
                    Set<List<Object>> before =
                            marks(season).map(ForecastTest::reason).collect(Collectors.toSet());
                    RunReading reading = own.read(run);
                    List<MarkEffect> shown = own.does(reading).orElseThrow().marks();
                    assertThat(own.save(run, "run").didWork())
                            .as(run.toString())
                            .isTrue();
                    Run written = reading.run().fact();
                    assertThat(shown.stream().map(mark -> whole(mark.change().after())))
                            .as(run.toString())
                            .containsExactlyInAnyOrderElementsOf(marks(season)
                                    .filter(mark -> holds(mark, written) || !before.contains(reason(mark)))
                                    .map(ForecastTest::whole)
                                    .toList());
                    shown.forEach(mark -> met.add(mark.after().state()));
                }
            }
        }
        assertThat(saved).isGreaterThan(20);
        assertThat(met).contains(MarkState.HELD, MarkState.OVER, MarkState.DUE, MarkState.WITHIN);
    }
    /** Days stay until the test goes on; in the evening all of their runs are past. */
    private static final class Clock implements Today {
        private LocalDate day = SATURDAY;

        @Override
        public LocalDate day() {
            return day;
        }

        @Override
        public Instant now() {
            return Instant.parse(day + "T20:00:00Z");
        }
    }

    private static List<LocalDate> daysLeft(Facts facts) {
        return facts.of(PlannedRun.class)
                .inForce()
                .map(planned -> planned.fact().day())
                .filter(day -> !day.isBefore(SATURDAY))
                .distinct()
                .sorted()
                .toList();
    }

    /** The next run of the day for a car, as the sheet comes up; null when none is left. */
    private static @Nullable Map<RunField, String> next(RunSheet sheet, Desk season, Id<Car> car) {
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(car));
        PlannedRun planned = Keys.planned(typed.getOrDefault(RunField.PLANNED, ""))
                .map(id -> season.view().facts().of(PlannedRun.class).get(id))
                .orElse(null);
        if (planned == null || !planned.day().equals(season.day())) {
            return null;
        }
        typed.put(RunField.RUNNING, planned.expected().minutes(0) + "");
        return sheet.read(typed).run() == null ? null : typed;
    }

    private static Stream<Mark> marks(Desk season) {
        return new Marks(season.view().ledger()).all().stream();
    }

    private static boolean holds(Mark mark, Run run) {
        return mark.state() == MarkState.HELD
                && (run.engine().equals(mark.engine()) || run.car().equals(mark.car()));
    }

    /** A run is read twice and gets its identity anew: what holds is known by what it was. */
    private static List<Object> reason(Mark mark) {
        Object reason = mark.reason() instanceof HeldBy by
                ? Arrays.asList(by.cause().fact(), by.rule(), by.since(), by.figure())
                : mark.reason();
        return Arrays.asList(reason, mark.part(), mark.engine(), mark.car());
    }

    private static List<Object> whole(Mark mark) {
        return Arrays.asList(
                reason(mark), mark.state(), mark.position(), mark.canWreck(), mark.runsOut(), mark.expected());
    }

    @Test
    void looking_writes_nothing() {
        long revision = book.view().facts().revision();
        does("28:20");
        assertThat(book.view().facts().revision()).isEqualTo(revision);
    }

    /** The rods were held by 9 340 rpm on 3 May and never signed clear; the springs were past their twelve hours. */
    @Test
    void what_is_held_comes_first_and_then_what_is_over() {
        List<MarkEffect> marks = does("28:20").marks();

        assertThat(marks.get(0).after().serial()).isEqualTo("RS-03");
        assertThat(marks.get(0).change().holds()).isFalse();
        MarkEffect worst = marks.stream()
                .filter(mark -> mark.after().state() != MarkState.HELD)
                .findFirst()
                .orElseThrow();
        assertThat(worst.after().serial()).isEqualTo("VS-03");
        assertThat(worst.change().before().state()).isEqualTo(MarkState.OVER);
        assertThat(worst.after().runsOut()).isNull();
    }

    /** Brute force: fitted, with no date printed on it, and no limit in force names it, its design or its kind. */
    @Test
    void parts_without_a_limit_are_counted() {
        var facts = book.view().facts();
        Run run = sheet.read(typed("28:20")).run().fact();
        Set<Id<Part>> fitted = facts
                .of(Fitment.class)
                .where(f -> (run.engine().equals(f.engine())
                                || (f.car() != null && f.car().equals(run.car())))
                        && !f.from().isAfter(run.start())
                        && (f.to() == null || f.to().isAfter(run.start())))
                .stream()
                .map(f -> f.fact().part())
                .collect(Collectors.toSet());
        long without = fitted.stream()
                .filter(part ->
                        facts
                                .of(Limit.class)
                                .where(limit -> limit.validTo() == null
                                        || !limit.validTo().isBefore(SATURDAY))
                                .stream()
                                .noneMatch(limit -> falls(limit.fact(), part)))
                .filter(part -> facts.of(Part.class).get(part).useBy() == null)
                .filter(part -> facts.of(ReadingLimit.class)
                        .where(limit -> limit.partKind() == kind(part))
                        .isEmpty())
                .count();

        List<RunDoes.Bare> bare = does("28:20").bare();
        assertThat(bare)
                .hasSize((int) without)
                .allSatisfy(
                        part -> assertThat(part.after().total() - part.before().total())
                                .as(part.mark())
                                .isEqualTo(28 * 60_000 + 20_000));
    }

    private boolean falls(Limit limit, Id<Part> part) {
        Part fact = book.view().facts().of(Part.class).get(part);
        return part.equals(limit.part())
                || fact.design().equals(limit.partDesign())
                || limit.part() == null && limit.partDesign() == null && kind(part) == limit.partKind();
    }

    private PartKind kind(Id<Part> part) {
        Part fact = book.view().facts().of(Part.class).get(part);
        return book.view().facts().of(PartDesign.class).get(fact.design()).kind();
    }

    @Test
    void nothing_is_foretold_while_the_run_cannot_be_told() {
        assertThat(sheet.does(sheet.read(typed("1h7x")))).isEmpty();
        Map<RunField, String> future = typed("28:20");
        future.put(RunField.DATE, "2027-01-01");
        assertThat(sheet.does(sheet.read(future))).isEmpty();
    }
}
