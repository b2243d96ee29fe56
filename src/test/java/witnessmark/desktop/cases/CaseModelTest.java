package witnessmark.desktop.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import witnessmark.chart.FaceMap;
import witnessmark.domain.CauseState;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.domain.Speaks;
import witnessmark.logbook.View;
import witnessmark.logbook.proof.SeeCase;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;
import witnessmark.wording.WayLines;

/** The investigations of the invented season in words, by its printed tables. */
class CaseModelTest {
    private static final Texts TEXTS = Texts.in(Locale.UK);
    private static final Measures MEASURES = new Measures(TEXTS, Units.METRIC);

    private static View view;

    @BeforeAll
    static void tellTheSeason() {
        view = SampleViews.on(SampleViews.end().facts(), SampleViews.WINTER);
    }

    private static Entry<Incident> incident(String mark) {
        return view.facts().of(Incident.class).named(mark).orElseThrow();
    }

    private static CaseLines of(String mark) {
        Entry<Incident> incident = incident(mark);
        return new CaseModel(TEXTS, MEASURES).lines(view, incident, SeeCase.of(view, incident));
    }

    private static BesideLines beside(String one, String other) {
        return new BesideWords(TEXTS, MEASURES)
                .lines(view, incident(one).id().text(), incident(other).id().text());
    }

    /** Seven hypotheses are printed: one primary, three contributing, one possible, two not supported. */
    @Test
    void the_causes_of_the_repeated_failure_stand_from_main_to_ruled_out() {
        assertThat(of("INC-05").evidence().heads())
                .extracting(EvidenceLines.Head::state)
                .containsExactly(
                        CauseState.MAIN,
                        CauseState.CONTRIBUTING,
                        CauseState.CONTRIBUTING,
                        CauseState.CONTRIBUTING,
                        CauseState.OPEN,
                        CauseState.RULED_OUT,
                        CauseState.RULED_OUT);
        assertThat(of("INC-05").evidence().heads().get(0).statement()).contains("housing of rod 3");
    }

    /** Printed for the housing: brown polish, ovality, bolt 3B; and nothing against it. */
    @Test
    void what_speaks_for_the_housing_is_what_is_printed_and_nothing_speaks_against_it() {
        EvidenceLines evidence = of("INC-05").evidence();
        List<EvidenceLines.Row> speaks = evidence.rows().stream()
                .filter(row -> row.cells().get(0).speaks() != null)
                .toList();
        assertThat(speaks)
                .extracting(EvidenceLines.Row::lead)
                .contains("Back of a shell 3", "Big-end housing 3", "Rod bolt 3");
        assertThat(speaks)
                .extracting(row ->
                        Objects.requireNonNull(row.cells().get(0).speaks()).weight())
                .allSatisfy(weight -> assertThat(weight).isPositive());
    }

    @Test
    void every_cell_says_in_words_what_its_shape_shows() {
        for (EvidenceLines.Row row : of("INC-05").evidence().rows()) {
            assertThat(row.cells()).hasSize(7).allSatisfy(cell -> {
                Speaks speaks = cell.speaks();
                String word = speaks == null
                        ? "is not weighed"
                        : speaks.weight() > 0 ? " for " : speaks.weight() < 0 ? " against " : "neither for nor against";
                assertThat(cell.said()).startsWith(row.lead()).contains(word);
                assertThat(cell.said().contains("strongly"))
                        .isEqualTo(speaks != null && Math.abs(speaks.weight()) == 2);
                assertThat(cell.said().contains(cell.why())).isTrue();
            });
        }
    }

    /** "First diagnosis: oil surge" was held main on 16 April and is no longer. */
    @Test
    void a_diagnosis_that_was_replaced_stays_to_be_seen() {
        assertThat(of("INC-03").evidence().heads())
                .filteredOn(head -> head.statement().contains("oil surge"))
                .singleElement()
                .satisfies(head -> assertThat(head.called()).contains("before that main, likely, 16 Apr"));
    }

