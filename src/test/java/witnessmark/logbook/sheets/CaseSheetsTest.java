package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import witnessmark.domain.ActionCarried;
import witnessmark.domain.ActionKind;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseState;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.HowSure;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentLink;
import witnessmark.domain.ProofBy;
import witnessmark.domain.ProofSeen;
import witnessmark.domain.ProofWanted;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Speaks;
import witnessmark.domain.Weighing;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.proof.SeeProof;
import witnessmark.logbook.run.SampleBook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.study.result.ProofState;

/** The investigation of an incident of the sample season written by its sheets, and what these refuse. */
class CaseSheetsTest {
    private final Desk desk = SampleBook.on(SampleBook.OPENING);
    private final WriteSheet sheets = new WriteSheet(desk, SampleBook.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));

    private Map<SheetField, String> filled(LogSheet sheet, Object... typed) {
        Map<SheetField, String> all = new HashMap<>(sheet.fresh(sheets.sight()));
        for (int i = 0; i < typed.length; i += 2) {
            all.put((SheetField) typed[i], (String) typed[i + 1]);
        }
        return all;
    }

    private void save(LogSheet sheet, Object... typed) {
        sheets.save(sheet, filled(sheet, typed), "by hand").orThrow();
    }

    private void refuses(LogSheet sheet, ProblemKind kind, SheetField beside, Object... typed) {
        long before = desk.view().facts().revision();
        assertThat(sheets.read(sheet, filled(sheet, typed)).of(beside).problem())
                .isNotNull()
                .extracting(Problem::kind)
                .isEqualTo(kind);
        Outcome<Written> outcome = sheets.save(sheet, filled(sheet, typed), "by hand");
        assertThat(outcome.didWork()).isFalse();
        assertThat(desk.view().facts().revision()).isEqualTo(before);
    }

    private Entry<Incident> incident(String mark) {
        return desk.view().facts().of(Incident.class).named(mark).orElseThrow();
    }

    private String id(String mark) {
        return incident(mark).id().text();
    }

    private <F extends Fact> F last(Class<F> kind) {
        List<Entry<F>> all = desk.view().facts().of(kind).all();
        return all.get(all.size() - 1).fact();
    }

    private <F extends Fact> int count(Class<F> kind) {
        return desk.view().facts().of(kind).size();
    }

    /** K05 is apart since 16 June: a finding on it is of that build without anybody saying so. */
    @Test
    void a_finding_is_of_the_engine_of_its_incident_and_of_the_build_it_is_apart_in() {
        save(
                new WriteFinding(),
                WriteFinding.INCIDENT,
                id("INC-05"),
                WriteFinding.PLACE,
                FindingPlace.ROD_BOLT.code(),
                WriteFinding.NUMBER,
                "3",
                WriteFinding.MARK,
                FindingMark.STRETCHED.code(),
                WriteFinding.SPOT,
                "A and B");

        Finding finding = last(Finding.class);
        assertThat(finding.number()).isEqualTo(3);
        assertThat(finding.engine()).isEqualTo(incident("INC-05").fact().engine());
        assertThat(Objects.requireNonNull(finding.build())).isNotNull();
    }

    @Test
    void a_finding_says_a_mark_or_what_was_seen_and_cylinders_are_counted_from_one() {
        WriteFinding sheet = new WriteFinding();
        refuses(sheet, ProblemKind.NEEDED, WriteFinding.WORDS, WriteFinding.INCIDENT, id("INC-05"));
        refuses(sheet, ProblemKind.NEEDED, WriteFinding.INCIDENT, WriteFinding.INCIDENT, "", WriteFinding.WORDS, "x");
        assertThat(sheets.read(sheet, filled(sheet, WriteFinding.WORDS, "specks", WriteFinding.NUMBER, "0"))
                        .of(WriteFinding.NUMBER)
                        .problem())
                .isNotNull();
        assertThat(sheets.read(sheet, filled(sheet, WriteFinding.WORDS, "specks", WriteFinding.NUMBER, "three"))
                        .of(WriteFinding.NUMBER)
                        .problem())
                .isNotNull();
    }

    @Test
    void how_a_cause_stands_is_said_with_its_grounds_and_the_word_before_stays() {
        CallCause sheet = new CallCause();
        Entry<Cause> cause = desk.view()
                .facts()
                .of(Cause.class)
                .where(each -> each.statement().equals("housing of rod 3 lost its grip"))
                .get(0);
        int before = count(CauseCall.class);
        Object[] typed = {
            CallCause.CAUSE,
            cause.id().text(),
            CallCause.STATE,
            CauseState.MAIN.code(),
            CallCause.SURE,
            HowSure.SEEN.code(),
            CallCause.BECAUSE,
            ""
        };
        refuses(sheet, ProblemKind.NEEDED, CallCause.BECAUSE, typed);
        typed[7] = "0.031 mm out of round";
        save(sheet, typed);

        assertThat(last(CauseCall.class).state()).isEqualTo(CauseState.MAIN);
        assertThat(count(CauseCall.class)).isEqualTo(before + 1);
        assertThat(sheet.choices(CallCause.CAUSE, new SheetTyped(Map.of()), sheets.sight()))
                .anySatisfy(choice -> assertThat(choice.facts())
                        .contains("INC-05", cause.fact().statement()));
    }

    @Test
    void an_action_that_is_done_is_carried_by_the_engine_and_its_running_counts_from_then() {
        WriteAction sheet = new WriteAction();
        String engine =
                Objects.requireNonNull(incident("INC-05").fact().engine()).text();
        refuses(sheet, ProblemKind.NEEDED, WriteAction.WHAT, WriteAction.KIND, ActionKind.CORRECTIVE.code());
        save(
                sheet,
                WriteAction.INCIDENT,
                id("INC-05"),
                WriteAction.KIND,
                ActionKind.CORRECTIVE.code(),
                WriteAction.WHAT,
                "new rod bolts",
                WriteAction.DONE,
                "7 Jul",
                WriteAction.ENGINE,
                engine);

        assertThat(last(CaseAction.class).done()).isNotNull();
        assertThat(last(ActionCarried.class).engine().text()).isEqualTo(engine);
        assertThat(SeeProof.of(desk.view(), incident("INC-05")).state())
                .as("it has not run since")
                .isEqualTo(ProofState.DONE);
    }

    @Test
    void an_action_to_be_done_and_a_containment_are_carried_by_nothing() {
        int before = count(ActionCarried.class);
        save(
                new WriteAction(),
                WriteAction.INCIDENT,
                id("INC-05"),
                WriteAction.KIND,
                ActionKind.CORRECTIVE.code(),
                WriteAction.WHAT,
                "new crank",
                WriteAction.DUE,
                "31 Aug");
        save(
                new WriteAction(),
                WriteAction.INCIDENT,
                id("INC-05"),
                WriteAction.KIND,
                ActionKind.CONTAINMENT.code(),
                WriteAction.WHAT,
                "not run",
                WriteAction.DONE,
                "7 Jul",
                WriteAction.ENGINE,
                desk.view()
                        .facts()
                        .of(Engine.class)
                        .named("K05")
                        .orElseThrow()
                        .id()
                        .text());

        assertThat(count(ActionCarried.class)).isEqualTo(before);
    }

    @Test
    void proof_is_so_much_running_or_a_look_or_readings_so_many_times() {
        AskProof sheet = new AskProof();
        String incident = id("INC-05");
        refuses(sheet, ProblemKind.NEEDED, AskProof.AFTER, AskProof.BY_WHAT, ProofBy.RUNNING.code());
        refuses(sheet, ProblemKind.NEEDED, AskProof.WHAT, AskProof.BY_WHAT, ProofBy.LOOK.code());
        refuses(
                sheet,
                ProblemKind.NEEDED,
                AskProof.READING,
                AskProof.BY_WHAT,
                ProofBy.READING.code(),
                AskProof.WHAT,
                "clean");
        save(sheet, AskProof.INCIDENT, incident, AskProof.BY_WHAT, ProofBy.RUNNING.code(), AskProof.AFTER, "12.77");
        assertThat(Objects.requireNonNull(last(ProofWanted.class).after()).millis())
                .isEqualTo(45_972_000);
        save(
                sheet,
                AskProof.INCIDENT,
                incident,
                AskProof.BY_WHAT,
                ProofBy.READING.code(),
                AskProof.READING,
                ReadingKind.FILTER.code(),
                AskProof.TIMES,
                "3",
                AskProof.WHAT,
                "clean");
        assertThat(last(ProofWanted.class).times()).isEqualTo(3);
    }

    @Test
    void what_was_seen_is_said_in_words_and_whether_it_was_as_asked_for() {
        save(
                new AskProof(),
                AskProof.INCIDENT,
                id("INC-02"),
                AskProof.BY_WHAT,
                ProofBy.LOOK.code(),
                AskProof.WHAT,
                "retainers as new");
        WriteProof sheet = new WriteProof();
        Id<ProofWanted> wanted = desk.view()
                .facts()
                .of(ProofWanted.class)
                .where(each -> each.what().equals("retainers as new"))
                .get(0)
                .id();
        refuses(sheet, ProblemKind.NEEDED, WriteProof.WORDS, WriteProof.WANTED, wanted.text(), WriteProof.MET, "yes");
        refuses(sheet, ProblemKind.NEEDED, WriteProof.MET, WriteProof.WANTED, wanted.text(), WriteProof.WORDS, "x");
        refuses(
                sheet,
                ProblemKind.ENDS_BEFORE_IT_BEGINS,
                WriteProof.WHEN,
                WriteProof.WANTED,
                wanted.text(),
                WriteProof.MET,
                "yes",
                WriteProof.WORDS,
                "fine",
                WriteProof.WHEN,
                "1 May");
        save(sheet, WriteProof.WANTED, wanted.text(), WriteProof.MET, "no", WriteProof.WORDS, "one is marked");

        assertThat(last(ProofSeen.class).met()).isFalse();
    }

    @Test
    void running_is_not_written_as_seen_since_it_counts_by_itself() {
        save(
                new AskProof(),
                AskProof.INCIDENT,
                id("INC-05"),
                AskProof.BY_WHAT,
                ProofBy.RUNNING.code(),
                AskProof.AFTER,
                "12.77");

        assertThat(new WriteProof().choices(WriteProof.WANTED, new SheetTyped(Map.of()), sheets.sight()))
                .noneMatch(choice -> choice.key()
                        .equals(desk.view()
                                .facts()
                                .of(ProofWanted.class)
                                .where(each -> each.kind() == ProofBy.RUNNING)
                                .get(0)
                                .id()
                                .text()));
    }

    private String cause(String statement) {
        return desk
                .view()
                .facts()
                .of(Cause.class)
                .where(each -> each.statement().equals(statement))
                .stream()
                .map(each -> each.id().text())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_test_is_to_be_made_or_was_made_and_says_what_it_found() {
        String grip = cause("housing of rod 3 lost its grip");
        WriteTest sheet = new WriteTest();
        refuses(sheet, ProblemKind.NEEDED, WriteTest.CAUSE, WriteTest.CAUSE, "", WriteTest.WHAT, "bore gauge");
        refuses(sheet, ProblemKind.NEEDED, WriteTest.WHAT, WriteTest.CAUSE, grip);
        refuses(
                sheet,
                ProblemKind.NEEDED,
                WriteTest.FOUND,
                WriteTest.CAUSE,
                grip,
                WriteTest.WHAT,
                "free length of the bolts",
                WriteTest.DONE,
                "2026-07-02");

        save(sheet, WriteTest.CAUSE, grip, WriteTest.WHAT, "free length of the bolts", WriteTest.DUE, "2026-07-20");
        assertThat(last(CauseTest.class).done()).isNull();
        assertThat(last(CauseTest.class).due()).isEqualTo("2026-07-20");
        save(
                sheet,
                WriteTest.CAUSE,
                grip,
                WriteTest.WHAT,
                "hardness of the housing",
                WriteTest.DONE,
                "2026-07-02",
                WriteTest.FOUND,
                "as new");
        assertThat(last(CauseTest.class).found()).isEqualTo("as new");
        assertThat(sheet.written(last(CauseTest.class), sheets.sight()).orElseThrow())
                .containsEntry(WriteTest.DONE, "2026-07-02")
                .containsEntry(WriteTest.FOUND, "as new");
    }

    @Test
    void two_incidents_are_linked_once_with_what_joins_them_and_none_with_itself() {
        LinkIncidents sheet = new LinkIncidents();
        refuses(
                sheet,
                ProblemKind.NEEDED,
                LinkIncidents.WHY,
                LinkIncidents.INCIDENT,
                id("INC-04"),
                LinkIncidents.OTHER,
                id("INC-02"));
        assertThat(sheet.choices(
                        LinkIncidents.OTHER,
                        new SheetTyped(Map.of(LinkIncidents.INCIDENT, id("INC-04"))),
                        sheets.sight()))
                .extracting(Choice::key)
                .contains(id("INC-02"))
                .doesNotContain(id("INC-04"));

        save(
                sheet,
                LinkIncidents.INCIDENT,
                id("INC-04"),
                LinkIncidents.OTHER,
                id("INC-02"),
                LinkIncidents.WHY,
                "the same driver");
        assertThat(last(IncidentLink.class).why()).isEqualTo("the same driver");
        refuses(
                sheet,
                ProblemKind.LINKED_ALREADY,
                LinkIncidents.OTHER,
                LinkIncidents.INCIDENT,
                id("INC-02"),
                LinkIncidents.OTHER,
                id("INC-04"),
                LinkIncidents.WHY,
                "once more");
    }

    @Test
    void a_finding_is_weighed_on_its_sheet_against_causes_of_its_own_incident_and_once() {
        WeighOnSheet sheet = new WeighOnSheet();
        String grip = cause("housing of rod 3 lost its grip");
        List<Choice> findings =
                sheet.choices(WeighOnSheet.FINDING, new SheetTyped(Map.of(WeighOnSheet.CAUSE, grip)), sheets.sight());
        assertThat(findings).hasSize((int)
                desk
                        .view()
                        .facts()
                        .of(Finding.class)
                        .where(each -> incident("INC-05").id().equals(each.incident()))
                        .stream()
                        .count());
        String pin =
                desk.view().facts().of(Finding.class).where(each -> each.place() == FindingPlace.CRANK_PIN).stream()
                        .map(each -> each.id().text())
                        .findFirst()
                        .orElseThrow();
        Object[] typed = {WeighOnSheet.CAUSE, grip, WeighOnSheet.FINDING, pin, WeighOnSheet.SPEAKS, Speaks.FOR.code()};
        save(sheet, typed);
        assertThat(last(Weighing.class).speaks()).isEqualTo(Speaks.FOR);
        refuses(sheet, ProblemKind.WEIGHED_ALREADY, WeighOnSheet.FINDING, typed);
    }
}
