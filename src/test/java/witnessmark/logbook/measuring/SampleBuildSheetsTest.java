package witnessmark.logbook.measuring;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.GasketClass;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.SizeLimit;
import witnessmark.domain.Spot;
import witnessmark.domain.Standing;
import witnessmark.fit.Goal;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Proposal;
import witnessmark.fit.result.SheetCounts;
import witnessmark.fit.result.StrongerLink;
import witnessmark.fit.result.Work;
import witnessmark.ledger.result.BuildGap;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.building.SeeBuild;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleBooks;
import witnessmark.store.TimeOrderedIds;

/** The three build sheets of the sample, against the builder's own figures, worked apart from this. */
class SampleBuildSheetsTest {
    @TempDir
    private static Path folder;

    private static Desk desk;

    @BeforeAll
    static void open() {
        desk = new SampleBooks(folder).open();
    }

    @AfterAll
    static void close() {
        desk.logbook().close();
    }

    private static SheetPage page(View view, String engine) {
        Entry<Engine> found = view.facts().of(Engine.class).named(engine).orElseThrow();
        return SeeBuildSheet.of(
                        view,
                        SeeBuildSheet.build(view, found.id(), 1).orElseThrow().id())
                .orElseThrow();
    }

    private static SheetPage page(String engine) {
        return page(desk.view(), engine);
    }

    private static Check check(SheetPage page, MeasureKind kind, int number) {
        return page.answer(kind).orElseThrow().checks().stream()
                .filter(check -> Objects.equals(check.place().number(), number))
                .findFirst()
                .orElseThrow();
    }

    private static BigDecimal shown(Check check) {
        return check.place().kind().dimension().shown(Objects.requireNonNull(check.value()));
    }

    @ParameterizedTest(name = "{0}, cylinder {1}")
    @CsvFileSource(resources = "/sample/build-sheets.csv", useHeadersInDisplayName = true)
    void a_sheet_comes_to_the_builders_figures(
            String engine, int cylinder, BigDecimal mean, BigDecimal wall, BigDecimal squish, BigDecimal ratio) {
        SheetPage page = page(engine);
        assertThat(shown(check(page, MeasureKind.DECK_MEAN, cylinder))).isEqualByComparingTo(mean);
        assertThat(shown(check(page, MeasureKind.PISTON_TO_WALL, cylinder)).setScale(3, RoundingMode.HALF_UP))
                .isEqualByComparingTo(wall);
        assertThat(mean.add(new BigDecimal("0.85")).setScale(2, RoundingMode.HALF_UP))
                .isEqualByComparingTo(squish);
        assertThat(shown(check(page, MeasureKind.COMPRESSION_RATIO, cylinder)).setScale(2, RoundingMode.HALF_UP))
                .isEqualByComparingTo(ratio);
    }

    @Test
    void the_nearer_side_of_k05_is_outside_and_accepted_as_it_is() {
        Answer squish = page("K05").answer(MeasureKind.CROWN_TO_HEAD).orElseThrow();
        List<BigDecimal> nearer = new ArrayList<>();
        for (int i = 0; i < squish.checks().size(); i += 2) {
            nearer.add(shown(squish.checks().get(i)).min(shown(squish.checks().get(i + 1))));
        }
        assertThat(nearer)
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(
                        new BigDecimal("0.99"), new BigDecimal("1.00"), new BigDecimal("0.99"), new BigDecimal("1.01"));
        Check nearest = Objects.requireNonNull(squish.nearest());
        assertThat(nearest.place().spot()).isEqualTo(Spot.ANTI_THRUST);
        assertThat(nearest.verdict()).isEqualTo(FitVerdict.OUTSIDE);
        assertThat(page("K05").accepts(nearest)).isPresent();
        assertThat(page("K05").counts().outside()).isZero();
    }

    @Test
    void what_k05_never_had_measured_is_said_and_accepted() {
        SheetPage page = page("K05");
        for (MeasureKind kind : List.of(MeasureKind.BIG_END_OVALITY, MeasureKind.BOLT_GROWTH)) {
            Answer answer = page.answer(kind).orElseThrow();
            assertThat(answer.verdict()).isEqualTo(FitVerdict.NOT_MEASURED);
            assertThat(answer.checks())
                    .allSatisfy(check -> assertThat(page.accepts(check)).isPresent());
        }
    }

    @Test
    void on_the_first_of_february_the_sheet_of_k05_says_so_too() {
        desk.lookAsOf(LocalDate.of(2026, 2, 1));
        try {
            SheetPage page = page("K05");
            assertThat(page.answers().stream()
                            .filter(answer -> answer.verdict() == FitVerdict.NOT_MEASURED && answer.asked())
                            .map(Answer::kind))
                    .containsExactlyInAnyOrder(
                            MeasureKind.BIG_END_OVALITY, MeasureKind.BOLT_GROWTH, MeasureKind.BOLT_STRETCH);
        } finally {
            desk.lookAsOf(null);
        }
    }

