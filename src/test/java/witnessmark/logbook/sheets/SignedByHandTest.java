package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Clearance;
import witnessmark.domain.Grade;
import witnessmark.domain.Hold;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.PartKind;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.domain.Run;
import witnessmark.domain.RunOn;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;
import witnessmark.ledger.Holds;
import witnessmark.ledger.result.MarkState;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * Triggers, holds, clearances and run-ons written by sheets alone. Oracle: each record spelt out by hand, and sums in
 * the comments.
 */
class SignedByHandTest extends ByHand {
    /** Common practice, no source: a head is skimmed, and what was skimmed has so much left until it is too thin. */
    @Test
    void a_limit_since_the_last_skim_is_set_by_hand_and_begins_anew_at_a_skim() {
        Map<SheetField, String> typed = own.filled(
                new SetLimit(),
                "scope",
                SheetWord.ONE_PART.key(),
                "limit_part",
                "RS-1",
                "action",
                "skim",
                "work_due",
                "skim",
                "figure",
                "15",
                "limit_from",
                "1 Mar");
        assertThat(own.sheets.read(new SetLimit(), typed).of(SetLimit.ACTION).note())
                .isEqualTo(SheetNote.of("since_skim"));
        own.sheets.save(new SetLimit(), typed, "by hand").orThrow();
        assertThat(last(Limit.class).action()).isEqualTo(LimitAction.SKIM);
    }

    @Test
    void a_trigger_is_kept_as_typed_and_holds_what_ran_too_fast_until_each_part_or_all_are_signed_clear() {
        setOverRev();
        assertThat(last(Trigger.class))
                .isEqualTo(new Trigger(
                        "over-rev",
                        TriggerKind.SPEED_ABOVE,
                        design(),
                        8500L,
                        new RunningTime(100),
                        null,
                        null,
                        java.util.EnumSet.of(PartKind.RODS, PartKind.VALVE_SPRINGS),
                        "rods crack tested",
                        LimitRank.OWN,
                        "ours",
                        FROM,
                        null));
        logRun("30", "9340");
        assertThat(held()).containsExactlyInAnyOrder("RS-1", "VS-1");
        assertThat(clearChoices())
                .extracting(choice -> ((SheetNote) choice.facts().get(0)).key())
                .containsExactly("held_all", "held_part", "held_part");
        SheetNote rods = (SheetNote) clearChoices().stream()
                .filter(choice -> choice.facts().toString().contains("RS-1"))
                .findFirst()
                .orElseThrow()
                .facts()
                .get(0);
        assertThat(rods.facts())
                .isEqualTo(List.of(new EngineSpeed(9340), last(Run.class).start(), PartKind.RODS, "RS-1"));

        own.sheets.save(new SignClear(), clear("RS-1"), "by hand").orThrow();
        assertThat(last(Clearance.class))
                .isEqualTo(new Clearance(
                        null,
                        id(Run.class),
                        null,
                        id(Trigger.class),
                        part("RS-1"),
                        Moment.endOf(OwnLogbook.TODAY, zone()),
                        "head off, rods crack tested",
                        "none",
                        "Ada",
                        ""));
        assertThat(held()).containsExactly("VS-1");
        own.desk.undo().orThrow();
        assertThat(held()).containsExactlyInAnyOrder("RS-1", "VS-1");

        Map<SheetField, String> all = clear("RS-1");
        all.put(SignClear.HELD, clearChoices().get(0).key());
        own.sheets.save(new SignClear(), all, "by hand").orThrow();
        assertThat(last(Clearance.class).part()).isNull();
        assertThat(held()).isEmpty();
        assertThat(clearChoices()).isEmpty();
    }

    @Test
    void triggers_by_temperature_pressure_and_grades_are_kept_in_their_own_units() {
        // 105 C = 378.15 K; 1.5 bar = 150 000 Pa
        assertThat(trigger("trigger_kind", "water above", "trigger_figure", "105")
                        .figure())
                .isEqualTo(378_150);
        assertThat(trigger("trigger_kind", "oil pressure below", "trigger_figure", "1.5")
                        .figure())
                .isEqualTo(150_000);
        Trigger graded = trigger("trigger_kind", "graded", "reading_kind", "plug", "trigger_grade", "damaged");
        assertThat(graded.readingKind()).isEqualTo(ReadingKind.PLUG);
        assertThat(graded.grade()).isEqualTo(Grade.DAMAGED);
        assertThat(graded.holds()).isEmpty();
        Trigger worse = trigger("trigger_kind", "worse twice", "reading_kind", "filter", "trigger_grade", "flakes");
        assertThat(worse.grade()).isNull();
        assertThat(worse.figure()).isNull();
    }

