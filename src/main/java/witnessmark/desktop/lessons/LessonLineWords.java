package witnessmark.desktop.lessons;

import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Facts;
import witnessmark.domain.Lesson;
import witnessmark.fit.result.LessonCheck;
import witnessmark.wording.FitMarks;
import witnessmark.wording.LessonWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words what lessons ask of a build. */
public final class LessonLineWords {
    private final Texts texts;
    private final LessonWords lessons;

    public LessonLineWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.lessons = new LessonWords(texts, measures);
    }

    /** @param answerable whether an answer can be written */
    public LessonLine line(Facts facts, LessonCheck check, boolean answerable) {
        Lesson lesson = check.lesson().fact();
        boolean asksForAnswer = check.state() != LessonCheck.State.MET && answerable;
        return new LessonLine(
                check.lesson().id().text(),
                SeamState.of(FitMarks.of(check)),
                lessons.state(check),
                lessons.asks(lesson),
                lessons.stands(check),
                lesson.what(),
                lessons.from(facts, lesson),
                lesson.incident() == null ? null : lesson.incident().text(),
                asksForAnswer
                        ? texts.get(lesson.kind() == null ? "lessons.line.answer" : "lessons.line.accept")
                        : null);
    }
}
