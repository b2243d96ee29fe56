package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Build;
import witnessmark.domain.Calibration;
import witnessmark.domain.Engine;
import witnessmark.domain.Joint;
import witnessmark.domain.MeterReading;
import witnessmark.domain.Notice;
import witnessmark.domain.NoticeDone;
import witnessmark.domain.NoticeTold;
import witnessmark.domain.Part;
import witnessmark.domain.Seal;
import witnessmark.domain.Tool;
import witnessmark.ledger.JointDoubts;
import witnessmark.ledger.result.JointDoubt;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.SeeStanding;
import witnessmark.logbook.standing.Standing;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Tools, joints, seals, hour meters and notices by their sheets: bad entries are refused beside their field. */
class WhatToolsAndNoticesRefuseTest {
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
        own.save(new AddTool(), "mark", "W3", "note", "half inch").orThrow();
    }

    @AfterEach
    void end() {
        own.close();
    }

    private static String[] joint(String... more) {
        String[] usual = {
            "engine",
            "H1",
            "fasteners",
            "rod bolts",
            "which",
            "all",
            "joint_value",
            "40 N m",
            "tool",
            "W3",
            "when",
            "6 Mar"
        };
        return with(usual, more);
    }

    @Test
    void a_tool_has_a_mark_of_its_own_and_a_calibration_is_due_later_than_it_was_made() {
        own.refuses(new AddTool(), ProblemKind.NAME_TAKEN, "mark", "mark", "w-3");
        own.refuses(new AddTool(), ProblemKind.NEEDED, "mark", "mark", " ");
        own.refuses(new CalibrateTool(), ProblemKind.NOT_FOUND, "tool", "tool", "W9", "by", "Tarn");
        own.refuses(
                new CalibrateTool(),
                ProblemKind.EARLIER_THAN,
                "due",
                "tool",
                "W3",
                "day",
                "5 Mar",
                "due",
                "4 Mar",
                "by",
                "Tarn");
        own.refuses(
                new CalibrateTool(),
                ProblemKind.RUN_IN_FUTURE,
                "day",
                "tool",
                "W3",
                "day",
                "11 Mar 2026",
                "by",
                "Tarn");
        for (String text : List.of("much", "1.5 N m", "--1", "200 %")) {
            own.refuses(
                    new CalibrateTool(),
                    ProblemKind.CANNOT_READ,
                    "as_found",
                    "tool",
                    "W3",
                    "as_found",
                    text,
                    "by",
                    "Tarn");
        }
        own.save(new CalibrateTool(), "tool", "W3", "as_found", "-1.25 %", "due", "5 Mar 2027", "by", "Tarn")
                .orThrow();
        assertThat(own.only(Calibration.class).asFound()).isEqualTo(-125);
        assertThat(own.only(Calibration.class).due()).isEqualTo(LocalDate.of(2027, 3, 5));
    }

    /** The bound is that of ISO 6789-1. Straight after saving it is said what the wrench tightened, until that is accepted. */
    @Test
    void a_wrench_found_outside_its_tolerance_says_what_it_tightened_until_somebody_accepts_it() {
        own.save(new TightenJoint(), joint()).orThrow();
        CalibrateTool sheet = new CalibrateTool();
        assertThat(answer(sheet, "-4").isEmpty()).isTrue();
        own.desk.undo().orThrow();
        SheetNote answer = answer(sheet, "-11").orElseThrow();
        assertThat(answer.key()).isEqualTo("joints_in_doubt");
        assertThat(answer.facts().toString()).contains("W3", "joints_of", "H1", "fasteners=ROD_BOLTS");
        assertThat(doubts()).hasSize(1);
        assertThat(standing().going())
                .filteredOn(on -> on.mark().reason() instanceof JointDoubt)
                .as("on Before we go")
                .singleElement()
                .matches(MarkOn::calls);

        AcceptAsIs accept = new AcceptAsIs();
        Map<SheetField, String> typed = own.filled(accept, "accepted_on", "H1", "accepted_what", "the bolts");
        assertThat(own.sheets.read(accept, typed).of(AcceptAsIs.WHAT).note())
                .isEqualTo(SheetNote.of("names_wrench", "W3"));
        own.save(accept, "accepted_on", "H1", "accepted_what", "tightened with W3", "accepted_why", "stretch is right")
                .orThrow();
        assertThat(doubts()).isEmpty();
    }

    private Optional<SheetNote> answer(LogSheet sheet, String asFound) {
        Map<SheetField, String> typed = own.filled(sheet, "tool", "W3", "as_found", asFound, "by", "Tarn");
        own.sheets.save(sheet, typed, "by hand").orThrow();
        return sheet.afterSaving(new SheetTyped(typed), own.sheets.sight());
    }

    private List<JointDoubt> doubts() {
        return new JointDoubts(own.desk.view().ledger())
                .of(own.the(Engine.class, "H1").id());
    }

    private Standing standing() {
        return SeeStanding.of(own.desk.view());
    }

    @Test
    void a_tool_out_of_use_tightens_nothing_and_one_not_calibrated_in_time_asks() {
        own.save(new CalibrateTool(), "tool", "W3", "day", "1 Feb", "due", "5 Mar", "by", "Tarn")
                .orThrow();
        SheetReading reading = own.sheets.read(new TightenJoint(), own.filled(new TightenJoint(), joint()));
        assertThat(reading.of(TightenJoint.TOOL).problem())
                .isNotNull()
                .extracting(Problem::kind, Problem::stops)
                .containsExactly(ProblemKind.TOOL_NOT_CALIBRATED, false);
        own.save(new UseTool(), "tool", "W3", "day", "6 Mar", "why", "dropped").orThrow();
        own.refuses(new TightenJoint(), ProblemKind.TOOL_OUT_OF_USE, "tool", joint());
        own.save(new TightenJoint(), joint("when", "5 Mar")).orThrow();
        own.refuses(new UseTool(), ProblemKind.NEEDED, "why", "tool", "W3", "day", "6 Mar");
        own.save(new UseTool(), "tool", "W3", "tool_now", "back_in_use").orThrow();
        assertThat(own.only(Tool.class).outOfUse()).isNull();
        own.save(new TightenJoint(), joint()).orThrow();
    }

    /** Two stages of a day are one group; the same fasteners on another day, or others of as many, are another. */
    @Test
    void both_sheets_of_a_tool_count_alike_what_it_tightened_since_it_was_calibrated() {
        SheetNote nothing = SheetNote.of("tightened_nothing");
        tightenedBy("9 Mar", nothing);
        own.save(new TightenJoint(), joint("when", "6 Mar")).orThrow();
        tightenedBy("9 Mar", SheetNote.of("tightened_ever", 1, "H1"));

        own.save(new CalibrateTool(), "tool", "W3", "day", "7 Mar", "by", "gauge room")
                .orThrow();
        LocalDate calibrated = LocalDate.of(2026, 3, 7);
        tightenedBy("9 Mar", SheetNote.of("tightened_nothing_since", calibrated));
        for (String stage : List.of("1 of 2", "2 of 2")) {
            own.save(new TightenJoint(), joint("which", "the last two", "stage", stage, "when", "8 Mar"))
                    .orThrow();
        }
        tightenedBy("9 Mar", SheetNote.of("tightened_since", 1, calibrated, "H1"));
        own.save(new TightenJoint(), joint("fasteners", "head studs", "which", "the last two", "when", "8 Mar"))
                .orThrow();
        own.save(new TightenJoint(), joint("which", "the last two", "when", "9 Mar"))
                .orThrow();
        tightenedBy("9 Mar", SheetNote.of("tightened_since", 3, calibrated, "H1"));
        tightenedBy("8 Mar", SheetNote.of("tightened_since", 2, calibrated, "H1"));
    }

    private void tightenedBy(String day, SheetNote note) {
        Map<SheetField, String> calibrated = own.filled(new CalibrateTool(), "tool", "W3", "day", day);
        Map<SheetField, String> used = own.filled(new UseTool(), "tool", "W3", "day", day);
        assertThat(own.sheets
                        .read(new CalibrateTool(), calibrated)
                        .of(CalibrateTool.TOOL)
                        .note())
                .isEqualTo(note);
        assertThat(own.sheets.read(new UseTool(), used).of(UseTool.TOOL).note()).isEqualTo(note);
    }

    @Test
    void a_joint_says_whether_it_was_slack_before_and_belongs_to_the_open_build() {
        own.refuses(new TightenJoint(), ProblemKind.NEEDED, "joint_value", joint("joint_value", ""));
        own.refuses(new TightenJoint(), ProblemKind.SAYS_OTHERWISE, "second", joint("second", "ada"));
        own.refuses(new TightenJoint(), ProblemKind.RUN_IN_FUTURE, "when", joint("when", "12 Mar 2026"));
        own.save(new WriteBuild(), "engine", "H1", "zones", "head", "opened", "4 Mar")
                .orThrow();
        own.save(new TightenJoint(), joint("stage", "1", "second", "Ben")).orThrow();
        own.save(new TightenJoint(), joint("stage", "2", "cycle", "no")).orThrow();
        assertThat(own.desk.view().facts().of(Joint.class).inForce())
                .extracting(joint -> joint.fact().build())
                .containsOnly(
                        own.desk.view().facts().of(Build.class).all().get(0).id());
        assertThat(own.desk.view().facts().of(Joint.class).inForce())
                .extracting(joint -> joint.fact().cycle())
                .containsExactly(true, false);
    }

    @Test
    void a_seal_is_put_on_once_and_broken_after_that() {
        own.refuses(new PutSeal(), ProblemKind.NEEDED, "seal_owner", "engine", "H1", "seal_number", "4711");
        own.save(new PutSeal(), "engine", "H1", "seal_number", "4711", "seal_owner", "builder", "when", "3 Mar")
                .orThrow();
        own.refuses(
                new PutSeal(),
                ProblemKind.NAME_TAKEN,
                "seal_number",
                "engine",
                "H1",
                "seal_number",
                "47 11",
                "seal_owner",
                "x");
        own.refuses(new BreakSeal(), ProblemKind.EARLIER_THAN, "when", "when", "2 Mar", "why", "covers off");
        own.save(new BreakSeal(), "when", "3 Mar", "why", "covers off").orThrow();
        assertThat(Objects.requireNonNull(own.only(Seal.class).broken()).day()).isEqualTo(LocalDate.of(2026, 3, 3));
        own.refuses(new BreakSeal(), ProblemKind.NEEDED, "seal", "why", "covers off");
    }

    @Test
    void an_hour_meter_that_runs_back_or_faster_than_the_clock_asks() {
        own.save(
                        new FitPart(),
                        "place",
                        "7",
                        "position",
                        "hour meter",
                        "since",
                        "2 Mar",
                        "mark",
                        "HM-1",
                        "part_design_name",
                        "Tock meter")
                .orThrow();
        own.refuses(new ReadMeter(), ProblemKind.NEEDED, "meter_shows", "meter", "HM-1");
        own.refuses(new ReadMeter(), ProblemKind.CANNOT_READ, "meter_shows", "meter_shows", "some");
        own.save(new ReadMeter(), "meter_shows", "100", "when", "5 Mar").orThrow();
        SheetReading fast =
                own.sheets.read(new ReadMeter(), own.filled(new ReadMeter(), "meter_shows", "124.1", "when", "6 Mar"));
        assertThat(fast.of(ReadMeter.SHOWS).problem())
                .isNotNull()
                .extracting(Problem::kind)
                .isEqualTo(ProblemKind.UNUSUAL);
        assertThat(asked("meter_shows", "99.9", "when", "6 Mar")).containsExactly(ProblemKind.METER_BACKWARDS);
        assertThat(asked("meter_shows", "100.1", "when", "4 Mar"))
                .as("a reading put in before one that shows less")
                .containsExactly(ProblemKind.METER_BACKWARDS);
        assertThat(asked("meter_shows", "99.9", "when", "6 Mar", "note", "set back by the maker"))
                .isEmpty();
        own.save(new ReadMeter(), "meter_shows", "124", "when", "6 Mar").orThrow();
        own.save(new ReadMeter(), "meter_shows", "40", "when", "7 Mar").orThrow(); // asked about, never refused
        assertThat(own.desk.view().facts().of(MeterReading.class).size()).isEqualTo(3);
    }

    /** What is asked beside the figure of a meter. */
    private List<ProblemKind> asked(String... typed) {
        return own.sheets.check(own.sheets.read(new ReadMeter(), own.filled(new ReadMeter(), typed))).stream()
                .peek(found -> assertThat(found.field()).isEqualTo(ReadMeter.SHOWS))
                .map(found -> found.problem().kind())
                .toList();
    }

    @Test
    void a_notice_shows_what_it_means_and_where_that_is() {
        own.refuses(
                new WriteNotice(),
                ProblemKind.NEEDED,
                "batch",
                "notice_number",
                "N-1",
                "dated",
                "4 Mar",
                "notice_asks",
                "measure");
        String[] typed = {
            "notice_number",
            "N-1",
            "dated",
            "4 Mar",
            "notice_asks",
            "measure",
            "notice_design",
            "Marl studs",
            "marks",
            "st 1\nST-9"
        };
        SheetReading reading = own.sheets.read(new WriteNotice(), own.filled(new WriteNotice(), typed));
        assertThat(reading.of(WriteNotice.MARKS).readBack())
                .containsExactly(
                        SheetNote.of("parts_meant", 1),
                        SheetNote.of("part_meant", "ST-1", SheetNote.of("where_fitted", "H1")));
        own.save(new WriteNotice(), typed).orThrow();
        assertThat(own.only(Notice.class).marks()).isEqualTo("st 1; ST-9");
        own.refuses(new WriteNotice(), ProblemKind.NAME_TAKEN, "notice_number", typed);
    }

    /** What asks for something here comes first; what does not says why, so that nobody looks for its part. */
    @Test
    void a_notice_that_concerns_nobody_is_last_and_says_so() {
        own.save(new WriteNotice(), notice("N-1", "batch", "nobody has it")).orThrow();
        own.save(new WriteNotice(), notice("N-2", "notice_design", "Marl studs"))
                .orThrow();
        Notice first = own.the(Notice.class, "N-1").fact();
        Notice second = own.the(Notice.class, "N-2").fact();
        for (LogSheet sheet : List.of(new DoNotice(), new TellNotice())) {
            assertThat(notices(sheet))
                    .containsExactly(List.of(second), List.of(SheetNote.of("notice_no_such_part", first)));
        }
        own.save(new DoNotice(), "notice", "N-2", "part", "ST-1", "notice_done", "fine")
                .orThrow();
        assertThat(notices(new DoNotice()))
                .containsExactly(
                        List.of(SheetNote.of("notice_no_such_part", first)),
                        List.of(SheetNote.of("notice_done_on_all", second)));
    }

    private static String[] notice(String number, String... meant) {
        return Stream.concat(
                        Stream.of("notice_number", number, "dated", "4 Mar", "notice_asks", "measure"),
                        Stream.of(meant))
                .toArray(String[]::new);
    }

    private List<List<Object>> notices(LogSheet sheet) {
        return sheet.choices(OwnLogbook.field(sheet, "notice"), new SheetTyped(Map.of()), own.sheets.sight()).stream()
                .map(Choice::facts)
                .toList();
    }

    @Test
    void who_was_told_is_written_down_and_what_it_asks_is_done_once_on_each_such_part() {
        own.save(
                        new WriteNotice(),
                        "notice_number",
                        "N-1",
                        "dated",
                        "4 Mar",
                        "notice_asks",
                        "measure",
                        "notice_design",
                        "Marl studs")
                .orThrow();
        own.refuses(
                new TellNotice(),
                ProblemKind.EARLIER_THAN,
                "when",
                "notice",
                "N-1",
                "told_who",
                "Ben",
                "when",
                "3 Mar");
        own.refuses(new TellNotice(), ProblemKind.NEEDED, "told_who", "notice", "N-1");
        own.save(new TellNotice(), "notice", "N-1", "told_who", "Ben").orThrow();
        assertThat(own.only(NoticeTold.class).who()).isEqualTo("Ben");
        own.refuses(new DoNotice(), ProblemKind.NEEDED, "notice_done", "notice", "N-1", "part", "ST-1");
        own.save(new DoNotice(), "notice", "N-1", "part", "ST-1", "notice_done", "fine")
                .orThrow();
        assertThat(own.only(NoticeDone.class).part())
                .isEqualTo(own.the(Part.class, "ST-1").id());
        own.refuses(
                new DoNotice(),
                ProblemKind.NOT_FOUND,
                "part",
                "notice",
                "N-1",
                "part",
                own.the(Part.class, "ST-1").id().text(),
                "notice_done",
                "again");
    }

    @Test
    void a_notice_for_a_batch_nobody_has_asks_and_is_kept() {
        Map<SheetField, String> typed = own.filled(
                new WriteNotice(),
                "notice_number",
                "N-2",
                "dated",
                "4 Mar",
                "notice_asks",
                "send back",
                "batch",
                "Z-1");
        SheetReading reading = own.sheets.read(new WriteNotice(), typed);
        assertThat(own.sheets.check(reading))
                .extracting(found -> found.problem().kind() + " "
                        + Objects.requireNonNull(found.field()).key())
                .containsExactly("NOTICE_OF_NOTHING batch");
        own.sheets.save(new WriteNotice(), typed, "by hand").orThrow();
    }

    private static String[] with(String[] usual, String... more) {
        return Stream.concat(Arrays.stream(usual), Arrays.stream(more)).toArray(String[]::new);
    }
}
