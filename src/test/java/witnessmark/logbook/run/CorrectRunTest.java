package witnessmark.logbook.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.StartKnown;
import witnessmark.domain.image.EntryImage;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.DecideSameRun;
import witnessmark.logbook.Desk;
import witnessmark.logbook.StrikeOut;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.DistanceUnit;
import witnessmark.quantity.typed.PressureUnit;
import witnessmark.quantity.typed.TemperatureUnit;
import witnessmark.quantity.typed.VolumeUnit;

/** Written runs opened on the sheet and put right, on the sample season. */
class CorrectRunTest {
    private static final LocalDate SATURDAY = LocalDate.parse("2026-07-25");
    private static final FieldUnits IMPERIAL = new FieldUnits(
            PressureUnit.PSI, TemperatureUnit.FAHRENHEIT, VolumeUnit.US_QUART, DistanceUnit.MILE, DayOrder.DAY_FIRST);

    private final MemoryLogbook logbook = new MemoryLogbook(SampleBook.facts());
    private final Desk book = new Desk(logbook, new SampleBook.Day(SATURDAY), "TE");

    private Facts facts() {
        return book.view().facts();
    }

    private WrittenRun open(Id<Run> id) {
        return new CorrectRun(book, SampleBook.UNITS).open(id).orElseThrow();
    }

    private Id<Run> run(String engine, String day, String name) {
        Id<Engine> of = facts().of(Engine.class).named(engine).orElseThrow().id();
        return facts().of(Run.class).all().stream()
                .filter(run -> run.fact().engine().equals(of)
                        && run.fact().name().equals(name)
                        && run.fact().start().day().toString().equals(day))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private Id<Run> race2() {
        return run("K03", "2026-07-05", "Race 2");
    }

    private static Map<RunField, String> with(WrittenRun run, RunField field, String text) {
        Map<RunField, String> typed = new EnumMap<>(run.texts());
        typed.put(field, text);
        return typed;
    }

    private Entry<Run> corrected(Id<Run> id, RunField field, String text) {
        WrittenRun open = open(id);
        assertThat(open.save(with(open, field, text), "correcting").orThrow()).isPresent();
        return facts().of(Run.class).find(id).orElseThrow();
    }

    /** Columns in which two states of a record differ. */
    private static Set<String> columns(Entry<Run> before, Entry<Run> after) {
        Map<String, @Nullable Object> was = EntryImage.of(before);
        Map<String, @Nullable Object> is = EntryImage.of(after);
        Set<String> changed = new TreeSet<>();
        is.forEach((column, value) -> {
            if (!Objects.equals(value, was.get(column))) {
                changed.add(column);
            }
        });
        return changed;
    }

    static Stream<FieldUnits> units() {
        return Stream.of(SampleBook.UNITS, IMPERIAL);
    }

    @ParameterizedTest
    @MethodSource("units")
    void a_run_opened_and_left_as_it_is_writes_nothing(FieldUnits units) {
        for (Entry<Run> entry : facts().of(Run.class).where(run -> true)) {
            WrittenRun open = new CorrectRun(book, units).open(entry.id()).orElseThrow();
            RunReading reading = open.read(open.texts());

            assertThat(reading.run().fact()).isEqualTo(entry.fact());
            assertThat(reading.stopped()).isEmpty();
            assertThat(open.changed(open.texts())).isEmpty();
            assertThat(open.save(open.texts(), "nothing").orThrow()).isEmpty();
        }
        assertThat(logbook.history()).isEmpty();
    }

    /** What stands in a field reads back as the value, whatever unit the field has. */
    @ParameterizedTest
    @MethodSource("units")
    void what_stands_in_a_field_reads_as_what_is_written(FieldUnits units) {
        Figures figures = new Figures(units);
        for (Entry<Run> entry : facts().of(Run.class).all()) {
            Map<RunField, String> texts =
                    new CorrectRun(book, units).open(entry.id()).orElseThrow().texts();
            for (Figure<?> figure : figures.all()) {
                Object value = figure.of().apply(entry.fact());
                String text = texts.get(figure.field());
                assertThat(text.isEmpty()).isEqualTo(value == null);
                if (value != null) {
                    assertThat(figure.parse().apply(text).only())
                            .hasValueSatisfying(
                                    read -> assertThat((Object) read).isEqualTo(value));
                }
            }
        }
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "LAPS, 11, as_typed laps",
        "RUNNING, 21 min, as_typed queried running_ms",
        "OVER_REVS, 2, as_typed over_revs queried",
        "WATER, 91, as_typed water_highest_mk",
        "OIL_ADDED, '0,1', as_typed oil_added_ul",
        "RACE_STARTS, 2, race_starts",
        "HEAT_CYCLES, 2, heat_cycles",
        "KNOWN, timed, known_by",
        "DRIVER_ASKED, no, driver_asked",
        "REMARKS, Plugs clean., remarks",
        "OUT_AT, 15:01, start_utc_ms start_known",
        "DATE, 4 Jul 2026, start_utc_ms",
    })
    void one_field_corrected_amends_its_column_and_what_was_typed(RunField field, String text, String columns) {
        Id<Run> id = race2();
        Entry<Run> before = facts().of(Run.class).find(id).orElseThrow();

        Entry<Run> after = corrected(id, field, text);

        assertThat(columns(before, after)).containsExactlyInAnyOrder(columns.split(" "));
        assertThat(after.rev()).isEqualTo(before.rev() + 1);
        assertThat(open(id).read(open(id).texts()).run().fact()).isEqualTo(after.fact());
    }

