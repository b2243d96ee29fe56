package witnessmark.desktop.incidents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.LifeThen;
import witnessmark.logbook.money.SeeIncident;
import witnessmark.quantity.RunningTime;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** What would have kept a failure of the sample from happening, beside costs that are counted, left out, or not written. */
class SectionWordsTest {
    private final Texts texts = Texts.in(Locale.UK);
    private final SectionWords words = new SectionWords(texts, new Measures(texts, Units.METRIC));
    private final View view = SampleViews.end();
    private final IncidentPage page = SeeIncident.of(
                    view,
                    view.facts()
                            .of(Incident.class)
                            .named("INC-06")
                            .orElseThrow()
                            .id())
            .orElseThrow();

    @Test
    void what_is_left_out_is_not_said_to_be_unwritten() {
        IncidentCost was = page.cost();
        assertThat(prevention(was)).contains("beside 8\u2009020.00 EUR that it cost");
        List<Piece> spoiled = was.pieces().stream()
                .map(piece -> new Piece(
                        piece.line(),
                        Place.SPOILED,
                        piece.day(),
                        piece.amount(),
                        piece.car(),
                        piece.event(),
                        piece.incident(),
                        piece.planned(),
                        piece.allocated()))
                .toList();
        assertThat(prevention(cost(spoiled))).endsWith("All that is written of what it cost is left out here.");
        assertThat(prevention(cost(List.of()))).endsWith("What it cost is not written yet.");
    }

    private IncidentCost cost(List<Piece> pieces) {
        IncidentCost was = page.cost();
        return new IncidentCost(was.incident(), was.home(), pieces, Set.of(Place.CASH, Place.LABOUR));
    }

    private String prevention(IncidentCost cost) {
        IncidentPage costing = new IncidentPage(
                page.incident(),
                page.open(),
                cost,
                page.parts(),
                page.causes(),
                page.shareLeft(),
                page.preventions(),
                page.kept(),
                page.missed(),
                page.lost(),
                page.before(),
                page.again(),
                page.decisions());
        LifeThen.Ran ran = new LifeThen.Ran(RunningTime.NONE, false, null);
        return words.of(view, costing, Collections.nCopies(page.parts().size(), ran)).stream()
                .map(PageLines.Section::sum)
                .filter(sum -> sum.startsWith("Together"))
                .findFirst()
                .orElseThrow();
    }
}
