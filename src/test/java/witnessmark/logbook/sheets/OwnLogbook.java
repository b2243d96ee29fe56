package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.StartLogbook;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.FixedToday;
import witnessmark.sample.SampleBooks;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;

/** A team's own logbook in a test's folder, on 10 March 2026 in London, written only by sheets. */
public final class OwnLogbook implements AutoCloseable {
    public static final LocalDate TODAY = LocalDate.of(2026, 3, 10);
    private static final long START = 1_767_225_600_000L; // 2026-01-01T00:00Z

    public final Desk desk;
    public final Ids ids = SampleBooks.ids();
    public final WriteSheet sheets;
    private final Logbook book;

    public OwnLogbook(Path folder) {
        AtomicLong clock = new AtomicLong(START);
        SqliteLogbookFiles files = new SqliteLogbookFiles(
                folder.resolve("data"), () -> clock.addAndGet(1_000), () -> "bench", new Holder("bench", "Ada"));
        book = new StartLogbook(files, ids)
                .start(folder.resolve("team.witness"), "Harrow", ZoneId.of("Europe/London"), "GBP", "Ada", "starting")
                .orThrow();
        desk = new Desk(book, new FixedToday(TODAY), "Ada");
        sheets = new WriteSheet(desk, ids, SheetUnits.metric(DayOrder.DAY_FIRST));
    }

    /** A sheet as it comes, with these fields filled in by key or, in a choice, by what it shows. */
    public Map<SheetField, String> filled(LogSheet sheet, String... fields) {
        Map<SheetField, String> typed = new HashMap<>(sheet.fresh(sheets.sight()));
        for (int i = 0; i < fields.length; i += 2) {
            SheetField field = field(sheet, fields[i]);
            typed.put(field, key(sheet, field, fields[i + 1], typed));
        }
        return typed;
    }

    public Outcome<Written> save(LogSheet sheet, String... fields) {
        return sheets.save(sheet, filled(sheet, fields), "by hand");
    }

    static SheetField field(LogSheet sheet, String key) {
        return sheet.fields().stream()
                .filter(field -> field.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no field " + key + " on " + sheet.key()));
    }

    private String key(LogSheet sheet, SheetField field, String wanted, Map<SheetField, String> typed) {
        if (field.kind() != FieldKind.CHOICE) {
            return wanted;
        }
        return sheet.choices(field, new SheetTyped(typed), sheets.sight()).stream()
                .filter(choice -> choice.key().equals(wanted) || names(choice).contains(wanted))
                .map(Choice::key)
                .findFirst()
                .orElse(wanted);
    }

    private static List<String> names(Choice choice) {
        return choice.facts().stream().flatMap(OwnLogbook::names).toList();
    }

    private static Stream<String> names(Object fact) {
        if (fact instanceof SheetNote phrase) {
            return phrase.facts().stream().flatMap(OwnLogbook::names);
        }
        return Stream.of(fact instanceof Fact known ? String.valueOf(known.knownAs()) : fact.toString());
    }

    /** Checks that a sheet is not saved: for this problem, said beside this field, and nothing is written. */
    public void refuses(LogSheet sheet, ProblemKind kind, String field, String... typed) {
        long before = desk.view().facts().revision();
        Map<SheetField, String> filled = filled(sheet, typed);
        SheetReading reading = sheets.read(sheet, filled);
        Problem inField = reading.of(field(sheet, field)).problem();
        if (inField == null) {
            assertThat(sheets.check(reading))
                    .extracting(found -> found.problem().kind() + " beside "
                            + (found.field() == null ? "none" : found.field().key()))
                    .contains(kind + " beside " + field);
        } else {
            assertThat(inField.kind()).isEqualTo(kind);
        }
        Outcome<Written> outcome = sheets.save(sheet, filled, "by hand");
        assertThat(outcome.didWork()).isFalse();
        assertThat(outcome.problems()).extracting(Problem::kind).contains(kind);
        assertThat(desk.view().facts().revision()).isEqualTo(before);
    }

    /** The one entry of a kind known by this word. */
    public <F extends Fact> Entry<F> the(Class<F> kind, String word) {
        return desk.view().facts().of(kind).named(word).orElseThrow();
    }

    /** The one entry of a kind. */
    public <F extends Fact> F only(Class<F> kind) {
        List<Entry<F>> all = desk.view().facts().of(kind).inForce().toList();
        assertThat(all).hasSize(1);
        return all.get(0).fact();
    }

    /** Writes something for which there is no sheet. */
    public <F extends Fact> void write(F fact) {
        desk.write("by hand", List.of(new Entry<>(ids.<F>next(), fact, Standing.IN_FORCE, null, 1)))
                .orThrow();
    }

    @Override
    public void close() {
        book.close();
    }
}
