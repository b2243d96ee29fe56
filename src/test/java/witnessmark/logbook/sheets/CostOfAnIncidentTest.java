package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.typed.DayOrder;

/** A cost that is owed to an incident is on what the incident was on. */
class CostOfAnIncidentTest {
    private final Desk desk = SampleBook.on(SampleBook.OPENING);
    private final Entry<Incident> incident = desk.view()
            .facts()
            .of(Incident.class)
            .inForce()
            .filter(each -> each.fact().mark().equals("INC-05"))
            .findFirst()
            .orElseThrow();

    private final WriteSheet sheets = new WriteSheet(desk, SampleBook.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));
    private final WriteCost sheet = new WriteCost();

    @Test
    void an_incident_that_is_picked_brings_what_it_was_on() {
        Map<SheetField, String> typed = Map.of(WriteCost.INCIDENT, incident.id().text());
        assertThat(sheet.follows(WriteCost.INCIDENT, new SheetTyped(typed), sheets.sight()))
                .isEqualTo(WriteCost.onWhat(incident.fact()))
                .isNotEmpty();
        assertThat(sheet.follows(WriteCost.CAR, new SheetTyped(typed), sheets.sight()))
                .isEmpty();
    }

    @Test
    void its_car_and_engine_stand_there_and_one_amount_is_enough() {
        Map<SheetField, String> typed = new HashMap<>(sheet.fresh(sheets.sight()));
        typed.putAll(Prefilled.costOf(incident).texts());
        typed.put(WriteCost.WHAT, "oil and filter, once more");
        typed.put(WriteCost.AMOUNT, "180");
        sheets.save(sheet, typed, "by hand").orThrow();
        assertThat(desk.view().facts().of(CostLine.class).inForce().map(Entry::fact))
                .filteredOn(cost -> cost.what().equals("oil and filter, once more"))
                .singleElement()
                .satisfies(cost -> {
                    assertThat(cost.incident()).isEqualTo(incident.id());
                    assertThat(cost.engine()).isEqualTo(incident.fact().engine());
                    assertThat(cost.car()).isEqualTo(incident.fact().car());
                });
    }
}