    @Test
    void a_test_still_to_be_made_is_told_with_its_day() {
        Entry<Incident> incident = incident("INC-05");
        View july = SampleViews.opening();
        EvidenceLines evidence = new CaseModel(TEXTS, MEASURES)
                .lines(july, incident, SeeCase.of(july, incident))
                .evidence();
        assertThat(evidence.heads()).extracting(EvidenceLines.Head::tests).containsExactly("done", "1 to do", "done");
        assertThat(evidence.heads().get(1).testsDue()).as("a week past").isEqualTo("late: was due 1 Jul");
    }

    @Test
    void the_way_up_to_it_says_its_hours_its_last_good_look_and_what_was_changed() {
        WayLines way = of("INC-05").way();
        assertThat(way.heading()).isEqualTo("K05 on its way there");
        assertThat(way.said()).contains("5 May");
        WayLines.Point last = way.points().get(way.points().size() - 1);
        assertThat(last.hours()).isEqualTo("12.46 h");
        assertThat(last.before()).isEmpty();
        assertThat(last.seen()).contains("INC-05");
        assertThat(way.points())
                .filteredOn(point -> point.day().equals("17 Apr"))
                .singleElement()
                .satisfies(point -> {
                    assertThat(point.changed()).contains("build 2", "big-end shells");
                    assertThat(point.before()).isEqualTo("6.39 h");
                });
    }

    @Test
    void an_incident_without_an_engine_has_no_way_and_no_words_of_one() {
        assertThat(view.facts().of(Incident.class).all())
                .filteredOn(each -> each.fact().engine() == null && each.fact().run() == null)
                .allSatisfy(each -> assertThat(of(each.fact().mark()).way()).isEqualTo(WayLines.NONE));
    }

    @Test
    void prompts_say_what_leads_to_them_and_never_offer_a_cause_that_is_written() {
        PromptLines prompts = of("INC-06").prompts();
        assertThat(prompts.all()).hasSize(4);
        assertThat(prompts.all()).extracting(PromptLines.Prompt::name).contains("Valve spring broken or tired");
        assertThat(prompts.all().get(3).by()).isEqualTo("always asked");
        assertThat(prompts.atOnce()).as("causes are written").isFalse();
        assertThat(prompts.all()).allSatisfy(each -> assertThat(each.predicts()).isNotBlank());
    }

    @Test
    void beside_each_other_each_has_its_own_shape_on_one_face_and_every_mark_in_words() {
        BesideLines lines = beside("INC-04", "INC-09");
        FaceMap map = Objects.requireNonNull(lines.map());
        assertThat(map.areas()).hasSize(lines.marks().size());
        assertThat(map.areas().stream()
                        .map(FaceMap.Area::sign)
                        .map(Object::getClass)
                        .distinct())
                .hasSize(2);
        assertThat(lines.marks()).anyMatch(mark -> mark.startsWith("INC-09: crack, cylinder 4"));
        assertThat(lines.marks()).anyMatch(mark -> mark.startsWith("INC-04: gas track, between 2 and 3"));
        assertThat(lines.joined()).isEqualTo("One came back as the other.");
        assertThat(map.words()).contains(lines.marks());
    }

    /** Printed: the same rods and bolts, rod 3, wrench W2; new shells in between. */
    @Test
    void the_two_big_end_failures_share_rods_bolts_wrench_and_number() {
        BesideLines lines = beside("INC-03", "INC-05");
        assertThat(lines.groups().get(0).title()).isEqualTo("Both had");
        assertThat(lines.groups().get(0).rows())
                .extracting(BesideLines.Row::things)
                .anyMatch(things -> things.contains("RB-05") && things.contains("RS-05"))
                .anyMatch(things -> things.contains("W2"))
                .contains("3");
        assertThat(lines.groups())
                .filteredOn(group -> group.title().equals("Only INC-03 had"))
                .flatExtracting(BesideLines.Group::rows)
                .extracting(BesideLines.Row::things)
                .anyMatch(things -> things.contains("BE-05a"));
        assertThat(lines.map()).isNull();
    }
}
