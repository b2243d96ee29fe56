package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.abuse.OddTexts;
import witnessmark.domain.Car;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.sheets.AddCar;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.OwnLogbook;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.SheetReading;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/** Odd texts typed into every field of every sheet of the Record menu, each field by itself. */
class OddTextOnSheetsTest {
    /** So many of the texts, by chance, go into each field; all of them in the long run. */
    private static final int OF_EACH_FIELD = Boolean.getBoolean("abuse.long") ? 1_000 : 12;

    @TempDir
    Path folder;

    private OwnLogbook own;

    @BeforeEach
    void begin() {
        own = new OwnLogbook(folder);
        own.save(new AddCar(), "name", "7").orThrow();
    }

    @AfterEach
    void end() {
        own.close();
    }

    @Test
    void no_text_in_any_field_is_more_than_a_text() {
        long seed = Long.getLong("seed", 20_260_708L);
        Random random = new Random(seed);
        List<String> wrong = new ArrayList<>();
        int read = 0;
        for (SheetList.Listed listed : SheetList.all(List::of)) {
            LogSheet sheet = listed.sheet();
            Map<SheetField, String> fresh = sheet.fresh(own.sheets.sight());
            for (SheetField field : sheet.fields()) {
                List<String> texts = new ArrayList<>(OddTexts.all());
                Collections.shuffle(texts, random);
                for (String text : texts.subList(0, Math.min(OF_EACH_FIELD, texts.size()))) {
                    Map<SheetField, String> typed = new HashMap<>(fresh);
                    typed.put(field, text);
                    String fault = read(sheet, typed);
                    read++;
                    if (!fault.isEmpty()) {
                        wrong.add(sheet.key() + ", " + field.key() + ", '" + text + "': " + fault);
                    }
                }
            }
        }
        System.out.println("R17 odd texts on sheets, seed " + seed + ": " + read + " read");
        assertThat(wrong).as("seed %d", seed).isEmpty();
        assertThat(read).isGreaterThan(10 * 200);
        assertThat(own.desk.logbook().verify()).isEmpty();
    }

    private String read(LogSheet sheet, Map<SheetField, String> typed) {
        try {
            SheetReading reading = own.sheets.read(sheet, typed);
            if (!reading.stops()) {
                own.sheets.check(reading);
            }
            return "";
        } catch (RuntimeException e) {
            return e.toString();
        }
    }

    @Test
    void what_is_saved_stands_there_as_it_was_typed() {
        int saved = 0;
        for (String text : OddTexts.all()) {
            Outcome<Written> outcome = own.save(new AddCar(), "name", text, "note", text);
            if (!outcome.didWork()) {
                assertThat(outcome.problems()).allMatch(Problem::stops);
                continue;
            }
            saved++;
            assertThat(own.desk.view().facts().of(Car.class).all()).as(text).anySatisfy(car -> {
                assertThat(car.fact().name()).isEqualTo(OddTexts.kept(text.strip()));
                assertThat(car.fact().note()).isEqualTo(OddTexts.kept(text.strip()));
            });
        }
        assertThat(saved).isGreaterThan(80);
        assertThat(own.desk.logbook().verify()).isEmpty();
    }
}
