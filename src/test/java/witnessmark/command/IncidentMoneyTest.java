package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.money.SeeIncident;
import witnessmark.quantity.Money;
import witnessmark.sample.SampleViews;

/** The figures of an incident for other programs: what is null says whether it is not written or left out. */
class IncidentMoneyTest {
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
    void a_failure_that_only_spoiled_a_weekend_is_left_out_of_the_usual_total_and_not_unwritten() {
        ObjectNode usual = put(Switches.USUAL, false, Place.SPOILED);
        assertThat(usual.get("total").isNull()).isTrue();
        assertThat(usual.get("leftOut").toString()).isEqualTo("[\"total\"]");
        assertThat(usual.get("unwritten").toString()).isEqualTo("[\"cash\",\"labour\"]");
        assertThat(usual.get("spoiled").asText()).isEqualTo("10.00");

        ObjectNode all = put(Switches.ALL, false, Place.SPOILED);
        assertThat(all.get("total").asText()).isEqualTo("10.00");
        assertThat(all.get("leftOut").toString()).isEqualTo("[]");
    }

    @Test
    void a_column_of_what_is_spent_either_way_is_left_out_with_it() {
        ObjectNode without = put(Switches.USUAL.with(false, true), true, Place.CASH, Place.LABOUR);
        assertThat(without.get("leftOut").toString()).isEqualTo("[\"cash\",\"labour\",\"total\"]");
        assertThat(without.get("cash").isNull()).isTrue();
        assertThat(without.get("unwritten").toString()).isEqualTo("[]");
        assertThat(without.get("missed").asText()).isEqualTo("0.00");
    }

    @Test
    void what_nobody_wrote_is_unwritten_and_not_left_out() {
        ObjectNode nothing = put(Switches.USUAL, false);
        assertThat(nothing.get("unwritten").toString())
                .isEqualTo("[\"cash\",\"labour\",\"missed\",\"spoiled\",\"total\"]");
        assertThat(nothing.get("leftOut").toString()).isEqualTo("[]");
    }

    /** Of ten euros in each of some columns. */
    private ObjectNode put(Switches switches, boolean eitherWay, Place... columns) {
        Piece like = page.cost().pieces().get(0);
        List<Piece> pieces = Arrays.stream(columns)
                .map(column -> new Piece(
                        like.line(),
                        column,
                        like.day(),
                        new Money(1_000, page.cost().home()),
                        null,
                        null,
                        page.incident().id(),
                        false,
                        eitherWay))
                .toList();
        List<Place> written = List.of(columns);
        IncidentCost cost = new IncidentCost(
                page.incident().id(),
                page.cost().home(),
                pieces,
                written.contains(Place.CASH) ? Set.of() : Set.of(Place.CASH, Place.LABOUR));
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        IncidentMoney.add(node, new Failure(page.incident(), cost, page.kept(), List.of()), switches);
        return node;
    }
}
