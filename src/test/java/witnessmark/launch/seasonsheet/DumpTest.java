package witnessmark.launch.seasonsheet;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import witnessmark.logbook.money.SeasonAsked;
import witnessmark.logbook.money.SeeSeason;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

class DumpTest {
    @Test
    void dump() throws Exception {
        Texts texts = Texts.in(Locale.UK);
        var facts = SeeSeason.sheet(SampleViews.end(), SeasonAsked.USUAL, "Marrowgate Racing", Moment.of(java.time.Instant.parse("2026-12-18T18:00:00Z"), SampleViews.ZONE));
        Files.write(Path.of("/tmp/pdf.season.pdf"), new SeasonSheetPaper(texts, new Measures(texts, Units.METRIC)).apply(facts).bytes());
    }
}
