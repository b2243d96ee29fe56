package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import witnessmark.domain.ActionCarried;
import witnessmark.domain.Build;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Entry;
import witnessmark.domain.HowStood;
import witnessmark.domain.Incident;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Measurement;
import witnessmark.domain.SignOff;
import witnessmark.fit.result.LessonCheck;
import witnessmark.logbook.lessons.SeeLessons;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.proof.SeeCase;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.study.result.ProofState;
import witnessmark.wording.LessonWords;
import witnessmark.wording.Measures;
import witnessmark.wording.ProofWords;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/**
 * A failure of a team's own, written by sheets from the track to what the owner reads: stripped, its cause found, put right, what it
 * taught asked on the next build sheet and not on the one signed before, and the proof growing while it runs.
 */
class FailureToLessonTest extends ByHand {
    private SheetPage sheet(int build) {
        Entry<Build> found = own.desk
                .view()
                .facts()
                .of(Build.class)
                .where(each -> each.number() == build)
                .get(0);
        return SeeBuildSheet.of(own.desk.view(), found.id()).orElseThrow();
    }

    private Entry<Incident> incident() {
        return own.desk.view().facts().of(Incident.class).all().get(0);
    }

    private CaseSeen seen() {
        return SeeCase.of(own.desk.view(), incident());
    }

