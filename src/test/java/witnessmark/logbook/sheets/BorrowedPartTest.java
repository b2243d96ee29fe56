package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.EventEntry;
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

    /** From the engine it is fitted in, in one save that says so before, and one undo. */
    @Test
    void a_part_is_borrowed_out_of_the_engine_it_is_in() {
        own.save(gaveBack, "when", "5 Mar", "when_time", "12:00", "fitted_again", "yes")
                .orThrow();
        List<Fitment> before = stays();
        FitPart fit = new FitPart();
        Map<SheetField, String> typed = new HashMap<>(
                own.filled(fit, "place", inEngine("H2"), "since", "6 Mar", "since_time", "10:00", "to_go_back", "no"));
        typed.put(FitPart.POSITION, choice(FitPart.POSITION, typed, "valve springs"));
        assertThat(parts(fit, typed)).doesNotContain(part("VS-1").text());
        typed.put(FitPart.BORROWED, SheetWord.YES.key());
        assertThat(parts(fit, typed)).contains(part("VS-1").text());
        typed.put(FitPart.PART, part("VS-1").text());
        assertThat(own.sheets.read(fit, typed).of(FitPart.PART).note())
                .isEqualTo(SheetNote.of("comes_out_of", "H1", "valve springs"));

        own.sheets.save(fit, typed, "by hand").orThrow();
        List<Fitment> stays = stays();
        assertThat(stays).hasSize(before.size() + 1);
        Fitment lent = stays.get(stays.size() - 2);
        assertThat(lent.why()).isEqualTo("lent to H2");
        assertThat(lent.to()).isEqualTo(stays.get(stays.size() - 1).from());
        assertThat(toGoBack())
                .singleElement()
                .matches(borrowed -> borrowed.home().equals("H1"));

        own.desk.undo().orThrow();
        assertThat(stays()).isEqualTo(before);
    }

    private static List<String> keys(List<Choice> choices) {
        return choices.stream().map(Choice::key).toList();
    }

    private List<String> parts(FitPart fit, Map<SheetField, String> typed) {
        return keys(fit.choices(FitPart.PART, new SheetTyped(typed), own.sheets.sight()));
    }

    private List<Fitment> stays() {
        return own
                .desk
                .view()
                .facts()
                .of(Fitment.class)
                .where(each -> each.part().equals(part("VS-1")))
                .stream()
                .map(Entry::fact)
                .toList();
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

    @Test
    void it_is_late_once_the_event_it_is_wanted_for_has_begun() {
        for (int firstDay : List.of(11, 10)) {
            own.write(new Event(
                    "Round " + firstDay,
                    "north",
                    LocalDate.of(2026, 3, firstDay),
                    LocalDate.of(2026, 3, 12),
                    ZoneId.of("UTC"),
                    null,
                    ""));
            own.write(new EventEntry(
                    own.desk
                            .view()
                            .facts()
                            .of(Event.class)
                            .named("Round " + firstDay)
                            .orElseThrow()
                            .id(),
                    own.desk
                            .view()
                            .facts()
                            .of(Car.class)
                            .named("7")
                            .orElseThrow()
                            .id(),
                    null));
            assertThat(toGoBack().get(0).wanted().name()).isEqualTo("Round " + firstDay);
            assertThat(toGoBack().get(0).late()).isEqualTo(firstDay == 10);
        }
    }

    /** Back, then borrowed on a day without a time. */
    private void borrowedAgain(String day) {
        own.save(gaveBack, "when", "5 Mar", "when_time", "12:00", "fitted_again", "yes")
                .orThrow();
        FitPart fit = new FitPart();
        Map<SheetField, String> typed =
                new HashMap<>(own.filled(fit, "place", inEngine("H2"), "since", day, "to_go_back", "yes"));
        typed.put(FitPart.POSITION, choice(FitPart.POSITION, typed, "valve springs"));
        typed.put(FitPart.PART, part("VS-1").text());
        own.sheets.save(fit, typed, "by hand").orThrow();
    }

    @Test
    void borrowed_without_a_time_it_goes_back_on_that_day_with_and_without_a_time() {
        borrowedAgain("6 Mar");
        List<Fitment> before = stays();
        for (String time : List.of("", "17:00")) {
            own.save(gaveBack, "when", "6 Mar", "when_time", time, "fitted_again", "yes")
                    .orThrow();
            List<Fitment> stays = stays();
            assertThat(toGoBack()).isEmpty();
            assertThat(stays).hasSize(before.size() + 1);
            for (int i = 1; i < stays.size(); i++) {
                assertThat(stays.get(i).from())
                        .isGreaterThanOrEqualTo(stays.get(i - 1).to());
            }
            Fitment lent = stays.get(stays.size() - 2);
            assertThat(lent.from()).isLessThan(lent.to());
            assertThat(lent.from().day()).isEqualTo(lent.to().day());
            own.desk.undo().orThrow();
            assertThat(stays()).isEqualTo(before);
        }
    }

    /** The day alone means after the run of 16:00: at noon it was not borrowed yet, unless somebody says when it was. */
    @Test
    void where_something_ran_after_it_went_back_it_is_asked_when_it_was_borrowed() {
        logRun("20 min", "8000", "16:00");
        borrowedAgain("10 Mar");
        Map<SheetField, String> typed = own.filled(gaveBack, "when", "10 Mar", "when_time", "17:00");
        assertThat(own.sheets.read(gaveBack, typed).asked()).doesNotContain(GaveBack.FITTED_AT);
        typed.put(GaveBack.WHEN_TIME, "12:00");
        assertThat(own.sheets.read(gaveBack, typed).asked()).contains(GaveBack.FITTED_AT);
        assertThat(own.sheets.read(gaveBack, typed).stopped()).contains(GaveBack.FITTED_AT);
        typed.put(GaveBack.FITTED_AT, "11:00");
        own.sheets.save(gaveBack, typed, "by hand").orThrow();
        assertThat(toGoBack()).isEmpty();
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
