package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.Severity;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.strip.SeeStrip;
import witnessmark.logbook.strip.WriteStrip;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.study.result.StripLine;

/** A finding on a sheet, of an engine that is taken down and of no incident (design 06: K05 was opened on 15 April and on 16 June). */
class WriteFindingTest {
    private final Desk desk = SampleBook.on(SampleBook.OPENING);
    private final WriteSheet sheets = new WriteSheet(desk, SampleBook.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));
    private final WriteFinding sheet = new WriteFinding();

    private Entry<Engine> engine() {
        return desk.view().facts().of(Engine.class).named("K05").orElseThrow();
    }

    private Entry<Build> build(int number) {
        return SeeStrip.find(desk.view(), engine().id(), number).orElseThrow();
    }

    private Map<SheetField, String> filled(Object... typed) {
        Map<SheetField, String> all = new HashMap<>(sheet.fresh(sheets.sight()));
        all.put(WriteFinding.INCIDENT, "");
        for (int i = 0; i < typed.length; i += 2) {
            SheetField field = (SheetField) typed[i];
            all.put(field, (String) typed[i + 1]);
            all.putAll(sheet.follows(field, new SheetTyped(all), sheets.sight()));
        }
        return all;
    }

    private String mark(String part) {
        return part.isEmpty()
                ? ""
                : desk.view().facts().of(Part.class).get(Id.<Part>parse(part)).mark();
    }

    private Finding last() {
        List<Entry<Finding>> all = desk.view().facts().of(Finding.class).all();
        return all.get(all.size() - 1).fact();
    }

    private ProblemKind refused(SheetField beside, Object... typed) {
        Map<SheetField, String> all = filled(typed);
        Problem problem = sheets.read(sheet, all).of(beside).problem();
        assertThat(sheets.save(sheet, all, "by hand").didWork()).isFalse();
        return Objects.requireNonNull(problem).kind();
    }

    /** INC-05 is the one open incident of K05; K03 has none: what is found on it is its own. */
    @Test
    void it_begins_with_the_only_open_incident_of_the_engine_in_view_whatever_is_open_on_others() {
        String june = desk.view()
                .facts()
                .of(Incident.class)
                .named("INC-05")
                .orElseThrow()
                .id()
                .text();
        assertThat(sheet.picksFor(engine().id(), sheets.sight())).containsEntry(WriteFinding.INCIDENT, june);
        Entry<Engine> other = desk.view().facts().of(Engine.class).named("K03").orElseThrow();
        assertThat(sheet.picksFor(other.id(), sheets.sight()))
                .containsEntry(WriteFinding.INCIDENT, "")
                .containsEntry(WriteFinding.ENGINE, other.id().text());
        ReportIncident report = new ReportIncident();
        Map<SheetField, String> typed = new HashMap<>(report.fresh(sheets.sight()));
        typed.put(ReportIncident.TITLE, "Belt off");
        typed.put(ReportIncident.ENGINE, other.id().text());
        typed.put(ReportIncident.SEVERITY, Severity.LOST_TIME.code());
        sheets.save(report, typed, "by hand").orThrow();
        assertThat(Incidents.onlyOpen(sheets.sight())).as("two are open now").isEmpty();
        assertThat(sheet.picksFor(engine().id(), sheets.sight())).containsEntry(WriteFinding.INCIDENT, june);
        assertThat(new WriteCause().picksFor(engine().id(), sheets.sight())).containsEntry(WriteCause.INCIDENT, june);
    }

    @Test
    void an_engine_that_is_apart_brings_its_build_and_a_place_the_part_that_sat_there() {
        Map<SheetField, String> typed = filled(
                WriteFinding.ENGINE,
                engine().id().text(),
                WriteFinding.PLACE,
                FindingPlace.MAIN_SHELL.code(),
                WriteFinding.NUMBER,
                "2",
                WriteFinding.SPOT,
                "lower",
                WriteFinding.MARK,
                FindingMark.SCORED.code());
        assertThat(typed.get(WriteFinding.BUILD)).isEqualTo(build(3).id().text());
        assertThat(mark(typed.get(WriteFinding.PART))).isEqualTo("MS-05a");

        sheets.save(sheet, typed, "by hand").orThrow();
        assertThat(last().incident()).isNull();
        assertThat(last().engine()).isEqualTo(engine().id());
        assertThat(last().build()).isEqualTo(build(3).id());
        assertThat(StripLine.of(last())).isEqualTo(StripLine.MAIN_LOWER);
    }

    /** The same finding comes of the sheet as of the strip report, but for when and by whom. */
    @Test
    void it_is_what_the_strip_report_would_have_written() {
        sheets.save(
                        sheet,
                        filled(
                                WriteFinding.ENGINE,
                                engine().id().text(),
                                WriteFinding.BUILD,
                                build(2).id().text(),
                                WriteFinding.PLACE,
                                FindingPlace.ROD_BOLT.code(),
                                WriteFinding.NUMBER,
                                "2",
                                WriteFinding.MARK,
                                FindingMark.STRETCHED.code()),
                        "by hand")
                .orThrow();
        Finding bySheet = last();
        new WriteStrip(desk, SampleBook.ids())
                .another(
                        new WriteStrip.Where(build(2).id(), StripLine.ROD_BOLT, 2),
                        new WriteStrip.Seen(FindingMark.STRETCHED, null),
                        "by key")
                .orThrow();
        Finding onReport = last();
        assertThat(onReport).isNotSameAs(bySheet);
        assertThat(bySheet)
                .usingRecursiveComparison()
                .ignoringFields("at", "by")
                .isEqualTo(onReport);
    }

    @Test
    void the_lists_are_of_that_engine_what_lies_open_first() {
        SheetTyped typed = new SheetTyped(filled(
                WriteFinding.ENGINE,
                engine().id().text(),
                WriteFinding.BUILD,
                build(2).id().text()));
        assertThat(sheet.choices(WriteFinding.PART, typed, sheets.sight()))
                .extracting(choice -> mark(choice.key()))
                .contains("BE-05a", "CR-05")
                .doesNotContain("BE-05b", "HD-06");
        assertThat(sheet.choices(WriteFinding.PLACE, typed, sheets.sight()))
                .hasSize(FindingPlace.values().length + 1)
                .extracting(Choice::key)
                .startsWith("")
                .satisfies(keys -> assertThat(keys.indexOf(FindingPlace.SUMP.code()))
                        .isLessThan(keys.indexOf(FindingPlace.PLUG.code())));
        assertThat(sheet.choices(WriteFinding.BUILD, typed, sheets.sight())).hasSize(4);
    }

    @Test
    void it_wants_an_incident_or_an_engine_and_no_strip_before_the_engine_was_opened() {
        assertThat(refused(WriteFinding.INCIDENT, WriteFinding.WORDS, "oil on the belt"))
                .isEqualTo(ProblemKind.NEEDED);
        assertThat(refused(
                        WriteFinding.WHEN,
                        WriteFinding.ENGINE,
                        engine().id().text(),
                        WriteFinding.WORDS,
                        "oil on the belt",
                        WriteFinding.WHEN,
                        "1 Jun"))
                .isEqualTo(ProblemKind.EARLIER_THAN);
    }

    @Test
    void what_is_seen_on_an_engine_that_is_together_is_of_no_build() {
        sheets.save(
                        sheet,
                        filled(
                                WriteFinding.ENGINE,
                                engine().id().text(),
                                WriteFinding.BUILD,
                                "",
                                WriteFinding.WORDS,
                                "wet round the front seal"),
                        "by hand")
                .orThrow();
        assertThat(last().build()).isNull();
        assertThat(last().engine()).isEqualTo(engine().id());
    }

    /** An engine in view is what is meant, unless it is that of the one open incident, as K05 is of INC-05. */
    @Test
    void the_engine_in_view_is_picked_unless_the_only_open_incident_is_of_it() {
        assertThat(sheet.picksFor(engine().id(), sheets.sight())).containsOnlyKeys(WriteFinding.INCIDENT);
        Id<Engine> other =
                desk.view().facts().of(Engine.class).named("K03").orElseThrow().id();
        assertThat(sheet.picksFor(other, sheets.sight()))
                .containsEntry(WriteFinding.INCIDENT, "")
                .containsEntry(WriteFinding.ENGINE, other.text())
                .containsEntry(WriteFinding.BUILD, "");
    }
}
