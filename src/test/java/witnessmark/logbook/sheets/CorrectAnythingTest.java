package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Part;
import witnessmark.domain.Reading;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.exchange.CsvSeasonFolders;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;

/**
 * Every kind of entry but runs is opened on its sheet and corrected. Oracle: the image of the entry, column by column,
 * before and after.
 */
class CorrectAnythingTest {
    private static final List<LogSheet> FORMS = List.of(
            new SetLimit(),
            new WriteWork(),
            new WriteBuild(),
            new EnterCar(),
            new LogMissed(),
            new WriteReading(),
            new WriteDynoSheet(),
            new WriteHold(),
            new SetReadingLimit(),
            new SetSizeLimit(),
            new WriteFastener(),
            new WriteSpeedFigures(),
            new WriteLoggerFigures(),
            new WriteRevExponent(),
            new SetTrigger());

    /** Tests that write nothing share one logbook. */
    private static final String CHANGES_NOTHING = "changes-nothing";

    @TempDir
    Path folder;

    private Desk desk;
    private WriteSheet sheets;

    private static Desk unchanged;

    @BeforeAll
    static void openOnce(@TempDir Path once) {
        unchanged = opened(once);
    }

    @AfterAll
    static void closeOnce() {
        unchanged.logbook().close();
    }

    private static Desk opened(Path folder) {
        SampleBooks books = new SampleBooks(folder);
        Desk desk = books.open();
        books.tellAll(desk);
        return desk;
    }

