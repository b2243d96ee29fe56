package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Trial;
import witnessmark.domain.TrialVerdict;
import witnessmark.logbook.Desk;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.trials.SeeTrials;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;

/** A trial set up and judged by its sheets on the evening the sample opens, what these refuse, and both taken back. */
class TrialSheetsTest {
    private final Desk desk = SampleBook.on(SampleBook.OPENING);
    private final WriteSheet sheets = new WriteSheet(desk, SampleBook.ids(), SheetUnits.metric(DayOrder.DAY_FIRST));

    private Map<SheetField, String> filled(LogSheet sheet, Object... typed) {
        Map<SheetField, String> all = new HashMap<>(sheet.fresh(sheets.sight()));
        for (int i = 0; i < typed.length; i += 2) {
            all.put((SheetField) typed[i], (String) typed[i + 1]);
        }
        return all;
    }

    private void refuses(LogSheet sheet, ProblemKind kind, SheetField beside, Object... typed) {
        assertThat(sheets.read(sheet, filled(sheet, typed)).of(beside).problem())
                .isNotNull()
                .extracting(Problem::kind)
                .isEqualTo(kind);
        assertThat(sheets.save(sheet, filled(sheet, typed), "by hand").didWork())
                .isFalse();
    }

    private String design(String name) {
        return desk.view()
                .facts()
                .of(PartDesign.class)
                .named(name)
                .orElseThrow()
                .id()
                .text();
    }

    private Entry<Trial> trial(String name) {
        return desk.view().facts().of(Trial.class).named(name).orElseThrow();
    }

    @Test
    void a_design_is_tried_against_every_other_of_its_kind_unless_one_is_picked() {
        SetUpTrial sheet = new SetUpTrial();
        sheets.save(
                        sheet,
                        filled(
                                sheet,
                                SetUpTrial.TRIED,
                                design("double springs 290"),
                                SetUpTrial.NAME,
                                "springs of 2026",
                                SetUpTrial.FROM,
                                "1 May",
                                SetUpTrial.HOPED,
                                "no loss of force in 12 h"),
                        "by hand")
                .orThrow();

        Trial made = trial("springs of 2026").fact();
        assertThat(made.usual()).isNull();
        assertThat(made.from()).isEqualTo(LocalDate.parse("2026-05-01"));
        assertThat(made.ended()).isNull();
        assertThat(SeeTrials.all(desk.view())).hasSize(2);
    }

    @Test
    void only_designs_of_its_kind_can_be_what_it_is_held_against_and_the_name_follows() {
        SetUpTrial sheet = new SetUpTrial();
        SheetTyped typed = new SheetTyped(Map.of(SetUpTrial.TRIED, design("steel gasket 0.85 coated")));

        assertThat(sheet.choices(SetUpTrial.USUAL, typed, sheets.sight()))
                .extracting(Choice::key)
                .containsExactly(SheetWord.EVERY_OTHER.key(), design("steel gasket 0.85"));
        assertThat(sheet.follows(SetUpTrial.TRIED, typed, sheets.sight()))
                .containsEntry(SetUpTrial.NAME, "steel gasket 0.85 coated");
    }

    @Test
    void what_is_missing_or_taken_is_said_beside_its_field() {
        SetUpTrial sheet = new SetUpTrial();
        refuses(sheet, ProblemKind.NEEDED, SetUpTrial.TRIED, SetUpTrial.NAME, "x", SetUpTrial.HOPED, "y");
        refuses(
                sheet,
                ProblemKind.NEEDED,
                SetUpTrial.HOPED,
                SetUpTrial.TRIED,
                design("double springs 290"),
                SetUpTrial.NAME,
                "x");
        refuses(
                sheet,
                ProblemKind.NAME_TAKEN,
                SetUpTrial.NAME,
                SetUpTrial.TRIED,
                design("double springs 290"),
                SetUpTrial.NAME,
                "coated head gasket",
                SetUpTrial.HOPED,
                "y");
    }

