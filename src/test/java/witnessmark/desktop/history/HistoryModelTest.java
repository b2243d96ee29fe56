package witnessmark.desktop.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.FigureUnits;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.Desk;
import witnessmark.logbook.engines.Amended;
import witnessmark.logbook.engines.SeeHistory;
import witnessmark.logbook.run.CorrectRun;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.SampleBook;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** A history says what was changed in the words and units of the fields, whatever the kind of entry. */
class HistoryModelTest {
    private static final Pattern INSIDE = Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}|[A-Za-z]+\\[|[{}=;_]");
    private static final Facts SAMPLE = SampleBook.facts();

    private final Texts texts = Texts.in(Locale.UK);
    private final HistoryModel model = new HistoryModel(texts, new Measures(texts, Units.METRIC));

    static List<RecordType<?>> kinds() {
        return RecordTypes.all();
    }

    /** Emptying and filling each field of each entry of the sample: no id, code or name of a class is to be seen. */
    @ParameterizedTest
    @MethodSource("kinds")
    void every_value_of_the_sample_reads_as_words(RecordType<?> kind) {
        for (Entry<? extends Fact> entry : SAMPLE.of(kind.kind()).all()) {
            List<Amended.Field> fields = new ArrayList<>();
            for (Component component : kind.components()) {
                Object value = component.value(entry.fact());
                if (value != null
                        && !(value instanceof Id<?>)
                        && !component.name().equals("asTyped")) {
                    fields.add(new Amended.Field(component.name(), null, value));
                }
            }
            fields.add(new Amended.Field(EntryImage.STANDING, Standing.IN_FORCE, Standing.STRUCK_OUT));
            Amended amended = new Amended(Instant.EPOCH, "Anna", "putting it right", false, fields);
            String what = model.lines(entry, List.of(amended), SampleBook.LONDON)
                    .get(0)
                    .what();
            assertThat(what).contains("Standing: in force → struck out").doesNotContain("!");
            assertThat(withoutTypedText(what, entry)).doesNotContainPattern(INSIDE);
        }
    }

    /** What people typed themselves may hold anything. */
    private static String withoutTypedText(String what, Entry<?> entry) {
        String left = what;
        for (Component component : RecordTypes.of(entry.fact().getClass()).components()) {
            if (component.value(entry.fact()) instanceof String typed && !typed.isEmpty()) {
                left = left.replace(typed, "");
            }
        }
        return left;
    }

    @Test
    void a_corrected_run_says_the_times_and_the_place_as_they_were_typed() {
        Desk book = SampleBook.on(SampleBook.OPENING);
        Entry<Run> race2 = race2(book);
        CorrectRun correct = new CorrectRun(book, SampleBook.UNITS);
        var run = correct.open(race2.id()).orElseThrow();
        var fields = new java.util.EnumMap<>(run.texts());
        fields.put(RunField.RUNNING, "26 min 30 s");
        fields.put(RunField.LAPS, "11");
        assertThat(run.save(fields, "correcting Race 2").didWork()).isTrue();

        Entry<Run> now = book.view().facts().of(Run.class).find(race2.id()).orElseThrow();
        List<Amended> history = SeeHistory.of(book.logbook(), now);
        HistoryLine line = model.lines(now, history, SampleBook.LONDON).get(0);
        assertThat(line.what())
                .contains("Running time: 27 min 42 s → 26 min 30 s")
                .contains("Laps: " + Objects.requireNonNull(race2.fact().laps()) + " → 11")
                .doesNotContain("As typed");
        assertThat(line.why()).isEqualTo("correcting Race 2");
    }

    /** The figures as the tables of the sample have them in plain units. */
    @ParameterizedTest(name = "{0} of {1}: {2}")
    @CsvSource({
        "LIMITS, renew valve springs, amount, 12 h",
        "LIMITS, renew damper, amount, 60 months",
        "LIMITS, renew head gasket, amount, 1 use",
        "READING_LIMITS, spring force, fallAtMost, 8 %",
        "READING_LIMITS, exhaust lash, changeAtMost, 0.03 mm"
    })
    void an_amount_reads_with_the_unit_its_entry_says(String table, String name, String field, String words) {
        RecordType<?> type = table.equals("LIMITS") ? RecordTypes.of(Limit.class) : RecordTypes.of(ReadingLimit.class);
        Entry<?> entry = SAMPLE.of(type.kind()).all().stream()
                .filter(one -> name.equals(type.components().get(0).value(one.fact())))
                .findFirst()
                .orElseThrow();
        Component component = type.components().stream()
                .filter(one -> one.name().equals(field))
                .findFirst()
                .orElseThrow();
        Object value = FigureUnits.withUnit(type, component, each -> each.value(entry.fact()), SAMPLE);
        Amended amended = new Amended(Instant.EPOCH, "Anna", "", false, List.of(new Amended.Field(field, null, value)));
        String what =
                model.lines(entry, List.of(amended), SampleBook.LONDON).get(0).what();
        assertThat(what.replace('\u00a0', ' ').replace('\u202f', ' ')).endsWith("→ " + words);
    }

    @Test
    void struck_out_the_reason_stands_as_why_and_not_among_the_changes() {
        Amended amended = new Amended(
                Instant.EPOCH,
                "Anna",
                "striking out Race 2",
                false,
                List.of(
                        new Amended.Field(
                                EntryImage.STANDING, Standing.IN_FORCE, Coded.of(Standing.class, "struck out")),
                        new Amended.Field(EntryImage.STRUCK_BECAUSE, null, "wrong car")));
        HistoryLine line = model.lines(race2(SampleBook.on(SampleBook.OPENING)), List.of(amended), SampleBook.LONDON)
                .get(0);
        assertThat(line.what()).isEqualTo("Standing: in force → struck out");
        assertThat(line.why()).isEqualTo("wrong car");
    }

    private static Entry<Run> race2(Desk book) {
        return book.view().facts().of(Run.class).all().stream()
                .filter(run -> run.fact().name().equals("Race 2"))
                .filter(run -> run.fact().start().day().toString().equals("2026-07-05"))
                .filter(run -> run.fact().running().millis() == 1_662_000)
                .findFirst()
                .orElseThrow();
    }
}