    @Test
    void a_hold_is_kept_as_typed_holds_the_engine_and_its_own_signer_is_asked_about() {
        own.save(
                        new WriteHold(),
                        "held_what",
                        "H1",
                        "held_since",
                        "9 Mar",
                        "held_time",
                        "16:20",
                        "held_why",
                        "detonation mark on the plug of 3",
                        "held_asks",
                        "head off")
                .orThrow();
        assertThat(last(Hold.class))
                .isEqualTo(new Hold(
                        engine(),
                        null,
                        "",
                        Moment.of(LocalDate.of(2026, 3, 9).atTime(16, 20), zone()),
                        "detonation mark on the plug of 3",
                        "head off",
                        "Ada"));
        Map<SheetField, String> typed = clear("H1");
        assertThat(found(new SignClear(), typed)).containsExactly("CLEARS_OWN_HOLD beside clear_by");
        typed.put(SignClear.WHEN, "8 Mar");
        assertThat(found(new SignClear(), typed)).contains("CLEARED_BEFORE beside clear_day");
        assertThat(own.sheets.save(new SignClear(), typed, "by hand").didWork()).isFalse();
        typed = clear("H1");
        typed.put(SignClear.BY, "Bea");
        assertThat(found(new SignClear(), typed)).isEmpty();
        own.sheets.save(new SignClear(), typed, "by hand").orThrow();
        assertThat(last(Clearance.class).hold()).isEqualTo(id(Hold.class));
        assertThat(new Holds(own.desk.view().ledger()).open()).isEmpty();
    }

    @Test
    void a_run_on_past_a_limit_of_our_own_is_kept_as_typed_and_needs_nobody_asked() {
        limit("own", "0.4");
        logRun("30", "8000");
        assertThat(springs()).isEqualTo(MarkState.OVER);
        Map<SheetField, String> typed = runOn("1.25", "");
        assertThat(own.sheets
                        .read(new SignRunOn(), runOn("", ""))
                        .of(SignRunOn.UP_TO)
                        .note()
                        .facts())
                .as("what is used, and no figure proposed")
                .isEqualTo(List.of(new SheetAmount(witnessmark.quantity.Counter.RUNNING, HOUR / 2)));
        assertThat(new SignRunOn().fresh(own.sheets.sight())).doesNotContainKey(SignRunOn.UP_TO);
        own.sheets.save(new SignRunOn(), typed, "by hand").orThrow();
        assertThat(last(RunOn.class))
                .isEqualTo(new RunOn(
                        id(Limit.class),
                        null,
                        part("VS-1"),
                        null,
                        null,
                        5 * HOUR / 4,
                        Moment.endOf(OwnLogbook.TODAY, zone()),
                        "Ada",
                        "",
                        "",
                        "no set on the shelf"));
        assertThat(springs()).isEqualTo(MarkState.RUN_ON);
        own.desk.undo().orThrow();
        assertThat(springs()).isEqualTo(MarkState.OVER);
    }

    @Test
    void for_a_limit_of_the_builder_it_has_to_be_said_whether_anybody_was_asked() {
        limit("builder", "0.4");
        logRun("30", "8000");
        SheetReading silent = own.sheets.read(new SignRunOn(), runOn("1", ""));
        assertThat(silent.stopped()).containsExactly(SignRunOn.ASKED);
        assertThat(found(new SignRunOn(), runOn("1", "nobody_asked"))).containsExactly("NOBODY_ASKED beside asked");
        Map<SheetField, String> asked = runOn("1", "somebody_asked");
        assertThat(own.sheets.read(new SignRunOn(), asked).stopped())
                .containsExactly(SignRunOn.ADVISER, SignRunOn.ADVICE);
        asked.put(SignRunOn.ADVISER, "Corbin, who built it");
        asked.put(SignRunOn.ADVICE, "one more hour at most");
        assertThat(found(new SignRunOn(), asked)).isEmpty();
        own.sheets.save(new SignRunOn(), asked, "by hand").orThrow();
        assertThat(last(RunOn.class).adviser()).isEqualTo("Corbin, who built it");
        assertThat(last(RunOn.class).advice()).isEqualTo("one more hour at most");
    }