    @Test
    void a_verdict_has_its_grounds_and_no_day_before_the_trial_began() {
        JudgeTrial sheet = new JudgeTrial();
        assertThat(sheet.fresh(sheets.sight()))
                .as("the only one that goes on is picked")
                .containsEntry(
                        JudgeTrial.TRIAL, trial("coated head gasket").id().text());
        refuses(sheet, ProblemKind.NEEDED, JudgeTrial.BECAUSE, JudgeTrial.VERDICT, TrialVerdict.BETTER.code());
        refuses(
                sheet,
                ProblemKind.EARLIER_THAN,
                JudgeTrial.ON,
                JudgeTrial.VERDICT,
                TrialVerdict.BETTER.code(),
                JudgeTrial.BECAUSE,
                "dry",
                JudgeTrial.ON,
                "1 June");

        long before = desk.view().facts().revision();
        sheets.save(
                        sheet,
                        filled(
                                sheet,
                                JudgeTrial.VERDICT,
                                TrialVerdict.NOT_TOLD.code(),
                                JudgeTrial.BECAUSE,
                                "one gasket, 2.92 h"),
                        "by hand")
                .orThrow();

        assertThat(desk.view().facts().revision()).isEqualTo(before + 1);
        assertThat(SeeTrials.all(desk.view()).get(0).judged()).isTrue();
        assertThat(new JudgeTrial().choices(JudgeTrial.TRIAL, new SheetTyped(Map.of()), sheets.sight()))
                .as("judged once; a correction is made of the trial")
                .isEqualTo(List.of());
    }

    /** As when a sheet stood open while the trial was judged, or what is tried was changed after. */
    @Test
    void what_was_judged_or_is_no_part_of_the_kind_is_said_as_that() {
        Entry<Trial> judged = trial("coated head gasket");
        JudgeTrial sheet = new JudgeTrial();
        sheets.save(
                        sheet,
                        filled(
                                sheet,
                                JudgeTrial.VERDICT,
                                TrialVerdict.NOT_TOLD.code(),
                                JudgeTrial.BECAUSE,
                                "one gasket, 2.92 h"),
                        "by hand")
                .orThrow();

        refuses(
                sheet,
                ProblemKind.JUDGED_ALREADY,
                JudgeTrial.TRIAL,
                JudgeTrial.TRIAL,
                judged.id().text(),
                JudgeTrial.VERDICT,
                TrialVerdict.BETTER.code(),
                JudgeTrial.BECAUSE,
                "dry");
        refuses(
                new SetUpTrial(),
                ProblemKind.DESIGN_OF_ANOTHER_KIND,
                SetUpTrial.USUAL,
                SetUpTrial.TRIED,
                design("double springs 290"),
                SetUpTrial.USUAL,
                design("steel gasket 0.85"),
                SetUpTrial.NAME,
                "x",
                SetUpTrial.HOPED,
                "y");
    }

    /** Oracle: the first of all the answers whose lives are of the part's design, though no answer is worked out. */
    @Test
    void a_part_is_looked_at_in_the_trial_that_stands_first_of_those_of_its_design() {
        SetUpTrial sheet = new SetUpTrial();
        sheets.save(
                        sheet,
                        filled(
                                sheet,
                                SetUpTrial.TRIED,
                                design("steel gasket 0.85"),
                                SetUpTrial.USUAL,
                                design("steel gasket 0.85 coated"),
                                SetUpTrial.NAME,
                                "the other way round",
                                SetUpTrial.FROM,
                                "10 June",
                                SetUpTrial.HOPED,
                                "the same"),
                        "by hand")
                .orThrow();

        desk.view().facts().of(Part.class).inForce().forEach(part -> {
            Optional<Id<Trial>> first = SeeTrials.all(desk.view()).stream()
                    .filter(answer -> answer.triedDesign().name().equals(name(part.fact()))
                            || answer.usualDesign() != null
                                    && answer.usualDesign().name().equals(name(part.fact())))
                    .findFirst()
                    .map(answer -> answer.trial().id());
            assertThat(SeeTrials.ofPart(desk.view(), part.id())).isEqualTo(first);
        });
    }

    private String name(Part part) {
        return desk.view().facts().of(PartDesign.class).get(part.design()).name();
    }
}