    /** The finish of the deck is held against what its gasket takes: left empty it is told, and counted nowhere as open. */
    @Test
    void what_only_the_trade_holds_to_is_told_where_it_is_left_empty_and_left_open_nowhere() {
        SheetPage page = page("K05");
        assertThat(page.order()).anyMatch(place -> place.kind() == MeasureKind.DECK_RA);
        Finding finish = Finding.all(page).stream()
                .filter(finding -> finding.answer().kind() == MeasureKind.DECK_RA)
                .findFirst()
                .orElseThrow();
        assertThat(finish.group()).isEqualTo(Finding.Group.UNASKED);
        assertThat(page.leftOpen()).noneMatch(check -> check.place().kind() == MeasureKind.DECK_RA);
    }

    /** Every field of a sheet on which nothing is measured, but with limits, is told somewhere. */
    @Test
    void every_kind_the_sheet_holds_against_something_is_in_one_of_its_lists() {
        for (String engine : List.of("K03", "K05", "K06")) {
            SheetPage page = page(engine);
            List<MeasureKind> told = Finding.all(page).stream()
                    .map(finding -> finding.answer().kind())
                    .toList();
            assertThat(page.order())
                    .filteredOn(place -> page.bounds(place).any())
                    .extracting(place -> place.kind())
                    .isSubsetOf(told);
        }
    }

    /** Counted by hand for K05: two sides of the deck measured and accepted, the rest accepted without a figure. */
    @Test
    void what_is_accepted_without_being_measured_is_counted_apart_and_all_counts_add_up() {
        SheetCounts counts = page("K05").counts();
        assertThat(counts.accepted()).isEqualTo(2);
        assertThat(counts.acceptedUnmeasured()).isPositive();
        for (String engine : List.of("K03", "K05", "K06")) {
            SheetPage page = page(engine);
            long asked = page.answers().stream()
                    .filter(Answer::asked)
                    .flatMap(answer -> answer.checks().stream())
                    .filter(Check::leavesOpen)
                    .count();
            SheetCounts of = page.counts();
            assertThat(of.outside() + of.missing() + of.accepted() + of.acceptedUnmeasured())
                    .isEqualTo((int) asked);
            assertThat(of.outside() + of.missing()).isEqualTo(page.leftOpen().size());
        }
    }

    /** One count: what the page of a build calls open is what its sheet calls outside and not measured. */
    @Test
    void the_page_of_a_build_counts_the_figures_of_its_sheet_as_the_sheet_does() {
        View view = desk.view();
        for (Entry<Build> build : SeeBuildSheet.all(view)) {
            SheetCounts counts =
                    SeeBuildSheet.of(view, build.id()).orElseThrow().counts();
            List<BuildGap> gaps = SeeBuild.of(view, build.id()).orElseThrow().gaps();
            assertThat(count(gaps, BuildGap.Kind.OUTSIDE)).isEqualTo(counts.outside());
            assertThat(count(gaps, BuildGap.Kind.NOT_MEASURED)).isEqualTo(counts.missing());
        }
    }

    private static int count(List<BuildGap> gaps, BuildGap.Kind kind) {
        return gaps.stream()
                .filter(gap -> gap.kind() == kind)
                .mapToInt(BuildGap::count)
                .sum();
    }

    @Test
    void a_gasket_stronger_than_the_one_before_asks_whether_the_settings_are_proven() {
        View view = desk.view();
        assertThat(page("K03").strongerLink()).isNull();
        Entry<PartDesign> steel =
                view.facts().of(PartDesign.class).named("steel gasket 0.85").orElseThrow();
        PartDesign was = steel.fact();
        PartDesign softer = new PartDesign(
                was.name(),
                was.kind(),
                was.maker(),
                was.partNumber(),
                was.singleUse(),
                was.canWreck(),
                was.specification(),
                GasketClass.COMPOSITE);
        // K06 has the coated gasket in its second build, and then the plain one counts as softer
        desk.write("softer", List.of(new Entry<>(steel.id(), softer, Standing.IN_FORCE, null, steel.rev() + 1)))
                .orThrow();
        try {
            Entry<Engine> k06 =
                    desk.view().facts().of(Engine.class).named("K06").orElseThrow();
            SheetPage second = SeeBuildSheet.of(
                            desk.view(),
                            SeeBuildSheet.build(desk.view(), k06.id(), 2)
                                    .orElseThrow()
                                    .id())
                    .orElseThrow();
            StrongerLink link = Objects.requireNonNull(second.strongerLink());
            assertThat(link.before()).isEqualTo(GasketClass.COMPOSITE);
            assertThat(link.now()).isEqualTo(GasketClass.MULTI_LAYER_STEEL);
            Set<ReadingKind> evidence = Set.of(ReadingKind.PLUG, ReadingKind.BORESCOPE);
            Moment first = SeeBuildSheet.build(desk.view(), k06.id(), 1)
                    .orElseThrow()
                    .fact()
                    .opened();
            assertThat(link.clean() + link.worse()).isEqualTo((int) desk.view()
                    .facts()
                    .of(Reading.class)
                    .inForce()
                    .filter(reading -> k06.id().equals(reading.fact().engine())
                            && evidence.contains(reading.fact().kind())
                            && !reading.fact().at().isBefore(first))
                    .count());
        } finally {
            desk.undo().orThrow();
        }
    }

