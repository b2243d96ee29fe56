package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.CostCategory;
import witnessmark.domain.CostLine;
import witnessmark.domain.CostShare;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.outcome.ProblemKind;

/** Common practice, no source: one truck takes both cars, and its cost is split between them. */
class SharedWeekendCostsTest {
    private static final SheetField TRAVEL = WeekendCosts.amount(CostCategory.TRAVEL);

    @TempDir
    Path folder;

    private final WeekendCosts sheet = new WeekendCosts();
    private OwnLogbook own;

    @BeforeEach
    void open() {
        own = new OwnLogbook(folder);
        own.save(new AddCar(), "name", "41").orThrow();
        own.save(new AddCar(), "name", "57").orThrow();
        event("Round 1, Marl", LocalDate.of(2026, 2, 28));
        event("Round 2, Tarn", LocalDate.of(2026, 3, 14));
        own.save(
                        new WriteCost(),
                        "cost_what",
                        "truck",
                        "cost_kind",
                        "travel",
                        "event",
                        "Round 1, Marl",
                        "car",
                        "shared",
                        "cost_shares",
                        "41 2, 57 1",
                        "cost_amount",
                        "330")
                .orThrow();
    }

    @AfterEach
    void close() {
        own.close();
    }

    @Test
    void what_the_cars_shared_last_time_is_brought_whole_and_shared_the_same_way() {
        Map<SheetField, String> typed = of("41");
        assertThat(typed.get(TRAVEL)).isEqualTo("330.00");
        assertThat(own.sheets.read(sheet, typed).of(TRAVEL).note().facts())
                .extracting(Object::toString)
                .containsExactly("41: 2/3, 57: 1/3", "Round 1");
        typed.put(TRAVEL, "400");
        own.sheets.save(sheet, typed, "by hand").orThrow();

        Entry<CostLine> truck = travel().get(0);
        assertThat(truck.fact().car()).isNull();
        assertThat(truck.fact().what()).isEqualTo("truck");
        assertThat(truck.fact().paid().text()).isEqualTo("400.00 GBP");
        assertThat(facts().of(CostShare.class).where(share -> share.line().equals(truck.id())))
                .extracting(
                        share -> facts().of(Car.class).get(share.fact().car()).name() + " "
                                + share.fact().parts())
                .containsExactlyInAnyOrder("41 2", "57 1");
    }

    @Test
    void it_is_written_once_and_what_another_car_took_besides_is_its_own() {
        own.sheets.save(sheet, of("41"), "by hand").orThrow();
        Map<SheetField, String> of57 = of("57");
        assertThat(of57.get(TRAVEL)).as("it is there already, for both").isEmpty();
        of57.put(TRAVEL, "90");
        assertThat(own.sheets.read(sheet, of57).of(TRAVEL).problem().kind())
                .isEqualTo(ProblemKind.WRITTEN_FOR_IT_ALREADY);
        own.sheets.save(sheet, of57, "by hand").orThrow();
        assertThat(travel())
                .extracting(line -> line.fact().car())
                .containsExactlyInAnyOrder(null, own.the(Car.class, "57").id());
    }

    private Map<SheetField, String> of(String car) {
        Map<SheetField, String> typed = new HashMap<>(sheet.fresh(own.sheets.sight()));
        typed.put(WeekendCosts.EVENT, own.the(Event.class, "Round 2, Tarn").id().text());
        typed.put(WeekendCosts.CAR, own.the(Car.class, car).id().text());
        typed.putAll(sheet.follows(WeekendCosts.CAR, new SheetTyped(typed), own.sheets.sight()));
        return typed;
    }

    private List<Entry<CostLine>> travel() {
        Id<Event> round = own.the(Event.class, "Round 2, Tarn").id();
        return facts().of(CostLine.class)
                .where(line -> round.equals(line.event()) && line.category() == CostCategory.TRAVEL);
    }

    private void event(String name, LocalDate day) {
        own.write(new Event(name, "", day, day.plusDays(1), ZoneId.of("Europe/London"), null, ""));
    }

    private Facts facts() {
        return own.desk.view().facts();
    }
}
