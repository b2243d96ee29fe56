package witnessmark.desktop.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import witnessmark.logbook.run.Choice;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.logbook.run.SampleBook;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** What was typed comes back after the program was gone. */
class RunSheetDraftTest {
    private final Texts texts = Texts.in(Locale.UK);
    private final RunWords words = new RunWords(texts, new Measures(texts, Units.METRIC));
    private RunSheet sheet = sheet(SampleBook.OPENING);
    private RunSheetModel model = opened();

    private static RunSheet sheet(LocalDate day) {
        return new RunSheet(SampleBook.on(day), SampleBook.ids(), SampleBook.UNITS);
    }

    private RunSheetModel opened() {
        RunSheetModel opened = new RunSheetModel(sheet);
        opened.fill(sheet.fresh(null));
        return opened;
    }

    private void put(RunField field, String text) {
        model.type(field, text);
        model.leave(field);
    }

    @Test
    void a_draft_brings_back_every_text_even_one_that_cannot_be_read() {
        sheet = sheet(LocalDate.parse("2026-07-25"));
        model = opened();
        put(RunField.RUNNING, "1h7x");
        put(RunField.REMARKS, "Plugs clean.\nGears fine.");
        put(
                RunField.DRIVER,
                model.choices(RunField.DRIVER).stream()
                        .filter(choice -> words.choice(choice).equals("Driver 2"))
                        .map(Choice::key)
                        .findFirst()
                        .orElseThrow());
        Map<RunField, String> before = model.texts();
        Map<String, String> kept = model.draft(RunField.LAPS);

        RunSheetModel next = new RunSheetModel(sheet);
        assertThat(next.restore(kept, sheet.fresh(null))).contains(RunField.LAPS);

        assertThat(next.texts()).isEqualTo(before);
        assertThat(next.isDirty()).isTrue();
        assertThat(next.line(RunField.RUNNING).level()).isEqualTo(FieldLine.Level.STOP);
        next.type(RunField.PLANNED, model.choices(RunField.PLANNED).get(1).key());
        assertThat(next.text(RunField.DRIVER)).isEqualTo(before.get(RunField.DRIVER));
    }

    @Test
    void that_something_broke_is_kept_by_a_draft_put_back_with_it_and_gone_with_the_run() {
        model = opened();
        assertThat(model.isDirty()).isFalse();
        model.broke(true);
        assertThat(model.isDirty()).isTrue();
        RunSheetModel next = new RunSheetModel(sheet);
        next.restore(model.draft(null), sheet.fresh(null));
        assertThat(next.broke()).isTrue();

        next.clear(sheet.fresh(null));
        assertThat(next.broke()).isFalse();
        next.putBack();
        assertThat(next.broke()).isTrue();
        next.moveOn(next.texts(), sheet.fresh(null));
        assertThat(next.broke()).isFalse();
    }

    @Test
    void keys_pressed_before_the_draft_was_read_are_not_lost() {
        put(RunField.RUNNING, "31");
        Map<String, String> kept = model.draft(null);
        RunSheetModel next = new RunSheetModel(sheet);
        next.type(RunField.LAPS, "14");

        next.restore(kept, sheet.fresh(null));

        assertThat(next.text(RunField.RUNNING)).isEqualTo("31");
        assertThat(next.text(RunField.LAPS)).isEqualTo("14");
    }

    @Test
    void a_draft_that_names_what_is_gone_still_opens() {
        RunSheetModel next = new RunSheetModel(sheet);
        next.restore(
                Map.of(
                        "event", "019f0000-0000-7000-8000-000000000000",
                        "planned", "planned:not an id",
                        "car", "car:",
                        "known", "by heart",
                        "running", "31",
                        "typed by hand", "event planned car known running"),
                sheet.fresh(null));

        assertThat(next.text(RunField.RUNNING)).isEqualTo("31");
        assertThat(next.text(RunField.CAR)).isEqualTo(sheet.fresh(null).get(RunField.CAR));
        assertThat(next.text(RunField.EVENT)).isEmpty();
        assertThat(next.ask()).isTrue();
    }
}
