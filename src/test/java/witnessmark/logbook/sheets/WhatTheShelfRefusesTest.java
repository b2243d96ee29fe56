package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Chase;
import witnessmark.domain.Hold;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.domain.SetMember;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Stock;
import witnessmark.ledger.result.StockLevel;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;

/** Quarantine, scrap, what is out with others, stock and sets by their sheets: bad entries are refused beside their field. */
class WhatTheShelfRefusesTest {
    @TempDir
    Path folder;

    private OwnLogbook own;

    @BeforeEach
    void begin() {
        own = new OwnLogbook(folder);
        own.save(new AddCar(), "name", "7").orThrow();
        own.save(
                        new AddEngine(),
                        "number",
                        "H1",
                        "design_name",
                        "Quarrow 2.0",
                        "cylinders",
                        "4",
                        "hours_how",
                        "part_new",
                        "car",
                        "7",
                        "since",
                        "1 Mar")
                .orThrow();
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        "rods",
                        "since",
                        "2 Mar",
                        "mark",
                        "RS-1",
                        "part_design_name",
                        "Corve rods",
                        "hours_how",
                        "known",
                        "hours",
                        "9")
                .orThrow();
        for (int i = 1; i <= 4; i++) {
            own.write(new SetMember(own.the(Part.class, "RS-1").id(), "rod " + i, i));
        }
    }

    @AfterEach
    void end() {
        own.close();
    }

    private void takeOff(String day) {
        own.save(new TakeOffPart(), "place", "H1", "fitted", "RS-1", "off_when", day, "off_reason", "look")
                .orThrow();
    }

    @Test
    void a_part_that_is_fitted_is_not_put_aside_scrapped_or_sent_and_a_part_nobody_knows_neither() {
        own.refuses(new PutPartAside(), ProblemKind.PART_STILL_FITTED, "part", "part", "RS-1", "why", "mark on it");
        own.refuses(new ScrapPart(), ProblemKind.PART_STILL_FITTED, "part", "part", "RS-1", "why", "crack");
        own.refuses(
                new SendOut(),
                ProblemKind.PART_STILL_FITTED,
                "send_what",
                "send_what",
                "RS-1",
                "sent_to",
                "Tarn Machine",
                "asked_for",
                "crack test");
        own.refuses(new PutPartAside(), ProblemKind.NOT_FOUND, "part", "part", "nobody", "why", "mark on it");
        takeOff("5 Mar");
        own.refuses(
                new PutPartAside(),
                ProblemKind.PART_STILL_FITTED,
                "part",
                "part",
                "RS-1",
                "since",
                "4 Mar",
                "why",
                "mark on it");
        own.refuses(new PutPartAside(), ProblemKind.NEEDED, "why", "part", "RS-1");
        own.refuses(
                new PutPartAside(),
                ProblemKind.RUN_IN_FUTURE,
                "since",
                "part",
                "RS-1",
                "since",
                "11 Mar 2026",
                "why",
                "mark");
    }

    @Test
    void a_part_in_quarantine_is_not_fitted_until_it_is_let_out_and_not_put_there_twice() {
        takeOff("5 Mar");
        own.save(new PutPartAside(), "part", "RS-1", "since", "5 Mar", "why", "mark on rod 2")
                .orThrow();
        own.refuses(
                new FitPart(),
                ProblemKind.PART_IN_QUARANTINE,
                "part",
                "place",
                "H1",
                "position",
                "rods",
                "since",
                "6 Mar",
                "part",
                "RS-1");
        own.refuses(new PutPartAside(), ProblemKind.PART_IN_QUARANTINE, "part", "part", "RS-1", "why", "again");
        own.refuses(
                new DecideAside(),
                ProblemKind.EARLIER_THAN,
                "when",
                "when",
                "4 Mar",
                "decided",
                "let_out",
                "decided_words",
                "crack tested");
        own.refuses(new DecideAside(), ProblemKind.NEEDED, "decided", "decided_words", "crack tested");
        own.save(new DecideAside(), "when", "5 Mar", "decided", "let_out", "decided_words", "crack tested")
                .orThrow();
        Quarantine aside = own.only(Quarantine.class);
        assertThat(aside.releasedBy()).isEqualTo("Ada");
        assertThat(Objects.requireNonNull(aside.to()).day()).isEqualTo(LocalDate.of(2026, 3, 5));
        own.save(new FitPart(), "place", "H1", "position", "rods", "since", "6 Mar", "part", "RS-1")
                .orThrow();
    }

    @Test
    void to_scrap_what_is_in_quarantine_decides_about_it_in_the_same_change() {
        takeOff("5 Mar");
        own.save(new PutPartAside(), "part", "RS-1", "since", "6 Mar", "why", "mark")
                .orThrow();
        long before = own.desk.view().facts().revision();
        own.save(new DecideAside(), "when", "7 Mar", "decided", "scrap_it", "decided_words", "cracked")
                .orThrow();
        assertThat(own.only(Scrapping.class).why()).isEqualTo("cracked");
        assertThat(own.only(Quarantine.class).to())
                .isEqualTo(own.only(Scrapping.class).at());
        own.desk.undo().orThrow();
        assertThat(own.desk.view().facts().of(Scrapping.class).inForce()).isEmpty();
        assertThat(own.only(Quarantine.class).to()).isNull();
        assertThat(before).isPositive();
        own.save(new ScrapPart(), "part", "RS-1", "when", "8 Mar", "why", "bent")
                .orThrow();
        assertThat(own.only(Quarantine.class).released()).isEqualTo("bent");
        own.refuses(new ScrapPart(), ProblemKind.PART_SCRAPPED, "part", "part", id("RS-1"), "why", "bent");
        own.refuses(
                new FitPart(),
                ProblemKind.PART_SCRAPPED,
                "part",
                "place",
                "H1",
                "position",
                "rods",
                "since",
                "9 Mar",
                "part",
                id("RS-1"));
    }

    @Test
    void a_member_is_put_aside_alone_or_split_off_with_the_sets_life() {
        own.save(new PutPartAside(), "part", "RS-1", "member", "rod 1", "why", "mark")
                .orThrow();
        assertThat(own.only(Quarantine.class).member()).isEqualTo("rod 1");
        own.save(
                        new PutPartAside(),
                        "part",
                        "RS-1",
                        "member",
                        "rod 2",
                        "split_off",
                        "yes",
                        "since",
                        "9 Mar",
                        "why",
                        "mark")
                .orThrow();
        Part rod = own.the(Part.class, "RS-1-rod 2").fact();
        assertThat(rod.ofSet()).isEqualTo(own.the(Part.class, "RS-1").id());
        assertThat(life("RS-1-rod 2")).isEqualTo(life("RS-1")).isEqualTo(9 * 3_600_000L);
        own.refuses(
                new PutPartAside(),
                ProblemKind.NEEDED,
                "member",
                "part",
                "RS-1",
                "member",
                member("rod 2"),
                "why",
                "mark");
    }

    @Test
    void a_set_is_split_once_member_by_member_each_with_a_mark_of_its_own() {
        own.refuses(new SplitSet(), ProblemKind.NOT_FOUND, "members", "set", "RS-1", "members", "rod 7");
        own.save(new SplitSet(), "set", "RS-1", "members", "Rod-3", "mark", "R3")
                .orThrow();
        assertThat(own.the(Part.class, "R3").fact().memberMark()).isEqualTo("rod 3");
        own.refuses(new SplitSet(), ProblemKind.NOT_FOUND, "members", "set", "RS-1", "members", "rod 3");
        own.refuses(new SplitSet(), ProblemKind.NAME_TAKEN, "mark", "set", "RS-1", "members", "rod 4", "mark", "R3");
        own.save(new SplitSet(), "set", "RS-1").orThrow();
        assertThat(own.desk.view().facts().of(Part.class).where(part -> part.ofSet() != null))
                .extracting(part -> part.fact().mark())
                .containsExactly("R3", "RS-1-rod 1", "RS-1-rod 2", "RS-1-rod 4");
        own.desk.undo().orThrow();
        assertThat(own.desk.view().facts().of(Part.class).where(part -> part.ofSet() != null))
                .as("splitting is one change")
                .hasSize(1);
    }

    @Test
    void a_part_sent_out_comes_back_later_than_it_went_and_may_be_kept_from_being_fitted() {
        takeOff("5 Mar");
        String[] sent = {
            "send_what",
            "RS-1",
            "sent_to",
            "Tarn Machine",
            "asked_for",
            "crack test",
            "when",
            "6 Mar",
            "promised",
            "12 Mar"
        };
        own.refuses(new SendOut(), ProblemKind.NEEDED, "sent_to", "send_what", "RS-1", "asked_for", "crack test");
        own.refuses(
                new SendOut(),
                ProblemKind.EARLIER_THAN,
                "promised",
                "send_what",
                "RS-1",
                "sent_to",
                "Tarn Machine",
                "asked_for",
                "crack test",
                "when",
                "6 Mar",
                "promised",
                "5 Mar");
        own.save(new SendOut(), sent).orThrow();
        own.refuses(new SendOut(), ProblemKind.PART_AWAY, "send_what", sent);
        own.refuses(new ChaseOut(), ProblemKind.EARLIER_THAN, "when", "when", "5 Mar");
        own.refuses(new ChaseOut(), ProblemKind.NEEDED, "answer", "when", "9 Mar", "new_promise", "14 Mar");
        own.refuses(
                new ChaseOut(),
                ProblemKind.EARLIER_THAN,
                "new_promise",
                "when",
                "9 Mar",
                "answer",
                "soon",
                "new_promise",
                "8 Mar");
        own.save(new ChaseOut(), "when", "9 Mar", "answer", "furnace is down", "new_promise", "16 Mar")
                .orThrow();
        assertThat(own.only(Chase.class).promised()).isEqualTo(LocalDate.of(2026, 3, 16));
        own.refuses(new CameBack(), ProblemKind.EARLIER_THAN, "when", "when", "5 Mar", "out_result", "fine");
        own.refuses(new CameBack(), ProblemKind.NEEDED, "why_not", "out_result", "indication", "fit_again", "no");
        own.save(new CameBack(), "out_result", "indication at rod 2", "fit_again", "no", "why_not", "indication")
                .orThrow();
        assertThat(own.only(SentOut.class).result()).isEqualTo("indication at rod 2");
        assertThat(own.only(Quarantine.class).why()).isEqualTo("indication");
        own.refuses(new CameBack(), ProblemKind.NEEDED, "out", "out_result", "fine");
    }

    @Test
    void an_engine_that_came_back_and_may_not_run_is_held() {
        own.save(new TakeEngineOut(), "engine_in", "H1", "out_when", "4 Mar").orThrow();
        own.save(new SendOut(), "send_what", "H1", "sent_to", "Tarn Machine", "asked_for", "line bore", "when", "6 Mar")
                .orThrow();
        own.save(new CameBack(), "out_result", "not done", "fit_again", "no", "why_not", "main 3 out of line")
                .orThrow();
        assertThat(own.only(Hold.class).engine())
                .isEqualTo(own.the(witnessmark.domain.Engine.class, "H1").id());
    }

    @Test
    void what_was_ordered_goes_on_the_shelf_when_it_comes() {
        own.refuses(
                new SendOut(),
                ProblemKind.OUT_OF_RANGE,
                "count",
                "send_what",
                "new_parts",
                "part_design",
                "Corve rods",
                "count",
                "0",
                "sent_to",
                "Corve");
        own.save(
                        new SendOut(),
                        "send_what",
                        "new_parts",
                        "part_design",
                        "new_design",
                        "part_design_name",
                        "Tessel gasket",
                        "part_kind",
                        "head gasket",
                        "count",
                        "6",
                        "sent_to",
                        "Tessel",
                        "when",
                        "3 Mar")
                .orThrow();
        own.save(new CameBack(), "to_shelf", "new_batch", "batch", "T-77").orThrow();
        assertThat(onShelf("T-77")).isEqualTo(6);
        assertThat(own.the(PartDesign.class, "Tessel gasket").fact().kind().code())
                .isEqualTo("head gasket");
    }

    @Test
    void a_shelf_never_holds_less_than_nothing() {
        newBatch("T-77", "5");
        own.refuses(
                new NewStock(),
                ProblemKind.NAME_TAKEN,
                "batch",
                "part_design",
                "Tessel gasket",
                "batch",
                "t 77",
                "count",
                "1");
        own.refuses(
                new NewStock(),
                ProblemKind.LESS_THAN_NOTHING,
                "count",
                "part_design",
                "Tessel gasket",
                "batch",
                "T-78",
                "count",
                "-2");
        own.save(new MoveStock(), "stock", "T-77", "stock_kind", "used", "count", "2", "when", "5 Mar")
                .orThrow();
        own.refuses(
                new MoveStock(),
                ProblemKind.STOCK_BELOW_NOTHING,
                "count",
                "stock",
                "T-77",
                "stock_kind",
                "spoilt",
                "count",
                "4");
        own.refuses(
                new MoveStock(),
                ProblemKind.STOCK_BELOW_NOTHING,
                "count",
                "stock",
                "T-77",
                "stock_kind",
                "used",
                "count",
                "1",
                "when",
                "1 Mar");
        own.refuses(
                new MoveStock(),
                ProblemKind.OUT_OF_RANGE,
                "count",
                "stock",
                "T-77",
                "stock_kind",
                "used",
                "count",
                "0");
    }

    @Test
    void a_count_writes_the_difference_to_what_is_written() {
        newBatch("T-77", "5");
        own.save(new MoveStock(), "stock", "T-77", "stock_kind", "used", "count", "2", "when", "5 Mar")
                .orThrow();
        own.refuses(
                new MoveStock(),
                ProblemKind.AS_WRITTEN_ALREADY,
                "count",
                "stock",
                "T-77",
                "stock_kind",
                "counted",
                "count",
                "3");
        own.save(new MoveStock(), "stock", "T-77", "stock_kind", "counted", "count", "1")
                .orThrow();
        assertThat(own.desk.view().facts().of(StockMove.class).where(move -> move.kind() == StockMoveKind.COUNTED))
                .extracting(move -> move.fact().change())
                .containsExactly(-2);
        assertThat(onShelf("T-77")).isEqualTo(1);
        own.save(new MoveStock(), "stock", "T-77", "stock_kind", "counted", "count", "0")
                .orThrow();
        own.save(new MoveStock(), "stock", "T-77", "stock_kind", "put back", "count", "1")
                .orThrow();
        assertThat(onShelf("T-77")).isEqualTo(1);
    }

    private void newBatch(String batch, String count) {
        own.save(
                        new NewStock(),
                        "part_design",
                        "new_design",
                        "part_design_name",
                        "Tessel gasket",
                        "part_kind",
                        "head gasket",
                        "batch",
                        batch,
                        "count",
                        count,
                        "least",
                        "2",
                        "when",
                        "2 Mar")
                .orThrow();
    }

    private int onShelf(String batch) {
        List<StockLevel> levels = new Stock(
                        own.desk.view().facts(),
                        new AsOf(OwnLogbook.TODAY, own.desk.view().zone()))
                .all();
        return levels.stream()
                .filter(level -> level.batch().fact().batch().equals(batch))
                .findFirst()
                .orElseThrow()
                .onShelf();
    }

    private long life(String mark) {
        return LifeLedger.of(
                        own.desk.view().facts(),
                        new AsOf(OwnLogbook.TODAY, own.desk.view().zone()))
                .life(own.the(Part.class, mark).id(), Counter.RUNNING)
                .known();
    }

    private String id(String mark) {
        return own.the(Part.class, mark).id().text();
    }

    private String member(String mark) {
        return own.desk
                .view()
                .facts()
                .of(SetMember.class)
                .where(member -> member.mark().equals(mark))
                .get(0)
                .id()
                .text();
    }
}
