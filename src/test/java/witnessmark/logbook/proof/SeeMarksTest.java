package witnessmark.logbook.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceMark;
import witnessmark.domain.FaceMarkKind;
import witnessmark.domain.Incident;
import witnessmark.logbook.View;
import witnessmark.logbook.proof.MarksOfCases.Marked;
import witnessmark.sample.SampleViews;

/**
 * Marks of the two incidents of HD-06 in the invented season, by its printed tables of low zones and incidents: boiled in May, low
 * and tracked between 2 and 3; cracked and soft at 4 in October.
 */
class SeeMarksTest {
    private static View view;

    @BeforeAll
    static void tellTheSeason() {
        view = SampleViews.on(SampleViews.end().facts(), SampleViews.WINTER);
    }

    private static Entry<Incident> incident(String mark) {
        return view.facts().of(Incident.class).named(mark).orElseThrow();
    }

    private static MarksOfCases of(String... marks) {
        return SeeMarks.of(
                view, Arrays.stream(marks).map(SeeMarksTest::incident).toList());
    }

    private static List<FaceMarkKind> kinds(MarksOfCases.OfCase of) {
        return of.marks().stream()
                .map(Marked::mark)
                .filter(Objects::nonNull)
                .map(FaceMark::kind)
                .toList();
    }

    @Test
    void both_incidents_of_the_head_lie_on_one_face_each_with_what_was_found_then() {
        MarksOfCases marks = of("INC-04", "INC-09");

        assertThat(marks.face()).isNotNull();
        assertThat(marks.severally()).isTrue();
        assertThat(kinds(marks.cases().get(0)))
                .contains(FaceMarkKind.GAS_TRACK, FaceMarkKind.UNSEALED, FaceMarkKind.SPLIT_RING)
                .doesNotContain(FaceMarkKind.CRACK);
        assertThat(kinds(marks.cases().get(1))).containsExactlyInAnyOrder(FaceMarkKind.CRACK, FaceMarkKind.SOFT);
    }

    @Test
    void what_was_found_after_the_skim_is_of_no_incident() {
        assertThat(of("INC-04", "INC-09").cases().get(0).marks())
                .extracting(marked -> marked.look().fact().note())
                .doesNotContain("after the skim");
    }

    @Test
    void an_incident_that_left_nothing_on_a_face_has_no_marks() {
        MarksOfCases marks = of("INC-01", "INC-03");
        assertThat(marks.face()).isNull();
        assertThat(marks.severally()).isFalse();
        assertThat(marks.cases()).allSatisfy(each -> assertThat(each.marks()).isEmpty());
    }

    @Test
    void those_joined_to_it_are_offered_first_with_what_joins_them() {
        List<CaseLinks.Other> others = CaseLinks.of(view, incident("INC-09"));
        assertThat(others).hasSize(8);
        assertThat(others.stream().filter(CaseLinks.Other::linked))
                .extracting(other -> other.incident().fact().mark())
                .contains("INC-07");
        assertThat(others.get(0).linked()).isTrue();
        assertThat(others.stream().map(CaseLinks.Other::why)).contains("cylinder 4 of K06 both times");
    }
}