    @ParameterizedTest
    @CsvSource({"K03", "K05", "K06"})
    void nothing_else_of_a_sheet_is_outside(String engine) {
        SheetPage page = page(engine);
        assertThat(page.counts().outside()).isZero();
        assertThat(page.contradictions()).isEmpty();
        assertThat(page.order()).doesNotHaveDuplicates();
        assertThat(page.figures())
                .allSatisfy(figure ->
                        assertThat(page.order()).contains(figure.fact().place()));
    }

    @Test
    void the_order_goes_step_by_step_and_both_sides_of_a_cylinder_before_the_next() {
        List<MeasurePlace> order = page("K03").order();
        assertThat(order.stream().map(place -> place.kind().step())).isSorted();
        assertThat(order.stream().filter(place -> place.kind() == MeasureKind.DECK_CLEARANCE))
                .extracting(MeasurePlace::number)
                .containsExactly(1, 1, 2, 2, 3, 3, 4, 4);
    }

    @Test
    void a_limit_set_later_changes_nothing_of_what_was_signed() {
        View view = desk.view();
        SheetPage page = page(view, "K03");
        List<Entry<?>> signed = new SignBuildSheet(new TimeOrderedIds())
                .entries(
                        page,
                        Moment.of(LocalDateTime.of(2026, 1, 28, 18, 0), view.zone()),
                        "Crew chief",
                        "Team engineer",
                        "");
        SizeLimit narrower = new SizeLimit(
                MeasureKind.CROWN_TO_HEAD,
                null,
                page.engine().fact().design(),
                null,
                1_100_000L,
                null,
                null,
                null,
                LimitRank.OWN,
                "after the marks on the crowns",
                LocalDate.of(2026, 1, 1),
                null);
        List<Entry<? extends Fact>> all = new ArrayList<>(signed);
        all.add(new Entry<>(new TimeOrderedIds().next(), narrower, Standing.IN_FORCE, null, 1));
        desk.write("signed", all).orThrow();
        try {
            SheetPage after = page(desk.view(), "K03");
            assertThat(after.answer(MeasureKind.CROWN_TO_HEAD).orElseThrow().verdict())
                    .isEqualTo(FitVerdict.OUTSIDE);
            assertThat(after.signed()).isNotNull();
            assertThat(after.signedChecks())
                    .hasSameSizeAs(page.answers().stream()
                            .flatMap(answer -> answer.checks().stream())
                            .toList())
                    .filteredOn(check -> check.fact().kind() == MeasureKind.CROWN_TO_HEAD)
                    .allSatisfy(check -> {
                        assertThat(check.fact().verdict()).isEqualTo(FitVerdict.INSIDE);
                        assertThat(check.fact().atLeast()).isEqualTo(1_000_000L);
                    });
        } finally {
            desk.undo().orThrow();
        }
    }

    @Test
    void what_would_put_k05_right_is_named_and_what_stands_against_it_too() {
        SheetPage page = page("K05");
        List<Proposal> ways =
                SeeBuildSheet.ways(desk.view(), page.build().id(), new Goal(Goal.Kind.CROWN_TO_HEAD, 1_000_000));
        Proposal crowns = ways.stream()
                .filter(way -> way.work().kind() == Work.Kind.CROWN_CUT)
                .findFirst()
                .orElseThrow();
        // cylinder 4 stands at 1.01 already: nothing can be put on
        assertThat(crowns.against().get(0).why()).isEqualTo(Proposal.Why.ADDS_MATERIAL);
        List<Proposal> wider =
                SeeBuildSheet.ways(desk.view(), page.build().id(), new Goal(Goal.Kind.CROWN_TO_HEAD, 1_050_000));
        assertThat(wider.get(0).possible()).isTrue();
        assertThat(wider.get(0).work().cuts().values()).containsExactly(60_000L, 50_000L, 60_000L, 40_000L);
    }
}
