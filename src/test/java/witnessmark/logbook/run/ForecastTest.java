package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Run;
import witnessmark.domain.Zone;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.MarkState;
import witnessmark.logbook.Desk;
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
        for (LimitEffect limit : does.limits()) {
            LimitUse shown = limit.effect().after();
            Id<Part> part = shown.part();
            if (part != null && shown.since() == null) {
                assertThat(book.view().ledger().life(part, shown.used().counter()))
                        .as(limit.mark())
                        .isEqualTo(shown.used());
            }
        }
    }

    @Test
    void looking_writes_nothing() {
        long revision = book.view().facts().revision();
        does("28:20");
        assertThat(book.view().facts().revision()).isEqualTo(revision);
    }

    /** The springs were 0.9 h over on 25 July, so they come first; twelve hours were theirs. */
    @Test
    void what_is_over_comes_first() {
        LimitEffect worst = does("28:20").limits().get(0);

        assertThat(worst.mark()).isEqualTo("VS-03");
        assertThat(worst.effect().before().state()).isEqualTo(MarkState.OVER);
        assertThat(worst.due()).isNull();
    }

    /**
     * Oil and filter are changed after 3.5 h and were fresh. Round 6 expects 28, 26, 22, 30 and 28 minutes, so that
     * this run and the rest of the event take 2.2 h, and the limit falls in round 7: timetables of the sample.
     */
    @Test
    void a_limit_is_due_by_the_coming_run_that_uses_it_up() {
        RunDoes does = does("28:20");
        LimitEffect oil = does.limits().stream()
                .filter(limit -> String.valueOf(limit.mark()).startsWith("OF-"))
                .findFirst()
                .orElseThrow();

        long left = oil.effect().after().left();
        Due expected = null;
        for (var planned : Coming.after(
                book.view().facts(), sheet.read(typed("28:20")).run().fact())) {
            left -= planned.expected().millis();
            if (left <= 0) {
                expected = new Due(planned.name(), Coming.event(book.view().facts(), planned));
                break;
            }
        }
        assertThat(oil.due()).isEqualTo(expected);
    }

    /** Brute force: what is fitted and no limit in force names it, its design or its kind. */
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
                .count();

        assertThat(does("28:20").withoutLimit()).isEqualTo((int) without);
    }

    private boolean falls(Limit limit, Id<Part> part) {
        Part fact = book.view().facts().of(Part.class).get(part);
        PartDesign design = book.view().facts().of(PartDesign.class).get(fact.design());
        return part.equals(limit.part())
                || fact.design().equals(limit.partDesign())
                || limit.part() == null && limit.partDesign() == null && design.kind() == limit.partKind();
    }

    @Test
    void nothing_is_foretold_while_the_run_cannot_be_told() {
        assertThat(sheet.does(sheet.read(typed("1h7x")))).isEmpty();
        Map<RunField, String> future = typed("28:20");
        future.put(RunField.DATE, "2027-01-01");
        assertThat(sheet.does(sheet.read(future))).isEmpty();
    }
}
