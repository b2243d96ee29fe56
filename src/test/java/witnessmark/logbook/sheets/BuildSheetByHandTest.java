package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Build;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Standing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleBooks;

/** Figures of the sample's build sheets accepted as they are, and its sheets signed, on the sheets of the Record menu. */
class BuildSheetByHandTest {
    @TempDir
    Path folder;

    private Desk desk;
    private WriteSheet writing;

    @BeforeEach
    void open() {
        desk = new SampleBooks(folder).open();
        writing = new WriteSheet(desk, SampleBooks.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));
    }

    @AfterEach
    void close() {
        desk.logbook().close();
    }

    private Entry<Build> build(String engine) {
        Entry<Engine> found = desk.view().facts().of(Engine.class).named(engine).orElseThrow();
        return SeeBuildSheet.build(desk.view(), found.id(), 1).orElseThrow();
    }

    private SheetPage page(String engine) {
        return SeeBuildSheet.of(desk.view(), build(engine).id()).orElseThrow();
    }

    private Map<SheetField, String> texts(LogSheet sheet, Prefilled prefilled, Map<SheetField, String> more) {
        Map<SheetField, String> texts = new HashMap<>(sheet.fresh(writing.sight()));
        texts.putAll(prefilled.texts());
        texts.putAll(more);
        return texts;
    }

    private <F extends Fact> List<F> all(Class<F> kind) {
        return desk.view().facts().of(kind).inForce().map(Entry::fact).toList();
    }

    /** The stretch of K05's bolts was never measured; here nobody accepted that. */
    private void nobodyAcceptedTheStretch() {
        Entry<Concession> made = desk.view()
                .facts()
                .of(Concession.class)
                .inForce()
                .filter(entry -> entry.fact().kind() == MeasureKind.BOLT_STRETCH)
                .findFirst()
                .orElseThrow();
        desk.write(
                        "struck out",
                        List.of(new Entry<>(made.id(), made.fact(), Standing.STRUCK_OUT, "nobody did", made.rev() + 1)))
                .orThrow();
    }

    @Test
    void a_figure_accepted_from_its_sheet_is_accepted_in_that_build_and_at_that_place_alone() {
        nobodyAcceptedTheStretch();
        SheetPage before = page("K05");
        long open = before.leftOpen().stream()
                .filter(check -> check.place().kind() == MeasureKind.BOLT_STRETCH)
                .count();
        assertThat(open).isEqualTo(4);
        AcceptAsIs sheet = new AcceptAsIs();
        Prefilled second =
                Prefilled.accepting(before.build(), MeasureKind.BOLT_STRETCH, 2, "bolt stretch of 2 not measured");
        writing.save(sheet, texts(sheet, second, Map.of(AcceptAsIs.WHY, "tightened by angle")), "accepting")
                .orThrow();
        Concession made = all(Concession.class).stream()
                .filter(concession -> concession.why().equals("tightened by angle"))
                .findFirst()
                .orElseThrow();
        assertThat(made.build()).isEqualTo(before.build().id());
        assertThat(made.kind()).isEqualTo(MeasureKind.BOLT_STRETCH);
        assertThat(made.number()).isEqualTo(2);
        assertThat(page("K05").leftOpen().stream().filter(check -> check.place().kind() == MeasureKind.BOLT_STRETCH))
                .hasSize(3)
                .noneMatch(check -> Integer.valueOf(2).equals(check.place().number()));
    }

    @Test
    void the_sheet_opened_by_hand_asks_for_no_figure_and_the_concession_is_of_none() {
        AcceptAsIs sheet = new AcceptAsIs();
        Map<SheetField, String> texts = texts(
                sheet,
                new Prefilled(
                        sheet.key(),
                        Map.of(AcceptAsIs.ON, Places.key(build("K05").fact().engine()))),
                Map.of(AcceptAsIs.WHAT, "a scratch", AcceptAsIs.WHY, "shallow"));
        assertThat(writing.read(sheet, texts).asked()).doesNotContain(AcceptAsIs.FIGURE);
        writing.save(sheet, texts, "accepting").orThrow();
        assertThat(all(Concession.class))
                .filteredOn(concession -> concession.what().equals("a scratch"))
                .singleElement()
                .satisfies(concession -> assertThat(concession.kind()).isNull());
    }

    /** K05 has figures left open: they are named, and it can be signed all the same. K06 has none. */
    @Test
    void signing_names_what_is_left_open_and_keeps_how_every_check_stood() {
        nobodyAcceptedTheStretch();
        SignSheet sheet = new SignSheet();
        SheetPage page = page("K05");
        Map<SheetField, String> texts = texts(
                sheet,
                Prefilled.signing(page.build().id()),
                Map.of(SignSheet.BY, "Crew chief", SignSheet.SECOND, "Team engineer"));
        SheetReading reading = writing.read(sheet, texts);
        assertThat(reading.of(SignSheet.BUILD).problem()).isNotNull();
        assertThat(reading.of(SignSheet.BUILD).problem().kind()).isEqualTo(ProblemKind.SHEET_LEFT_OPEN);
        assertThat(reading.of(SignSheet.BUILD).problem().stops()).isFalse();
        writing.save(sheet, texts, "signing").orThrow();
        SheetPage signed = page("K05");
        assertThat(signed.signed()).isNotNull().isNotEqualTo(page.signed());
        assertThat(signed.signed().fact().seenByTwo()).isTrue();
        assertThat(signed.signedChecks())
                .hasSize(page.answers().stream()
                        .mapToInt(answer -> answer.checks().size())
                        .sum());
        assertThat(signed.signedChecks())
                .extracting(Entry::fact)
                .filteredOn(check -> check.verdict() == FitVerdict.OUTSIDE)
                .isNotEmpty()
                .allSatisfy(check -> assertThat(check.accepted()).contains("Crew chief"));
        desk.undo().orThrow();
        assertThat(page("K05").signed()).isEqualTo(page.signed());
    }

    @Test
    void a_sheet_with_nothing_open_says_so() {
        SignSheet sheet = new SignSheet();
        SheetPage page = page("K03");
        SheetReading reading =
                writing.read(sheet, texts(sheet, Prefilled.signing(page.build().id()), Map.of()));
        assertThat(reading.of(SignSheet.BUILD).problem() == null)
                .isEqualTo(page.leftOpen().isEmpty());
    }
}
