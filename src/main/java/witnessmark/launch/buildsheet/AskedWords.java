package witnessmark.launch.buildsheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Facts;
import witnessmark.domain.Lesson;
import witnessmark.fit.result.LessonCheck;
import witnessmark.report.BuildSheet.Answer;
import witnessmark.report.BuildSheet.ByHand;
import witnessmark.report.BuildSheet.Group;
import witnessmark.wording.FitMarks;
import witnessmark.wording.LessonWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words what lessons ask of a sheet, and the lines on which questions are answered by hand. */
final class AskedWords {
    private final Texts texts;
    private final LessonWords words;

    AskedWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.words = new LessonWords(texts, measures);
    }

    @Nullable
    Group of(Facts facts, List<LessonCheck> lessons) {
        return lessons.isEmpty()
                ? null
                : new Group(
                        texts.get("buildsheet.lessons"),
                        lessons.stream().map(check -> answer(facts, check)).toList());
    }

    private Answer answer(Facts facts, LessonCheck check) {
        Lesson lesson = check.lesson().fact();
        return new Answer(
                FitMarks.of(check),
                words.state(check),
                texts.get("buildsheet.lessons.pair", words.from(facts, lesson), words.asks(lesson)),
                List.of(),
                List.of(words.stands(check), lesson.what()),
                "",
                List.of(),
                "");
    }

    /** A line for each question that nobody answered. */
    @Nullable
    ByHand byHand(Facts facts, List<LessonCheck> lessons) {
        List<String> open = lessons.stream()
                .filter(check -> check.open() && check.state() == LessonCheck.State.NOT_ANSWERED)
                .map(check -> texts.get(
                        "buildsheet.lessons.answer",
                        words.from(facts, check.lesson().fact())))
                .toList();
        return open.isEmpty() ? null : new ByHand(open, texts.get("buildsheet.lessons.note"));
    }
}