    /** Against a ledger of the other facts with the run logged so at once: every life of every counter. */
    @ParameterizedTest(name = "seed {0}")
    @CsvSource({"11", "12", "13", "14"})
    void lives_are_as_if_the_run_had_been_logged_so(long seed) {
        Random random = new Random(seed);
        List<Entry<Run>> runs = facts().of(Run.class).where(run -> true);
        int done = 0;
        for (int i = 0; i < 12; i++) {
            Id<Run> id = runs.get(random.nextInt(runs.size())).id();
            WrittenRun open = open(id);
            Map<RunField, String> typed = mangled(open, random);
            if (!open.save(typed, "correcting").didWork()) {
                continue;
            }
            done++;
            assertSameLives(
                    book.view().ledger(),
                    LifeLedger.of(loggedAtOnce(id), book.view().ledger().asOf()));
        }
        assertThat(done).isGreaterThan(3);
    }

    private static Map<RunField, String> mangled(WrittenRun open, Random random) {
        return switch (random.nextInt(5)) {
            case 0 -> with(open, RunField.RUNNING, 5 + random.nextInt(25) + " min");
            case 1 -> with(open, RunField.LAPS, random.nextBoolean() ? "" : Integer.toString(random.nextInt(30)));
            case 2 -> with(open, RunField.OVER_REVS, Integer.toString(random.nextInt(3)));
            case 3 -> with(open, RunField.OUT_AT, String.format("%02d:%02d", 6 + random.nextInt(16), 7));
            default ->
                with(
                        open,
                        RunField.DATE,
                        (1 + random.nextInt(27)) + " "
                                + List.of("Apr", "May", "Jun").get(random.nextInt(3)) + " 2026");
        };
    }

    /** The facts as if the run had been written once, as it stands now. */
    private Facts loggedAtOnce(Id<Run> id) {
        Facts again = Facts.none();
        for (var type : witnessmark.domain.image.RecordTypes.all()) {
            again = again.with(facts().of(type.kind()).all().stream()
                    .filter(entry -> !entry.id().value().equals(id.value()))
                    .toList());
        }
        Entry<Run> now = facts().of(Run.class).find(id).orElseThrow();
        return again.with(List.of(new Entry<>(now.id(), now.fact(), Standing.IN_FORCE, null, 1)));
    }

    private void assertSameLives(LifeLedger one, LifeLedger other) {
        for (Counter counter : Counter.fedByRuns()) {
            for (Entry<Engine> engine : facts().of(Engine.class).all()) {
                assertThat(one.engineLife(engine.id(), counter)).isEqualTo(other.engineLife(engine.id(), counter));
            }
            for (Entry<Part> part : facts().of(Part.class).all()) {
                assertThat(one.life(part.id(), counter)).isEqualTo(other.life(part.id(), counter));
            }
        }
    }

