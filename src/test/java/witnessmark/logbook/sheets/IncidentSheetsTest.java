package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Car;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseArea;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.MissedShare;
import witnessmark.domain.Part;
import witnessmark.domain.PartHarm;
import witnessmark.domain.Prevention;
import witnessmark.domain.Run;
import witnessmark.domain.Severity;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.run.SampleBook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Money;
import witnessmark.quantity.typed.DayOrder;

/** Incidents of the sample season written by their sheets, and what these refuse. */
class IncidentSheetsTest {
    private static final long SPRINGS = 12 * 3_600_000L;

    private final Desk desk = SampleBook.on(SampleBook.OPENING);
    private final WriteSheet sheets = new WriteSheet(desk, SampleBook.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));

    private Map<SheetField, String> filled(LogSheet sheet, Object... typed) {
        Map<SheetField, String> all = new HashMap<>(sheet.fresh(sheets.sight()));
        for (int i = 0; i < typed.length; i += 2) {
            all.put((SheetField) typed[i], (String) typed[i + 1]);
        }
        return all;
    }

    private FieldResult read(LogSheet sheet, SheetField field, Object... typed) {
        return sheets.read(sheet, filled(sheet, typed)).of(field);
    }

    private void save(LogSheet sheet, Object... typed) {
        sheets.save(sheet, filled(sheet, typed), "by hand").orThrow();
    }

    private void refuses(LogSheet sheet, ProblemKind kind, SheetField beside, Object... typed) {
        long before = desk.view().facts().revision();
        assertThat(read(sheet, beside, typed).problem())
                .isNotNull()
                .extracting(Problem::kind)
                .isEqualTo(kind);
        Outcome<Written> outcome = sheets.save(sheet, filled(sheet, typed), "by hand");
        assertThat(outcome.didWork()).isFalse();
        assertThat(desk.view().facts().revision()).isEqualTo(before);
    }

    private <F extends Fact> Entry<F> the(Class<F> kind, String word) {
        return desk.view().facts().of(kind).named(word).orElseThrow();
    }

    private <F extends Fact> String id(Class<F> kind, String word) {
        return the(kind, word).id().text();
    }

    private Entry<Run> lastRun() {
        return desk.view().facts().of(Run.class).where(run -> run.car() != null && run.event() != null).stream()
                .max(Comparator.comparing(run -> run.fact().start()))
                .orElseThrow();
    }

    private List<Entry<Cause>> causes(String mark) {
        return desk.view()
                .facts()
                .of(Cause.class)
                .where(cause ->
                        cause.incident().equals(the(Incident.class, mark).id()));
    }

    private List<Entry<IncidentPart>> parts(String mark) {
        return desk.view()
                .facts()
                .of(IncidentPart.class)
                .where(part -> part.incident().equals(the(Incident.class, mark).id()));
    }

    @Test
    void the_next_mark_follows_the_pattern_of_the_last() {
        assertThat(new ReportIncident().fresh(sheets.sight())).containsEntry(ReportIncident.MARK, "INC-06");
    }

    /** The sample's engines in cars: K05 was in 57 until the evening of 15 June, K06 from 18:30 on 27 June. */
    @ParameterizedTest
    @CsvSource({
        "K05, 14 Jun 2026, '', 57",
        "K05, 15 Jun 2026, '', 57",
        "K05, 16 Jun 2026, '', ''",
        "K06, 27 Jun 2026, 18:29, ''",
        "K06, 27 Jun 2026, 18:30, 57",
        "K06, 25 May 2026, '', 41",
        "K03, 8 Jul 2026, '', 41",
        "'', 8 Jul 2026, '', ''"
    })
    void an_engine_that_is_picked_brings_the_car_it_sat_in_then(String engine, String day, String time, String car) {
        String of = engine.isEmpty() ? "" : id(Engine.class, engine);
        Map<SheetField, String> typed = filled(
                new ReportIncident(),
                ReportIncident.ENGINE,
                of,
                ReportIncident.WHEN,
                day,
                ReportIncident.WHEN_TIME,
                time);
        for (SheetField picked : List.of(ReportIncident.ENGINE, ReportIncident.WHEN, ReportIncident.WHEN_TIME)) {
            assertThat(new ReportIncident().follows(picked, new SheetTyped(typed), sheets.sight()))
                    .containsExactly(Map.entry(ReportIncident.CAR, car.isEmpty() ? "" : id(Car.class, car)));
        }
    }

    @Test
    void the_car_follows_neither_a_day_that_cannot_be_read_nor_a_run_that_says_it() {
        ReportIncident sheet = new ReportIncident();
        Map<SheetField, String> typed =
                filled(sheet, ReportIncident.ENGINE, id(Engine.class, "K05"), ReportIncident.WHEN, "30 Feb");
        assertThat(sheet.follows(ReportIncident.ENGINE, new SheetTyped(typed), sheets.sight()))
                .isEmpty();
        typed.putAll(Map.of(
                ReportIncident.WHEN,
                "14 Jun 2026",
                ReportIncident.RUN,
                lastRun().id().text()));
        assertThat(sheet.follows(ReportIncident.ENGINE, new SheetTyped(typed), sheets.sight()))
                .isEmpty();
    }

    @Test
    void the_engine_in_view_is_picked_with_its_car() {
        assertThat(new ReportIncident().picksFor(the(Engine.class, "K03").id(), sheets.sight()))
                .containsEntry(ReportIncident.CAR, id(Car.class, "41"));
        assertThat(new ReportIncident().picksFor(the(Engine.class, "K05").id(), sheets.sight()))
                .as("it lies in the workshop")
                .containsEntry(ReportIncident.CAR, "");
    }

    @Test
    void a_run_that_is_picked_says_event_car_engine_and_when_and_its_lost_share_is_written_with_it() {
        Entry<Run> run = lastRun();
        save(
                new ReportIncident(),
                ReportIncident.TITLE,
                "oil light at turn 6",
                ReportIncident.RUN,
                run.id().text(),
                ReportIncident.SEVERITY,
                Severity.RETIRED.code(),
                ReportIncident.SHARE,
                "50 %");
        Entry<Incident> written = the(Incident.class, "INC-06");
        assertThat(written.fact().run()).isEqualTo(run.id());
        assertThat(written.fact().event()).isEqualTo(run.fact().event());
        assertThat(written.fact().car()).isEqualTo(run.fact().car());
        assertThat(written.fact().engine()).isEqualTo(run.fact().engine());
        assertThat(written.fact().at()).isEqualTo(run.fact().back());
        assertThat(written.fact().closed()).isNull();
        assertThat(desk.view()
                        .facts()
                        .of(MissedShare.class)
                        .where(share -> share.incident().equals(written.id())))
                .extracting(Entry::fact)
                .containsExactly(new MissedShare(null, run.id(), written.id(), 5_000, ""));
    }

    @Test
    void event_car_engine_and_day_are_asked_for_only_without_a_run() {
        ReportIncident sheet = new ReportIncident();
        List<SheetField> ofTheRun =
                List.of(ReportIncident.WHEN, ReportIncident.CAR, ReportIncident.ENGINE, ReportIncident.EVENT);
        assertThat(sheets.read(sheet, filled(sheet)).asked())
                .containsAll(ofTheRun)
                .doesNotContain(ReportIncident.SHARE);
        Map<SheetField, String> onRun =
                filled(sheet, ReportIncident.RUN, lastRun().id().text());
        assertThat(sheets.read(sheet, onRun).asked())
                .contains(ReportIncident.SHARE)
                .doesNotContainAnyElementsOf(ofTheRun);
    }

    /** Oracle: the ledger as of that day, whose runs had all gone out by then. */
    @Test
    void each_part_named_keeps_its_life_as_the_ledger_had_it_then_and_the_sheet_says_so_before() {
        Entry<Part> springs = the(Part.class, "VS-03");
        HarmedPart first = ReportIncident.PARTS.get(0);
        LocalDate day = LocalDate.parse("2026-06-20");
        Object[] typed = {
            ReportIncident.TITLE,
            "spring broken",
            ReportIncident.WHEN,
            "20 Jun",
            ReportIncident.SEVERITY,
            Severity.LOST_RUN.code(),
            first.part(),
            springs.id().text(),
            first.harm(),
            PartHarm.FAILED.code()
        };
        long millis = LifeLedger.of(desk.view().facts(), new AsOf(day, SampleBook.LONDON))
                .life(springs.id(), Counter.RUNNING)
                .total();
        SheetNote note = read(new ReportIncident(), first.part(), typed).note();
        save(new ReportIncident(), typed);
        IncidentPart kept = parts("INC-06").get(0).fact();
        assertThat(Objects.requireNonNull(kept.ran()).millis())
                .isEqualTo(millis)
                .isPositive();
        assertThat(kept.atLeast()).isFalse();
        assertThat(Objects.requireNonNull(kept.limit()).millis()).isEqualTo(SPRINGS);
        assertThat(note).isEqualTo(SheetNote.echo("had_run_of", kept.ran(), kept.limit()));
    }

    @Test
    void a_report_says_what_it_was_when_and_how_bad() {
        ReportIncident sheet = new ReportIncident();
        refuses(sheet, ProblemKind.NEEDED, ReportIncident.TITLE, ReportIncident.SEVERITY, Severity.NOTE.code());
        refuses(sheet, ProblemKind.NEEDED, ReportIncident.SEVERITY, ReportIncident.TITLE, "x");
        refuses(sheet, ProblemKind.NEEDED, ReportIncident.MARK, ReportIncident.MARK, "");
        refuses(sheet, ProblemKind.NAME_TAKEN, ReportIncident.MARK, ReportIncident.MARK, "INC-03");
        refuses(sheet, ProblemKind.RUN_IN_FUTURE, ReportIncident.WHEN, ReportIncident.WHEN, "9 Jul 2026");
        refuses(sheet, ProblemKind.CANNOT_READ, ReportIncident.WHEN, ReportIncident.WHEN, "32 Jul");
        refuses(sheet, ProblemKind.NOT_FOUND, ReportIncident.BEFORE, ReportIncident.BEFORE, "INC-77");
    }

    @Test
    void an_incident_on_a_run_is_not_before_it_and_takes_no_more_than_the_weekend() {
        ReportIncident sheet = new ReportIncident();
        String run = lastRun().id().text();
        SheetField of = ReportIncident.RUN;
        refuses(sheet, ProblemKind.EARLIER_THAN, ReportIncident.WHEN_TIME, of, run, ReportIncident.WHEN_TIME, "00:01");
        refuses(sheet, ProblemKind.OUT_OF_RANGE, ReportIncident.SHARE, of, run, ReportIncident.SHARE, "120 %");
        refuses(sheet, ProblemKind.OUT_OF_RANGE, ReportIncident.SHARE, of, run, ReportIncident.SHARE, "0");
        refuses(sheet, ProblemKind.CANNOT_READ, ReportIncident.SHARE, of, run, ReportIncident.SHARE, "half");
    }

    @Test
    void a_part_is_named_once_by_an_incident() {
        String springs = id(Part.class, "VS-03");
        List<HarmedPart> several = ReportIncident.PARTS;
        refuses(
                new ReportIncident(),
                ProblemKind.PART_NAMED_ALREADY,
                several.get(1).part(),
                several.get(0).part(),
                springs,
                several.get(1).part(),
                springs);
        HarmedPart one = NameIncidentPart.PART;
        NameIncidentPart sheet = new NameIncidentPart();
        String crank = id(Part.class, "CR-05");
        refuses(
                sheet,
                ProblemKind.PART_NAMED_ALREADY,
                one.part(),
                NameIncidentPart.INCIDENT,
                id(Incident.class, "INC-05"),
                one.part(),
                crank);
        refuses(sheet, ProblemKind.NEEDED, one.part());
        save(
                sheet,
                NameIncidentPart.INCIDENT,
                id(Incident.class, "INC-01"),
                one.part(),
                crank,
                one.harm(),
                PartHarm.SUSPECTED.code());
        assertThat(parts("INC-01"))
                .singleElement()
                .satisfies(part -> assertThat(part.fact().ran()).isNotNull());
    }

    @Test
    void what_a_part_had_run_at_another_moment_is_not_worked_out_at_a_glance_and_is_known_once_it_was() {
        NameIncidentPart sheet = new NameIncidentPart();
        Map<SheetField, String> typed = filled(
                sheet,
                NameIncidentPart.INCIDENT,
                id(Incident.class, "INC-03"),
                NameIncidentPart.PART.part(),
                id(Part.class, "CR-05"));
        assertThat(sheets.glance(sheet, filled(sheet))).isPresent();
        assertThat(sheets.glance(sheet, typed)).isEmpty();
        SheetField part = NameIncidentPart.PART.part();
        SheetReading whole = sheets.read(sheet, typed);
        assertThat(sheets.glance(sheet, typed).orElseThrow().of(part)).isEqualTo(whole.of(part));
        typed.put(NameIncidentPart.INCIDENT, id(Incident.class, "INC-05"));
        assertThat(sheets.glance(sheet, typed)).as("another moment").isEmpty();
    }

    /** INC-05 has 10 % given to one cause and another without a share. */
    @Test
    void the_shares_of_one_incident_are_no_more_than_the_whole_and_the_sentence_says_what_is_left() {
        WriteCause sheet = new WriteCause();
        Object[] typed = {
            WriteCause.INCIDENT,
            id(Incident.class, "INC-05"),
            WriteCause.STATEMENT,
            "bolts past their life",
            WriteCause.AREA,
            CauseArea.RECORDS.code(),
            WriteCause.SHARE,
            ""
        };
        assertThat(read(sheet, WriteCause.SHARE, typed).note())
                .isEqualTo(SheetNote.of("cause_left", new Percent(9_000)));
        typed[7] = "90.01 %";
        refuses(sheet, ProblemKind.SHARE_BEYOND_WHOLE, WriteCause.SHARE, typed);
        Problem problem =
                Objects.requireNonNull(read(sheet, WriteCause.SHARE, typed).problem());
        assertThat(problem.facts()).containsExactly(new Percent(9_001), new Percent(9_000));
        typed[7] = "90 %";
        save(sheet, typed);
        assertThat(causes("INC-05")).extracting(cause -> cause.fact().share()).contains(9_000);
        refuses(sheet, ProblemKind.SHARE_BEYOND_WHOLE, WriteCause.SHARE, typed);
    }

    @Test
    void a_cause_says_what_and_where() {
        WriteCause sheet = new WriteCause();
        refuses(sheet, ProblemKind.NEEDED, WriteCause.STATEMENT, WriteCause.AREA, CauseArea.WEAR.code());
        refuses(sheet, ProblemKind.NEEDED, WriteCause.AREA, WriteCause.STATEMENT, "worn");
        refuses(sheet, ProblemKind.NEEDED, WriteCause.BY, WriteCause.BY, "");
        refuses(sheet, ProblemKind.CANNOT_READ, WriteCause.SHARE, WriteCause.SHARE, "most");
        refuses(sheet, ProblemKind.NEEDED, WriteCause.INCIDENT, WriteCause.INCIDENT, "");
    }

    @Test
    void a_written_cause_opens_on_its_sheet_and_its_own_share_does_not_stand_in_its_way() {
        WrittenSheet<Cause> open = sheets.open(causes("INC-04").get(0), List.of(new WriteCause()), LocalDate::toString);
        Map<SheetField, String> typed = new HashMap<>(open.texts());
        assertThat(typed).containsEntry(WriteCause.SHARE, "100");
        typed.put(WriteCause.SHARE, "80");
        open.save(typed, "by hand").orThrow();
        assertThat(causes("INC-04").get(0).fact().share()).isEqualTo(8_000);
    }

    @Test
    void what_would_have_prevented_it_costs_nothing_or_more() {
        WritePrevention sheet = new WritePrevention();
        refuses(sheet, ProblemKind.NEEDED, WritePrevention.WHAT);
        refuses(sheet, ProblemKind.CANNOT_READ, WritePrevention.MONEY, WritePrevention.MONEY, "cheap");
        refuses(sheet, ProblemKind.LESS_THAN_NOTHING, WritePrevention.MONEY, WritePrevention.MONEY, "-5");
        refuses(sheet, ProblemKind.CANNOT_READ, WritePrevention.TAKES, WritePrevention.TAKES, "a day");
        save(
                sheet,
                WritePrevention.WHAT,
                "wrench calibrated",
                WritePrevention.MONEY,
                "85",
                WritePrevention.TAKES,
                "30 min");
        assertThat(desk.view()
                        .facts()
                        .of(Prevention.class)
                        .where(each -> each.what().equals("wrench calibrated")))
                .singleElement()
                .satisfies(each -> {
                    Money money = Objects.requireNonNull(each.fact().money());
                    assertThat(money.minor()).isEqualTo(8_500);
                    assertThat(each.fact().minutes()).isEqualTo(30);
                });
    }

    @Test
    void what_was_lost_because_of_an_incident_has_a_share_once() {
        ShareMissed sheet = new ShareMissed();
        String incident = id(Incident.class, "INC-05");
        MissedShare written = desk.view()
                .facts()
                .of(MissedShare.class)
                .where(share -> share.incident().text().equals(incident))
                .get(0)
                .fact();
        String run = "run:" + Objects.requireNonNull(written.run()).text();
        SheetField of = ShareMissed.INCIDENT;
        assertThat(sheet.choices(ShareMissed.WHAT, new SheetTyped(filled(sheet, of, incident)), sheets.sight()))
                .extracting(Choice::key)
                .contains(run);
        refuses(
                sheet,
                ProblemKind.SHARE_WRITTEN_ALREADY,
                ShareMissed.WHAT,
                of,
                incident,
                ShareMissed.WHAT,
                run,
                ShareMissed.SHARE,
                "50");
        refuses(sheet, ProblemKind.NEEDED, ShareMissed.SHARE, of, incident);
        refuses(sheet, ProblemKind.OUT_OF_RANGE, ShareMissed.SHARE, ShareMissed.SHARE, "0");
        refuses(sheet, ProblemKind.NOT_FOUND, ShareMissed.WHAT, ShareMissed.WHAT, "run:none");
    }

    @Test
    void closing_says_what_is_missing_and_closes_all_the_same_and_it_can_be_opened_again() {
        CloseIncident close = new CloseIncident();
        String incident = id(Incident.class, "INC-05");
        assertThat(close.fresh(sheets.sight())).containsEntry(CloseIncident.INCIDENT, incident);
        assertThat(read(close, CloseIncident.INCIDENT).note())
                .isEqualTo(SheetNote.of("line", SheetNote.echo("incident_unshared", 1)));
        refuses(close, ProblemKind.NEEDED, CloseIncident.BECAUSE);
        refuses(close, ProblemKind.EARLIER_THAN, CloseIncident.WHEN, CloseIncident.WHEN, "1 Jun");
        SheetField of = CloseIncident.INCIDENT;
        refuses(close, ProblemKind.NEEDED, of, of, id(Incident.class, "INC-03"));
        save(close, CloseIncident.BECAUSE, "shells like new at 5 h");
        Incident closed = the(Incident.class, "INC-05").fact();
        assertThat(closed.closed()).isNotNull();
        assertThat(closed.closedBecause()).isEqualTo("shells like new at 5 h");

        ReopenIncident again = new ReopenIncident();
        refuses(again, ProblemKind.NEEDED, ReopenIncident.WHY, ReopenIncident.INCIDENT, incident);
        save(again, ReopenIncident.INCIDENT, incident, ReopenIncident.WHY, "it came back");
        assertThat(the(Incident.class, "INC-05").fact().closed()).isNull();
        assertThat(the(Incident.class, "INC-05").fact().seen()).isEqualTo(closed.seen());
    }

    @Test
    void what_can_be_written_of_an_incident_is_prefilled_with_it() {
        List<LogSheet> all = List.of(
                new NameIncidentPart(),
                new WriteCause(),
                new WritePrevention(),
                new ShareMissed(),
                new WriteFinding(),
                new WriteAction(),
                new AskProof(),
                new LinkIncidents(),
                new CloseIncident(),
                new ReopenIncident(),
                new WriteHold(),
                new WriteLesson());
        for (String mark : List.of("INC-05", "INC-03")) {
            Entry<Incident> incident = the(Incident.class, mark);
            for (Prefilled about : Prefilled.about(incident)) {
                offers(all, about);
            }
        }
        offers(List.of(new ReportIncident()), Prefilled.incidentOn(lastRun().id()));
    }

    private void offers(List<LogSheet> all, Prefilled about) {
        LogSheet sheet = all.stream()
                .filter(each -> each.key().equals(about.sheet()))
                .findFirst()
                .orElseThrow();
        about.texts().forEach((field, text) -> {
            if (field.kind() == FieldKind.CHOICE) {
                assertThat(sheet.choices(field, new SheetTyped(about.texts()), sheets.sight()))
                        .extracting(Choice::key)
                        .contains(text);
            }
        });
    }
}
