package witnessmark.desktop.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.UiTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.domain.Speaks;
import witnessmark.logbook.View;
import witnessmark.logbook.proof.SeeCase;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** Which cell is in hand while an investigation of the sample is written down bit by bit. */
@UiTest
class EvidenceTableTest {
    private static final Texts TEXTS = Texts.in(Locale.UK);

    private static EvidenceLines whole() {
        View view = SampleViews.end();
        Entry<Incident> incident =
                view.facts().of(Incident.class).named("INC-05").orElseThrow();
        return new EvidenceWords(TEXTS, new Measures(TEXTS, Units.METRIC))
                .lines(view.facts(), SeeCase.of(view, incident));
    }

    private static EvidenceTable table() {
        return new EvidenceTable(
                TEXTS,
                new EvidenceTable.Asked() {
                    @Override
                    public void towards(int row, int column, Speaks way) {}

                    @Override
                    public void takeAway(int row, int column) {}

                    @Override
                    public void open(int row, int column) {}

                    @Override
                    public void menu(int row, int column, Rectangle at) {}
                },
                said -> {});
    }

    @Test
    void after_the_first_findings_the_first_of_them_is_in_hand_and_the_foot_stays_the_foot() {
        EvidenceLines all = whole();
        EvidenceLines causes = new EvidenceLines(all.heads(), List.of(), "");
        EvidenceLines less = new EvidenceLines(all.heads(), all.rows().subList(0, 2), "");
        EvidenceTable table = table();
        table.show(EvidenceLines.NONE, true);
        table.show(causes, false);
        table.show(less, false);
        assertThat(table.row()).isZero();
        table.choose(2, 0);
        table.show(all, false);
        assertThat(table.row()).as("how sure a cause is").isEqualTo(all.rows().size());
        table.choose(1, 0);
        table.show(all, false);
        assertThat(table.row()).isEqualTo(1);
    }
}