    @Test
    void a_correction_can_be_taken_back_and_done_again() {
        Id<Run> id = race2();
        Run before = facts().of(Run.class).get(id);
        Run after = corrected(id, RunField.RUNNING, "25").fact();

        assertThat(book.undo().didWork()).isTrue();
        assertThat(facts().of(Run.class).get(id)).isEqualTo(before);
        assertThat(book.redo().didWork()).isTrue();
        assertThat(facts().of(Run.class).get(id)).isEqualTo(after);
    }

    @Test
    void what_was_typed_stands_in_the_fields_again() {
        Id<Run> id = logged();

        Map<RunField, String> texts = open(id).texts();
        assertThat(texts)
                .containsEntry(RunField.RUNNING, "28'20\"")
                .containsEntry(RunField.WATER, "205F")
                .containsEntry(RunField.OIL_ADDED, "0,2")
                .containsEntry(RunField.OUT_AT, "09:00")
                .containsEntry(RunField.DATE, "Sat 25 Jul 2026");
        assertThat(texts).containsEntry(RunField.LAPS, "").containsEntry(RunField.REMARKS, "");
    }

    /** A bare figure was typed in the unit the field had then: in another it would mean something else. */
    @Test
    void a_bare_figure_is_shown_in_the_unit_the_field_has_now() {
        Map<RunField, String> texts =
                new CorrectRun(book, IMPERIAL).open(logged()).orElseThrow().texts();

        assertThat(texts).containsEntry(RunField.WATER, "205F");
        // 0.2 L = 0.2 / 0.946352946 US qt: NIST Handbook 44, appendix C
        assertThat(texts.get(RunField.OIL_ADDED)).startsWith("0.2113");
    }

