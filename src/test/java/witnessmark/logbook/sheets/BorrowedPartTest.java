package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Engine;
import witnessmark.domain.Fitment;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.logbook.standing.StillOpen;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;

/** Springs lent from one engine to another, from borrowing until they are back. */
class BorrowedPartTest extends ByHand {
    private final GaveBack gaveBack = new GaveBack();

    /** VS-1 leaves H1 for H2, marked to go back. */
    @BeforeEach
    void borrow() {
        own.save(new AddEngine(), "number", "H2", "design", design().text(), "hours_how", "part_new", "since", "1 Mar")
                .orThrow();
        own.save(
                        new TakeOffPart(),
                        "place",
                        inEngine("H1"),
                        "fitted",
                        fitment().text(),
                        "off_when",
                        "5 Mar",
                        "off_time",
                        "09:00",
                        "off_reason",
                        "lent to H2")
                .orThrow();
        Map<SheetField, String> typed = own.filled(
                new FitPart(), "place", inEngine("H2"), "since", "5 Mar", "since_time", "10:00", "to_go_back", "yes");
        typed = new HashMap<>(typed);
        typed.put(FitPart.POSITION, choice(FitPart.POSITION, typed, "valve springs"));
        typed.put(FitPart.PART, part("VS-1").text());
        own.sheets.save(new FitPart(), typed, "by hand").orThrow();
    }

    @Test
    void it_is_told_with_where_it_goes_back_to_until_it_is_back() {
        StillOpen.ToGoBack borrowed = toGoBack().get(0);
        assertThat(borrowed.mark()).isEqualTo("VS-1");
        assertThat(borrowed.in()).isEqualTo("H2");
        assertThat(borrowed.home()).isEqualTo("H1");

        own.save(gaveBack, "when_time", "12:00").orThrow();
        assertThat(toGoBack()).isEmpty();
        assertThat(last(Fitment.class).to()).isNotNull();
        assertThat(last(Fitment.class).why()).isEqualTo("back to H1");
        own.desk.undo().orThrow();
        assertThat(toGoBack()).hasSize(1);
    }

    /** One hour in H1 after it is back: counted; the life before stays as it was. */
    @Test
    void fitted_there_again_it_counts_what_that_engine_runs() {
        own.save(gaveBack, "when_time", "12:00", "fitted_again", "yes").orThrow();
        logRun("60", "8000", "14:00");
        assertThat(last(Fitment.class).engine())
                .isEqualTo(own.desk
                        .view()
                        .facts()
                        .of(Engine.class)
                        .named("H1")
                        .orElseThrow()
                        .id());
        assertThat(own.desk.view().ledger().life(part("VS-1"), Counter.RUNNING).total())
                .isEqualTo(HOUR);
    }

    @Test
    void it_goes_back_after_it_was_borrowed_and_only_where_there_is_room() {
        Map<SheetField, String> typed = own.filled(gaveBack, "when", "4 Mar");
        assertThat(Objects.requireNonNull(own.sheets
                                .read(gaveBack, typed)
                                .of(GaveBack.WHEN)
                                .problem())
                        .kind())
                .isEqualTo(ProblemKind.ENDS_BEFORE_IT_BEGINS);
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        "valve springs",
                        "since",
                        "5 Mar",
                        "since_time",
                        "11:00",
                        "mark",
                        "VS-9",
                        "part_design_name",
                        "other springs")
                .orThrow();
        assertThat(found(gaveBack, own.filled(gaveBack, "fitted_again", "yes")))
                .contains("TWO_PARTS_IN_POSITION beside fitted_again");
    }

    private List<StillOpen.ToGoBack> toGoBack() {
        return SeeStanding.of(own.desk.view()).open().borrowed();
    }

    private witnessmark.domain.Id<Fitment> fitment() {
        return own.desk
                .view()
                .facts()
                .of(Fitment.class)
                .where(each -> each.part().equals(part("VS-1")))
                .get(0)
                .id();
    }

    private String inEngine(String engine) {
        return "engine:"
                + own.desk
                        .view()
                        .facts()
                        .of(Engine.class)
                        .named(engine)
                        .orElseThrow()
                        .id()
                        .text();
    }

    private String choice(SheetField field, Map<SheetField, String> typed, String name) {
        return new FitPart()
                .choices(field, new SheetTyped(typed), own.sheets.sight()).stream()
                        .filter(choice -> choice.facts().get(0) instanceof witnessmark.domain.Position where
                                && where.name().equals(name))
                        .findFirst()
                        .orElseThrow()
                        .key();
    }
}