    @Test
    void a_limit_of_the_rule_book_is_not_in_the_list_and_whoever_comes_with_it_is_told_why() {
        limit("rule book", "0.4");
        logRun("30", "8000");
        assertThat(new SignRunOn().choices(SignRunOn.LIMIT, new SheetTyped(Map.of()), own.sheets.sight()))
                .isEmpty();
        SheetReading empty = own.sheets.read(new SignRunOn(), own.filled(new SignRunOn()));
        assertThat(empty.of(SignRunOn.LIMIT).note()).isEqualTo(SheetNote.of("never_passed", 1, "VS-1"));
        Map<SheetField, String> typed = own.filled(new SignRunOn());
        typed.put(SignRunOn.LIMIT, id(Limit.class).text() + "|" + part("VS-1").text());
        assertThat(Objects.requireNonNull(own.sheets
                                .read(new SignRunOn(), typed)
                                .of(SignRunOn.LIMIT)
                                .problem())
                        .kind())
                .isEqualTo(witnessmark.outcome.ProblemKind.RULE_BOOK_NOT_PASSED);
    }

    /** Whoever looks for one that is far from due is told the same, of that very limit and with its source. */
    @Test
    void a_limit_of_the_rule_book_not_yet_due_is_told_by_its_name_and_source() {
        limit("rule book", "50");
        logRun("30", "8000");
        assertThat(springs()).isEqualTo(MarkState.WITHIN);
        SheetTyped nothing = new SheetTyped(Map.of());
        assertThat(new SignRunOn().notOffered(SignRunOn.LIMIT, nothing, own.sheets.sight()))
                .containsOnlyKeys(Choice.of(
                        id(Limit.class).text() + "|" + part("VS-1").text(),
                        SheetNote.of("limit_on", "renew valve springs", "VS-1")))
                .containsValue(SheetNote.of("rule_book_not_run_on", "renew valve springs", "VS-1", "a sheet"));
        assertThat(new SignRunOn().notOffered(SignRunOn.WHY, nothing, own.sheets.sight()))
                .isEmpty();
        SheetReading empty = own.sheets.read(new SignRunOn(), own.filled(new SignRunOn()));
        assertThat(empty.of(SignRunOn.LIMIT).note()).isEqualTo(SheetNote.of("nothing_over"));
    }

    @Test
    void a_limit_of_our_own_is_not_told_to_be_never_run_on() {
        limit("own", "50");
        assertThat(new SignRunOn().notOffered(SignRunOn.LIMIT, new SheetTyped(Map.of()), own.sheets.sight()))
                .isEmpty();
    }

    @Test
    void a_run_on_past_a_limit_of_readings_ends_at_the_running_of_the_engine() {
        own.save(
                        new SetReadingLimit(),
                        "limit_name",
                        "leak-down",
                        "at_most",
                        "10",
                        "source",
                        "ours",
                        "limit_from",
                        "1 Mar")
                .orThrow();
        read("4", "12");
        logRun("30", "8000");
        Map<SheetField, String> typed = runOn("0.5", "");
        assertThat(own.sheets.read(new SignRunOn(), typed).stopped()).containsExactly(SignRunOn.UP_TO);
        typed.put(SignRunOn.UP_TO, "1.5");
        own.sheets.save(new SignRunOn(), typed, "by hand").orThrow();
        assertThat(last(RunOn.class).readingLimit()).isEqualTo(id(ReadingLimit.class));
        assertThat(last(RunOn.class).engine()).isEqualTo(engine());
        assertThat(last(RunOn.class).upTo()).isEqualTo(3 * HOUR / 2);
        assertThat(readings()).isEqualTo(MarkState.RUN_ON);
    }
}