    private void rods(String before, String mark, String day) {
        own.save(new TakeOffPart(), "place", "H1", "fitted", fitted(before), "off_when", day, "off_reason", "stripped")
                .orThrow();
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        "rods",
                        "since",
                        day,
                        "mark",
                        mark,
                        "part_design",
                        "Design of RS-1")
                .orThrow();
    }

    private String fitted(String mark) {
        return own.desk
                .view()
                .facts()
                .of(witnessmark.domain.Fitment.class)
                .where(fitment -> fitment.part().equals(part(mark)) && fitment.to() == null)
                .get(0)
                .id()
                .text();
    }

    private void failAndStrip() {
        own.save(
                        new ReportIncident(),
                        "incident_title",
                        "Big end of 3 knocks",
                        "incident_engine",
                        "H1",
                        "incident_car",
                        "7",
                        "incident_severity",
                        "retired",
                        "incident_found",
                        "at a check",
                        "when",
                        "4 Mar",
                        "incident_seen",
                        "knock, copper in the filter")
                .orThrow();
        own.save(new WriteBuild(), "engine", "H1", "zones", "bottom end", "opened", "5 Mar")
                .orThrow();
        own.save(new WriteFinding(), "finding_words", "housing of 3 out of round, 0.031 mm", "finding_on", "5 Mar")
                .orThrow();
        own.save(new WriteCause(), "cause_statement", "housing of rod 3 lost its grip", "cause_area", "part as made")
                .orThrow();
    }

    private void putRight() {
        rods("RS-1", "RS-2", "6 Mar");
        for (String what : List.of("new rods", "bolts by stretch")) {
            own.save(
                            new WriteAction(),
                            "action_kind",
                            "corrective",
                            "action_what",
                            what,
                            "action_done",
                            "6 Mar",
                            "action_engine",
                            "H1")
                    .orThrow();
        }
        own.save(new AskProof(), "proof_by", "running", "proof_after", "2").orThrow();
        own.save(new SignSheet(), "signed_build", sheet(1).build().id().text(), "signed_by", "Ada", "when", "7 Mar")
                .orThrow();
        own.save(new CloseBuild(), "open_build", sheet(1).build().id().text(), "build_closed", "7 Mar")
                .orThrow();
    }

    private void learn() {
        own.save(
                        new WriteLesson(),
                        "lesson_what",
                        "a housing out of round lets its shell fret",
                        "lesson_kind",
                        MeasureKind.BIG_END_OVALITY.code(),
                        "at_most",
                        "0.012",
                        "lesson_part_kind",
                        "rods",
                        "lesson_from",
                        "8 Mar")
                .orThrow();
        own.save(
                        new WriteLesson(),
                        "lesson_what",
                        "bolts tightened low let the cap work",
                        "lesson_question",
                        "Bolts by stretch, gauge in date?",
                        "lesson_part_kind",
                        "rods",
                        "lesson_from",
                        "8 Mar")
                .orThrow();
    }

    @Test
    void from_the_track_to_the_next_build_sheet_and_to_the_page_the_owner_reads() {
        failAndStrip();
        assertThat(seen().proof().state()).isEqualTo(ProofState.OPEN);
        assertThat(seen().evidence().findings()).hasSize(1);
        putRight();
        learn();

        assertThat(own.desk.view().facts().of(ActionCarried.class).all()).hasSize(2);
        assertThat(sheet(1).lessons()).as("signed before anything was learned").isEmpty();
        assertThat(seen().proof().state()).isEqualTo(ProofState.DONE);
        assertThat(seen().proof().together()).as("both came in at once").hasSize(2);

        logRun("30:00", "8000", "9:00");
        assertThat(seen().proof().state()).isEqualTo(ProofState.HOLDING);
        assertThat(seen().proof().ran().millis()).isEqualTo(HOUR / 2);
        assertThat(seen().proof().ranEnough()).isFalse();

        nextSheet();
        ownerReads();
    }

    private void nextSheet() {
        own.save(new WriteBuild(), "engine", "H1", "zones", "bottom end", "opened", "10 Mar", "opened_time", "12:00")
                .orThrow();
        assertThat(sheet(2).lessons()).as("no rods went in yet").isEmpty();
        rods("RS-2", "RS-3", "10 Mar");
        assertThat(sheet(2).lessons())
                .extracting(LessonCheck::state)
                .containsExactlyInAnyOrder(LessonCheck.State.NOT_MEASURED, LessonCheck.State.NOT_ANSWERED);
        String[] sign = {"signed_build", sheet(2).build().id().text(), "signed_by", "Ada", "when", "10 Mar"};
        own.refuses(new SignSheet(), ProblemKind.LESSONS_OPEN, "signed_build", sign);

        own.save(
                        new AnswerLesson(),
                        "answered_build",
                        sheet(2).build().id().text(),
                        "answered_lesson",
                        "bolts tightened low let the cap work",
                        "answered_met",
                        "yes",
                        "answered_words",
                        "0.140 to 0.146 mm")
                .orThrow();
        for (int rod = 1; rod <= 4; rod++) {
            own.write(new Measurement(
                    sheet(2).build().id(),
                    MeasureKind.BIG_END_OVALITY,
                    rod,
                    null,
                    4_000L,
                    "0.004",
                    Moment.endOf(OwnLogbook.TODAY, zone()),
                    null,
                    null,
                    HowStood.NOT_SAID,
                    true,
                    "Ada",
                    ""));
        }
        assertThat(sheet(2).counts().lessons()).isZero();
        own.save(new SignSheet(), sign).orThrow();
        assertThat(own.desk.view().facts().of(SignOff.class).all()).hasSize(2);
    }

    /** By hand: 30 minutes of 2 hours asked for. */
    private void ownerReads() {
        Texts texts = Texts.in(Locale.UK);
        Measures measures = new Measures(texts, Units.METRIC);
        ProofWords proof = new ProofWords(texts, measures);
        assertThat(proof.headline(seen().proof())).startsWith("0.50 h since");
        assertThat(proof.running(seen().proof())).isEqualTo("Asked for before it is closed: 2.00 h, 1.50 h to go");
        assertThat(proof.basis(seen().proof()))
                .first()
                .asString()
                .startsWith("Came in together, so nobody can tell which of them it was: ");
        LessonWords lessons = new LessonWords(texts, measures);
        assertThat(SeeLessons.of(own.desk.view(), incident().id()))
                .allSatisfy(lesson -> assertThat(lesson.asked()).singleElement().satisfies(on -> {
                    assertThat(on.build().fact().number()).isEqualTo(2);
                    assertThat(lessons.state(on.check())).isEqualTo("Met");
                }))
                .hasSize(2);
    }

    @Test
    void it_happens_again_and_the_case_is_no_longer_holding_whoever_closed_it() {
        failAndStrip();
        putRight();
        logRun("30:00", "8000", "9:00");
        own.save(new CloseIncident(), "incident", incident().id().text(), "incident_because", "runs well")
                .orThrow();
        assertThat(seen().proof().state()).isEqualTo(ProofState.CLOSED);

        Map<SheetField, String> again = own.filled(
                new ReportIncident(),
                "incident_title",
                "Knocks again",
                "incident_engine",
                "H1",
                "incident_severity",
                "retired",
                "incident_found",
                "at a check",
                "when",
                "10 Mar",
                "incident_seen",
                "the same knock");
        again.put(ReportIncident.BEFORE, incident().id().text());
        own.sheets.save(new ReportIncident(), again, "by hand").orThrow();

        assertThat(seen().proof().state()).isEqualTo(ProofState.CAME_BACK);
        assertThat(seen().actions())
                .extracting(Entry::fact)
                .extracting(CaseAction::what)
                .hasSize(2);
    }
}