    private Id<Run> logged() {
        RunSheet sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(null));
        typed.put(RunField.RUNNING, "28'20\"");
        typed.put(RunField.WATER, "205F");
        typed.put(RunField.OIL_ADDED, "0,2");
        Written written = sheet.save(typed, "run").orThrow();
        return new Id<>(written.amendments().get(0).record());
    }

    @Test
    void other_texts_stay_as_they_were_typed() {
        Id<Run> id = logged();

        Run run = corrected(id, RunField.LAPS, "15").fact();
        assertThat(run.asTyped().lines()).containsExactly("running=28'20\"", "laps=15", "water=205F", "oil_added=0,2");

        Run emptied = corrected(id, RunField.WATER, "").fact();
        assertThat(emptied.waterHighest()).isNull();
        assertThat(emptied.asTyped().lines()).containsExactly("running=28'20\"", "laps=15", "oil_added=0,2");
    }

    /** K03's water reads about 90 °C on every run (the sample season); 125 is unlike it, and 91 is not. */
    @Test
    void what_was_overruled_is_judged_anew() {
        Id<Run> id = race2();

        assertThat(corrected(id, RunField.WATER, "125").fact().queried()).isEqualTo("water");
        assertThat(corrected(id, RunField.WATER, "91").fact().queried()).isEmpty();
    }

    @Test
    void a_run_does_not_stand_in_its_own_way() {
        WrittenRun open = open(race2());

        RunReading reading = open.read(with(open, RunField.OUT_AT, "15:05"));

        assertThat(reading.problems()).isEmpty();
        assertThat(reading.stops()).isFalse();
    }

    @Test
    void it_cannot_be_moved_into_another_run() {
        WrittenRun open = open(race2());
        Map<RunField, String> typed = with(open, RunField.OUT_AT, "11:03");

        assertThat(open.read(typed).problems()).extracting(Problem::kind).contains(ProblemKind.RUNS_OVERLAP);
        assertThat(open.save(typed, "moving").didWork()).isFalse();
    }

    @Test
    void what_it_does_is_told_against_a_logbook_without_it() {
        WrittenRun open = open(race2());
        long written = open.entry().fact().running().millis();

        RunDoes does = open.does(open.read(with(open, RunField.RUNNING, "30"))).orElseThrow();

        assertThat(does.after().total() - does.before().total()).isEqualTo(30 * 60_000L);
        assertThat(does.asWritten().total() - does.before().total()).isEqualTo(written);
    }

    @Test
    void a_run_changed_meanwhile_is_not_written_over() {
        WrittenRun open = open(race2());
        corrected(race2(), RunField.LAPS, "9");

        assertThat(open.isOutdated()).isTrue();
        assertThat(open.save(with(open, RunField.LAPS, "13"), "late").problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.CHANGED_MEANWHILE);
        assertThat(facts().of(Run.class).get(race2()).laps()).isEqualTo(9);
    }

    @Test
    void while_an_earlier_day_is_looked_at_nothing_is_written() {
        WrittenRun open = open(race2());
        book.lookAsOf(LocalDate.parse("2026-07-06"));

        assertThat(open.save(with(open, RunField.LAPS, "13"), "then").problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.AS_OF_EARLIER_DAY);
    }

    @Test
    void a_run_struck_out_is_seen_and_not_corrected() {
        Id<Run> id = race2();
        new StrikeOut(book)
                .strikeOut(open(id).entry(), "typed twice", "striking out")
                .orThrow();
        WrittenRun open = open(id);

        assertThat(open.texts()).containsEntry(RunField.OUT_AT, "15:00");
        assertThat(open.does(open.read(open.texts()))).isEmpty();
        assertThatThrownBy(() -> open.save(with(open, RunField.LAPS, "13"), "never"))
                .isInstanceOf(IllegalStateException.class);
    }

    /** Two people logged one run. Until somebody says so it counts once; a time put right may settle it. */
    @Test
    void a_run_that_is_no_longer_like_another_counts() {
        logged();
        Id<Run> again = loggedAgain();
        assertThat(open(again).entry().fact().perhapsSame()).isNotNull();

        assertThat(corrected(again, RunField.LAPS, "14").fact().perhapsSame()).isNotNull();
        assertThat(corrected(again, RunField.OUT_AT, "10:00").fact().perhapsSame())
                .isNull();
        assertThat(corrected(again, RunField.OUT_AT, "09:00").fact().perhapsSame())
                .isNotNull();

        new DecideSameRun(book).another(open(again).entry(), "another").orThrow();
        assertThat(corrected(again, RunField.LAPS, "13").fact().perhapsSame())
                .as("what somebody settled stays settled")
                .isNull();
    }

    /** The same run as {@link #logged()}, not as one of the timetable. */
    private Id<Run> loggedAgain() {
        RunSheet sheet = new RunSheet(book, SampleBook.ids(), SampleBook.UNITS);
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(null));
        typed.put(RunField.PLANNED, "kind:practice");
        typed.put(RunField.OUT_AT, "09:00");
        typed.put(RunField.RUNNING, "28 min 20 s");
        Written written = sheet.save(typed, "run").orThrow();
        return new Id<>(written.amendments().get(0).record());
    }

    @Test
    void a_run_moved_came_back_as_much_later() {
        Id<Run> id = run("K06", "2026-07-05", "Race 2");
        Run before = facts().of(Run.class).get(id);
        Moment in = Objects.requireNonNull(before.in());

        Run after = corrected(id, RunField.OUT_AT, "15:10").fact();

        assertThat(after.in()).isEqualTo(in.plus(new RunningTime(600_000)));
        assertThat(after.startKnown()).isEqualTo(StartKnown.TYPED);
    }

    @Test
    void a_run_of_the_timetable_does_not_go_with_it_to_another_event() {
        WrittenRun open = open(race2());
        Id<Event> other = facts().of(Event.class).all().get(0).id();
        Map<RunField, String> typed = with(open, RunField.EVENT, other.text());

        assertThat(open.follows(RunField.EVENT, typed)).containsExactly(Map.entry(RunField.PLANNED, "kind:race"));
        typed.putAll(open.follows(RunField.EVENT, typed));
        Run run = open.read(typed).run().fact();
        assertThat(run.planned()).isNull();
        assertThat(run.name()).isEqualTo("Race");
        assertThat(run.start()).isEqualTo(open.entry().fact().start());
    }
}