    @BeforeEach
    void begin(TestInfo test) {
        desk = test.getTags().contains(CHANGES_NOTHING) ? unchanged : opened(folder);
        sheets = new WriteSheet(desk, SampleBooks.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));
    }

    @AfterEach
    void end() {
        if (desk != unchanged) {
            desk.logbook().close();
        }
    }

    static Stream<RecordType<?>> kinds() {
        return RecordTypes.all().stream().filter(type -> type.kind() != Run.class);
    }

    @Tag(CHANGES_NOTHING)
    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void opened_and_saved_as_it_stands_nothing_is_amended(RecordType<?> type) {
        for (Entry<?> entry : some(type.kind())) {
            WrittenSheet<?> written = open(entry);
            SheetReading reading = written.read(written.texts());
            assertThat(reading.problems().stream().filter(problem -> problem.stops()))
                    .as(type + " " + written.texts())
                    .isEmpty();
            assertThat(written.changed(written.texts())).isEmpty();
            assertThat(reading.entries()).isEmpty();
            if (entry.inForce()) {
                assertThat(written.save(written.texts(), "nothing").orThrow()).isEmpty();
            }
        }
    }

    @Tag(CHANGES_NOTHING)
    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void text_typed_into_one_field_amends_that_field_alone(RecordType<?> type) {
        for (Entry<?> entry : some(type.kind()).stream().limit(3).toList()) {
            WrittenSheet<?> written = open(entry);
            for (SheetField field : written.sheet().fields()) {
                boolean words = field.kind() == FieldKind.TEXT
                        && !field.equals(CorrectSheet.BECAUSE)
                        && written.read(written.texts()).asked().contains(field);
                String was = written.texts().getOrDefault(field, "");
                if (!words || was.matches("[-0-9.].*") || was.contains("/")) {
                    continue;
                }
                Map<SheetField, String> typed = new HashMap<>(written.texts());
                typed.put(field, was + " x");
                SheetReading reading = written.read(typed);
                if (reading.stops()) {
                    continue; // a figure, or words of a closed list
                }
                assertThat(reading.entries()).as(type + " " + field.key()).hasSize(1);
                assertThat(changedColumns(entry, reading.entries().get(0))).hasSizeLessThanOrEqualTo(1);
            }
        }
    }

    @Test
    void each_row_of_a_season_with_every_kind_of_record_reads_back_from_its_fields_as_it_is() {
        Path season = Path.of(System.getProperty("project.basedir", "."), "src/test/resources/exchange/small-season");
        List<Entry<?>> all = new CsvSeasonFolders().read(season, Facts.none()).orThrow();
        Facts facts = Facts.none().with(all);
        LocalDate late = LocalDate.of(2027, 6, 30);
        View view = new View(
                facts, late, Desk.zoneOf(facts), LifeLedger.of(facts, new AsOf(late, Desk.zoneOf(facts))), false);
        for (Entry<?> entry : all) {
            if (!(entry.fact() instanceof Run)) {
                readsBack(view, late, entry);
            }
        }
        assertThat(all.stream().map(entry -> entry.fact().getClass()).distinct().count())
                .isEqualTo(RecordTypes.all().size());
    }

    private static void readsBack(View view, LocalDate today, Entry<?> entry) {
        View without = new View(
                view.facts().with(List.of(struck(entry))), view.day(), view.zone(), view.ledger(), view.readOnly());
        SheetSight sight =
                new SheetSight(without, today, SheetUnits.metric(DayOrder.DAY_FIRST), "Ada", new StandingNow(without));
        LogSheet form = FORMS.stream()
                .filter(sheet -> sheet.written(entry.fact(), sight).isPresent())
                .findFirst()
                .orElseGet(() -> new RecordSheet<>(entry));
        SheetTyped texts = new SheetTyped(form.written(entry.fact(), sight).orElseThrow());
        SheetReading reading = ReadSheet.correct(form, texts, sight, SampleBooks.ids(), entry);
        assertThat(reading.problems().stream().filter(problem -> problem.stops()))
                .as(entry.fact().getClass() + " on " + form.key())
                .isEmpty();
        assertThat(reading.entries()).as(entry.fact().getClass().toString()).hasSize(1);
    }

    private static <F extends Fact> Entry<F> struck(Entry<F> entry) {
        return new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, "", entry.rev());
    }

    @Test
    void a_fitment_corrected_by_its_day_keeps_everything_else_and_the_reason_is_in_its_history() {
        Entry<Fitment> fitment =
                desk.view().facts().of(Fitment.class).where(f -> f.to() != null).get(0);
        WrittenSheet<?> written = open(fitment);
        SheetField why = field(written, "why");
        Map<SheetField, String> typed = new HashMap<>(written.texts());
        typed.put(why, "cracked at the root");

        written.save(typed, "correcting: wrong word").orThrow();

        Entry<Fitment> now =
                desk.view().facts().of(Fitment.class).find(fitment.id()).orElseThrow();
        assertThat(changedColumns(fitment, now)).containsExactly("why");
        assertThat(now.rev()).isEqualTo(fitment.rev() + 1);
        assertThat(written.isOutdated()).isTrue();
        assertThat(desk.undoable().orElseThrow().why()).isEqualTo("correcting: wrong word");
        desk.undo().orThrow();
        assertThat(desk.view()
                        .facts()
                        .of(Fitment.class)
                        .find(fitment.id())
                        .orElseThrow()
                        .fact())
                .isEqualTo(fitment.fact());
    }

    @Test
    void a_part_that_would_be_in_two_places_is_refused_beside_its_field() {
        List<Entry<Fitment>> there =
                desk.view().facts().of(Fitment.class).where(f -> f.to() == null && f.engine() != null);
        WrittenSheet<?> written = open(there.get(0));
        Map<SheetField, String> typed = new HashMap<>(written.texts());
        typed.put(field(written, "part"), there.get(1).fact().part().text());
        List<FoundProblem> found = written.check(written.read(typed));
        assertThat(found)
                .extracting(problem -> Objects.requireNonNull(problem.field()).key())
                .contains("part");
        assertThat(written.save(typed, "wrong").didWork()).isFalse();
    }

    @Test
    void a_name_that_another_has_is_refused() {
        List<Entry<Part>> parts = desk.view().facts().of(Part.class).where(p -> true);
        WrittenSheet<?> written = open(parts.get(0));
        Map<SheetField, String> typed = new HashMap<>(written.texts());
        typed.put(field(written, "mark"), parts.get(1).fact().mark());
        assertThat(written.save(typed, "wrong").didWork()).isFalse();
        typed.put(field(written, "mark"), "");
        assertThat(written.save(typed, "wrong").didWork()).isFalse();
    }

    @Test
    void an_entry_is_struck_out_with_a_reason_and_restored() {
        Entry<Reading> reading =
                desk.view().facts().of(Reading.class).where(r -> true).get(0);
        WrittenSheet<?> written = open(reading);
        assertThat(written.strikeOut(" ", "out").didWork()).isFalse();
        written.strikeOut("read on another engine", "out").orThrow();

        Entry<Reading> out =
                desk.view().facts().of(Reading.class).find(reading.id()).orElseThrow();
        assertThat(out.standing()).isEqualTo(Standing.STRUCK_OUT);
        WrittenSheet<?> struck = open(out);
        assertThat(struck.isStruckOut()).isTrue();
        struck.restore("back").orThrow();
        assertThat(desk.view()
                        .facts()
                        .of(Reading.class)
                        .find(reading.id())
                        .orElseThrow()
                        .inForce())
                .isTrue();
    }

    @Test
    void what_is_read_in_inches_is_kept_exactly_where_nobody_touched_it() {
        SheetUnits inches = new SheetUnits(
                witnessmark.quantity.typed.LengthUnit.INCH,
                witnessmark.quantity.typed.PressureUnit.PSI,
                witnessmark.quantity.typed.TemperatureUnit.FAHRENHEIT,
                witnessmark.quantity.typed.DistanceUnit.MILE,
                DayOrder.DAY_FIRST);
        WriteSheet imperial = new WriteSheet(desk, SampleBooks.ids(), inches);
        for (RecordType<?> type : kinds().toList()) {
            for (Entry<?> entry : some(type.kind())) {
                WrittenSheet<?> written = imperial.open(entry, FORMS, LocalDate::toString);
                assertThat(written.read(written.texts()).entries())
                        .as(type + " " + written.texts())
                        .isEmpty();
            }
        }
    }

    private static TreeSet<String> changedColumns(Entry<?> before, Entry<?> after) {
        Map<String, Object> was = new HashMap<>(EntryImage.of(before));
        TreeSet<String> changed = new TreeSet<>();
        EntryImage.of(after).forEach((column, value) -> {
            if (!Objects.equals(was.get(column), value)) {
                changed.add(column);
            }
        });
        return changed;
    }

    private static SheetField field(WrittenSheet<?> written, String key) {
        return OwnLogbook.field(written.sheet(), key);
    }

    private WrittenSheet<?> open(Entry<?> entry) {
        return sheets.open(entry, FORMS, LocalDate::toString);
    }

    private List<Entry<?>> some(Class<? extends Fact> kind) {
        List<? extends Entry<?>> all = desk.view().facts().of(kind).all();
        List<Entry<?>> some = new ArrayList<>();
        int step = Math.max(1, all.size() / 25);
        for (int i = 0; i < all.size(); i += step) {
            some.add(all.get(i));
        }
        return some;
    }
}
