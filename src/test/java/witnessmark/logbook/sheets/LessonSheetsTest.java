package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Build;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.PartKind;
import witnessmark.domain.SignOff;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.LessonCheck;
import witnessmark.logbook.Desk;
import witnessmark.logbook.lessons.SeeLessons;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.run.SampleBook;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;

/** Lessons written, answered and withdrawn by their sheets, and what they keep from being signed: K05 lies apart since June. */
class LessonSheetsTest {
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
        assertThat(sheets.save(sheet, filled(sheet, typed), "by hand").didWork())
                .isFalse();
        assertThat(desk.view().facts().revision()).isEqualTo(before);
    }

    private Entry<Build> k05() {
        Entry<Engine> engine = desk.view().facts().of(Engine.class).named("K05").orElseThrow();
        return desk.view()
                .facts()
                .of(Build.class)
                .where(build -> build.engine().equals(engine.id()) && build.closed() == null)
                .get(0);
    }

    private SheetPage page() {
        return SeeBuildSheet.of(desk.view(), k05().id()).orElseThrow();
    }

    private <F extends Fact> Entry<F> last(Class<F> kind) {
        List<Entry<F>> all = desk.view().facts().of(kind).all();
        return all.get(all.size() - 1);
    }

    private String incident(String mark) {
        return desk.view()
                .facts()
                .of(Incident.class)
                .named(mark)
                .orElseThrow()
                .id()
                .text();
    }

    private void answerTheClamps() {
        save(
                new AnswerLesson(),
                AnswerLesson.BUILD,
                k05().id().text(),
                AnswerLesson.LESSON,
                page().lessons().get(0).lesson().id().text(),
                AnswerLesson.MET,
                SheetWord.YES.key(),
                AnswerLesson.WORDS,
                "hot, both ends");
    }

    private void learnOfHousings() {
        save(
                new WriteLesson(),
                WriteLesson.INCIDENT,
                incident("INC-05"),
                WriteLesson.WHAT,
                "a housing out of round lets its shell fret",
                WriteLesson.KIND,
                MeasureKind.BIG_END_OVALITY.code(),
                WriteLesson.AT_MOST,
                "0.012");
    }

    @Test
    void a_lesson_is_a_figure_with_its_limit_or_a_question() {
        learnOfHousings();
        Lesson figure = last(Lesson.class).fact();
        assertThat(figure.atMost()).isEqualTo(12_000L);
        assertThat(figure.atLeast()).isNull();
        assertThat(figure.question()).isEmpty();
        assertThat(figure.design()).as("the one design there is").isNotNull();

        WriteLesson sheet = new WriteLesson();
        refuses(sheet, ProblemKind.NEEDED, WriteLesson.QUESTION, WriteLesson.WHAT, "something");
        refuses(sheet, ProblemKind.NEEDED, WriteLesson.WHAT, WriteLesson.QUESTION, "Why?");
        refuses(
                sheet,
                ProblemKind.EARLIER_THAN,
                WriteLesson.FROM,
                WriteLesson.INCIDENT,
                incident("INC-05"),
                WriteLesson.WHAT,
                "before it happened",
                WriteLesson.QUESTION,
                "Why?",
                WriteLesson.FROM,
                "1 June");
        refuses(
                sheet,
                ProblemKind.SAYS_OTHERWISE,
                WriteLesson.AT_MOST,
                WriteLesson.WHAT,
                "crossed",
                WriteLesson.KIND,
                MeasureKind.BIG_END_OVALITY.code(),
                WriteLesson.AT_LEAST,
                "0.02",
                WriteLesson.AT_MOST,
                "0.01");
    }

    @Test
    void what_is_written_reads_back_on_its_sheet() {
        learnOfHousings();
        WriteLesson sheet = new WriteLesson();
        Map<SheetField, String> back =
                sheet.written(last(Lesson.class).fact(), sheets.sight()).orElseThrow();
        assertThat(back.get(WriteLesson.AT_MOST)).startsWith("0.012");
        assertThat(back.get(WriteLesson.KIND)).isEqualTo(MeasureKind.BIG_END_OVALITY.code());
    }

    @Test
    void an_open_lesson_keeps_the_sheet_from_being_signed_and_the_build_from_being_closed_under_a_name() {
        Object[] sign = {SignSheet.BUILD, k05().id().text(), SignSheet.BY, "Crew chief"};
        Object[] close = {CloseBuild.BUILD, k05().id().text(), CloseBuild.SIGNED, "Crew chief"};
        refuses(new SignSheet(), ProblemKind.LESSONS_OPEN, SignSheet.BUILD, sign);
        refuses(new CloseBuild(), ProblemKind.LESSONS_OPEN, CloseBuild.SIGNED, close);

        answerTheClamps();

        assertThat(page().openLessons()).isEmpty();
        save(new SignSheet(), sign);
        assertThat(last(SignOff.class).fact().build()).isEqualTo(k05().id());
        save(new CloseBuild(), close);
    }

    @Test
    void what_is_not_met_is_signed_only_with_a_concession_under_a_name() {
        String build = k05().id().text();
        String lesson = page().lessons().get(0).lesson().id().text();
        Object[] sign = {SignSheet.BUILD, build, SignSheet.BY, "Crew chief"};
        Object[] no = {AnswerLesson.BUILD, build, AnswerLesson.LESSON, lesson, AnswerLesson.MET, SheetWord.NO.key()};
        save(new AnswerLesson(), no);
        assertThat(page().lessons().get(0).state()).isEqualTo(LessonCheck.State.NOT_MET);
        refuses(new SignSheet(), ProblemKind.LESSONS_OPEN, SignSheet.BUILD, sign);

        save(
                new AnswerLesson(),
                AnswerLesson.BUILD,
                build,
                AnswerLesson.LESSON,
                lesson,
                AnswerLesson.MET,
                SheetWord.NO.key(),
                AnswerLesson.ACCEPTED,
                "hoses are new, looked at after the warm-up");

        Concession made = last(Concession.class).fact();
        assertThat(made.build()).isEqualTo(k05().id());
        assertThat(last(LessonAnswer.class).fact().concession())
                .isEqualTo(last(Concession.class).id());
        save(new SignSheet(), sign);
    }

    @Test
    void a_figure_is_not_answered_but_measured_or_accepted() {
        answerTheClamps();
        learnOfHousings();
        AnswerLesson sheet = new AnswerLesson();
        String lesson = last(Lesson.class).id().text();
        Map<SheetField, String> typed =
                filled(sheet, AnswerLesson.BUILD, k05().id().text(), AnswerLesson.LESSON, lesson);
        assertThat(sheets.read(sheet, typed).asked()).doesNotContain(AnswerLesson.MET, AnswerLesson.WORDS);
        refuses(
                sheet,
                ProblemKind.NEEDED,
                AnswerLesson.ACCEPTED,
                AnswerLesson.BUILD,
                k05().id().text(),
                AnswerLesson.LESSON,
                lesson);
        assertThat(page().counts().lessons()).isEqualTo(1);
        List<Check> open = page().leftOpen();
        assertThat(open).extracting(check -> check.place().kind()).contains(MeasureKind.BIG_END_OVALITY);

        save(
                sheet,
                AnswerLesson.BUILD,
                k05().id().text(),
                AnswerLesson.LESSON,
                lesson,
                AnswerLesson.ACCEPTED,
                "rods are new, maker's sheet says 0.004");

        assertThat(page().counts().lessons()).isZero();
        assertThat(page().leftOpen())
                .as("what the sheet's own limits ask about, nobody was asked to accept")
                .isEqualTo(open);
        assertThat(last(Concession.class).fact().kind()).isNull();
    }

    /** How many lessons are open on each sheet that was signed. */
    private Map<Id<Build>, Integer> openOnSigned() {
        Map<Id<Build>, Integer> open = new HashMap<>();
        desk.view().facts().of(SignOff.class).inForce().forEach(signed -> {
            Id<Build> build = signed.fact().build();
            SeeBuildSheet.of(desk.view(), build)
                    .ifPresent(page -> open.put(build, page.openLessons().size()));
        });
        return open;
    }

    @Test
    void no_lesson_is_asked_on_a_sheet_that_was_signed_before_it() {
        Map<Id<Build>, Integer> before = openOnSigned();
        Stream<Moment> bySheet = desk.view()
                .facts()
                .of(SignOff.class)
                .inForce()
                .map(each -> each.fact().at());
        Stream<Moment> closed = desk.view()
                .facts()
                .of(Build.class)
                .inForce()
                .filter(build -> !build.fact().signedBy().isBlank())
                .flatMap(build -> Stream.ofNullable(build.fact().closed()));
        Moment signed =
                Stream.concat(bySheet, closed).max(Comparator.naturalOrder()).orElseThrow();
        WriteLesson sheet = new WriteLesson();
        Object[] asked = {
            WriteLesson.FROM,
            "1 January",
            WriteLesson.INCIDENT,
            "",
            WriteLesson.WHAT,
            "learned late",
            WriteLesson.QUESTION,
            "Looked at?"
        };
        refuses(sheet, ProblemKind.LESSON_BEFORE_SIGNING, WriteLesson.FROM, asked);

        asked[1] = signed.day().plusDays(1).toString();
        save(sheet, asked);

        assertThat(openOnSigned()).as("it stands from the day after").isEqualTo(before);
        Entry<Lesson> late = last(Lesson.class);
        Map<SheetField, String> typed =
                new HashMap<>(sheet.written(late.fact(), sheets.sight()).orElseThrow());
        assertThat(correcting(sheet, typed, late)).as("as it stands").isNull();
        typed.put(WriteLesson.FROM, "1 January");
        assertThat(correcting(sheet, typed, late)).isEqualTo(ProblemKind.LESSON_BEFORE_SIGNING);
    }

    @Test
    void a_lesson_that_was_asked_on_signed_sheets_can_still_be_corrected() {
        Entry<Lesson> clamps = page().lessons().get(0).lesson();
        WriteLesson sheet = new WriteLesson();
        Map<SheetField, String> typed =
                new HashMap<>(sheet.written(clamps.fact(), sheets.sight()).orElseThrow());
        typed.put(WriteLesson.WHAT, "clamps come loose");
        assertThat(correcting(sheet, typed, clamps)).isNull();
    }

    private @Nullable ProblemKind correcting(LogSheet sheet, Map<SheetField, String> typed, Entry<?> written) {
        Problem problem = ReadSheet.correct(sheet, new SheetTyped(typed), sheets.sight(), SampleBook.ids(), written)
                .of(WriteLesson.FROM)
                .problem();
        return problem == null ? null : problem.kind();
    }

    @Test
    void a_withdrawn_lesson_is_asked_no_more_and_keeps_its_reason() {
        Entry<Lesson> clamps = page().lessons().get(0).lesson();
        refuses(
                new WithdrawLesson(),
                ProblemKind.NEEDED,
                WithdrawLesson.WHY,
                WithdrawLesson.LESSON,
                clamps.id().text());
        save(
                new WithdrawLesson(),
                WithdrawLesson.LESSON,
                clamps.id().text(),
                WithdrawLesson.WHY,
                "constant-tension clamps everywhere");

        refuses(
                new WithdrawLesson(),
                ProblemKind.LESSON_WITHDRAWN,
                WithdrawLesson.LESSON,
                WithdrawLesson.LESSON,
                clamps.id().text(),
                WithdrawLesson.WHY,
                "again");
        assertThat(page().lessons()).isEmpty();
        assertThat(SeeLessons.all(desk.view())).singleElement().satisfies(seen -> {
            assertThat(seen.standing()).isFalse();
            assertThat(seen.lesson().fact().withdrawnBecause()).startsWith("constant-tension");
            assertThat(seen.asked()).as("what was answered stays").isNotEmpty();
        });
    }

    @Test
    void a_lesson_of_a_kind_of_part_waits_until_one_goes_in() {
        save(
                new WriteLesson(),
                WriteLesson.WHAT,
                "stretch",
                WriteLesson.QUESTION,
                "By stretch?",
                WriteLesson.PART_KIND,
                PartKind.ROD_BOLTS.code());
        assertThat(page().lessons())
                .extracting(check -> check.lesson().fact().what())
                .doesNotContain("stretch");
    }
}
