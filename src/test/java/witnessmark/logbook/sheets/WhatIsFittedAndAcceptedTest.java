package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.ListedPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.outcome.ProblemKind;

/** What is fitted from the shelf, what the parts list names, and what is accepted as it is. */
class WhatIsFittedAndAcceptedTest {
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
                        "rod bolts",
                        "since",
                        "2 Mar",
                        "mark",
                        "ST-1",
                        "part_design_name",
                        "Marl studs")
                .orThrow();
    }

    @AfterEach
    void end() {
        own.close();
    }

    @Test
    void what_is_accepted_says_what_why_and_who_and_stays_with_engine_and_build() {
        own.refuses(
                new AcceptAsIs(),
                ProblemKind.NEEDED,
                "accepted_on",
                "accepted_what",
                "gap",
                "accepted_why",
                "none other");
        own.refuses(
                new AcceptAsIs(),
                ProblemKind.NEEDED,
                "accepted_by",
                "accepted_on",
                "H1",
                "accepted_what",
                "gap",
                "accepted_why",
                "none other",
                "accepted_by",
                "");
        own.refuses(
                new AcceptAsIs(),
                ProblemKind.NOT_FOUND,
                "accepted_on",
                "accepted_on",
                "part:nobody",
                "accepted_what",
                "gap",
                "accepted_why",
                "x");
        own.save(new WriteBuild(), "engine", "H1", "zones", "head", "opened", "4 Mar")
                .orThrow();
        own.save(new AcceptAsIs(), "accepted_on", "ST-1", "accepted_what", "5.1 mm long", "accepted_why", "no other")
                .orThrow();
        Concession signed = own.only(Concession.class);
        assertThat(signed.part()).isEqualTo(own.the(Part.class, "ST-1").id());
        assertThat(signed.engine()).isEqualTo(own.the(Engine.class, "H1").id());
        assertThat(signed.build()).isNotNull();
    }

    @Test
    void a_part_that_is_not_the_listed_one_is_fitted_only_when_it_is_accepted_as_it_is() {
        own.refuses(new ListPart(), ProblemKind.NEEDED, "listed_for", "part_design", "Marl studs");
        own.refuses(
                new ListPart(),
                ProblemKind.EARLIER_THAN,
                "listed_to",
                "listed_for",
                "Quarrow 2.0",
                "position",
                "rod bolts",
                "part_design",
                "Marl studs",
                "listed_from",
                "5 Mar",
                "listed_to",
                "4 Mar");
        own.save(
                        new ListPart(),
                        "listed_for",
                        "Quarrow 2.0",
                        "position",
                        "rod bolts",
                        "part_design",
                        "new_design",
                        "part_design_name",
                        "Corve studs",
                        "listed_from",
                        "1 Mar")
                .orThrow();
        String[] studs = {
            "place", "H1", "position", "rod bolts", "since", "5 Mar", "mark", "ST-2", "part_design", "Marl studs"
        };
        own.refuses(new FitPart(), ProblemKind.NEEDED, "accepted_why", studs);
        long before = own.desk.view().facts().of(Fitment.class).size();
        Map<SheetField, String> typed = own.filled(new FitPart(), studs);
        typed.put(FitPart.ACCEPTED_WHY, "the listed ones come in May");
        own.sheets.save(new FitPart(), typed, "by hand").orThrow();
        assertThat(own.only(Concession.class).what()).isEqualTo("Corve studs \u2192 Marl studs");
        assertThat(own.only(Concession.class).part())
                .isEqualTo(own.the(Part.class, "ST-2").id());
        own.desk.undo().orThrow();
        assertThat(own.desk.view().facts().of(Concession.class).inForce()).isEmpty();
        assertThat(own.desk.view().facts().of(Fitment.class).inForce().count()).isEqualTo(before);
    }

    @Test
    void for_one_engine_the_list_may_name_another_and_a_new_line_ends_the_one_before() {
        String[] line = {
            "listed_for", "Quarrow 2.0", "position", "rod bolts", "part_design", "Marl studs", "listed_from", "1 Mar"
        };
        own.save(new ListPart(), line).orThrow();
        own.refuses(new ListPart(), ProblemKind.EARLIER_THAN, "listed_from", line);
        own.save(
                        new ListPart(),
                        "listed_for",
                        "H1",
                        "position",
                        "rod bolts",
                        "part_design",
                        "new_design",
                        "part_design_name",
                        "Corve studs",
                        "listed_from",
                        "3 Mar")
                .orThrow();
        own.refuses(
                new FitPart(),
                ProblemKind.NEEDED,
                "accepted_why",
                "place",
                "H1",
                "position",
                "rod bolts",
                "since",
                "4 Mar",
                "mark",
                "ST-2",
                "part_design",
                "Marl studs");
        line[7] = "6 Mar";
        own.save(new ListPart(), line).orThrow();
        assertThat(own.desk.view().facts().of(ListedPart.class).where(listed -> listed.validTo() != null))
                .extracting(listed -> listed.fact().validTo())
                .containsExactly(LocalDate.of(2026, 3, 5));
    }

    @Test
    void what_is_fitted_from_the_shelf_becomes_a_part_and_is_one_less_there_in_one_change() {
        own.save(
                        new NewStock(),
                        "part_design",
                        "new_design",
                        "part_design_name",
                        "Tessel gasket",
                        "part_kind",
                        "head gasket",
                        "batch",
                        "T-77",
                        "count",
                        "1",
                        "when",
                        "3 Mar")
                .orThrow();
        own.refuses(
                new FitPart(),
                ProblemKind.STOCK_BELOW_NOTHING,
                "part",
                "place",
                "H1",
                "position",
                "head gasket",
                "part",
                "T-77",
                "since",
                "2 Mar");
        String[] gasket = {"place", "H1", "position", "head gasket", "part", "T-77", "since", "4 Mar"};
        own.refuses(new FitPart(), ProblemKind.NAME_TAKEN, "mark", with(gasket, "mark", "ST-1"));
        own.save(new FitPart(), gasket).orThrow();
        Entry<Part> part = own.the(Part.class, "T-77-1");
        assertThat(part.fact().batch()).isEqualTo("T-77");
        assertThat(own.desk
                        .view()
                        .facts()
                        .of(StockMove.class)
                        .where(move -> part.id().equals(move.part())))
                .extracting(move -> move.fact().change())
                .containsExactly(-1);
        assertThat(own.sheets.sight().standing().stock().get(0).onShelf()).isZero();
        assertThat(own.the(PartDesign.class, "Tessel gasket").id())
                .isEqualTo(part.fact().design());
        own.refuses(
                new FitPart(),
                ProblemKind.STOCK_BELOW_NOTHING,
                "part",
                with(
                        gasket,
                        "since",
                        "5 Mar",
                        "part",
                        "stock:" + own.the(StockBatch.class, "T-77").id().text()));
        own.desk.undo().orThrow();
        assertThat(own.sheets.sight().standing().stock().get(0).onShelf()).isEqualTo(1);
    }

    private static String[] with(String[] usual, String... more) {
        return Stream.concat(Arrays.stream(usual), Arrays.stream(more)).toArray(String[]::new);
    }
}
