package witnessmark.desktop.lessons;

import java.util.List;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Facts;
import witnessmark.domain.Lesson;
import witnessmark.logbook.View;
import witnessmark.logbook.lessons.LessonSeen;
import witnessmark.wording.BuildPageWords;
import witnessmark.wording.FitMarks;
import witnessmark.wording.LessonWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words the lessons. The same answer always gives the same lines. */
final class LessonsModel {
    private final Texts texts;
    private final RecordWords records;
    private final LessonWords words;
    private final BuildPageWords builds;

    LessonsModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.records = new RecordWords(texts);
        this.words = new LessonWords(texts, measures);
        this.builds = new BuildPageWords(texts, measures);
    }

    LessonsLines lines(View view, List<LessonSeen> all) {
        long standing = all.stream().filter(LessonSeen::standing).count();
        int open = all.stream().mapToInt(LessonSeen::open).sum();
        return new LessonsLines(
                all.isEmpty()
                        ? texts.get("lessons.page.none")
                        : texts.get("lessons.page.sum", standing, all.size() - standing, open),
                all.stream().map(seen -> lesson(view.facts(), seen)).toList());
    }

    private LessonsLines.Lesson lesson(Facts facts, LessonSeen seen) {
        Lesson lesson = seen.lesson().fact();
        return new LessonsLines.Lesson(
                seen.lesson().id().text(),
                records.label(lesson.what()),
                words.asks(lesson),
                words.concerns(facts, lesson),
                words.since(lesson),
                words.withdrawn(lesson, seen.standing()),
                words.from(facts, lesson),
                lesson.incident() == null ? null : lesson.incident().text(),
                seen.asked().stream().map(this::asked).toList(),
                seen.asked().isEmpty() ? words.neverAsked() : "");
    }

    private LessonsLines.Asked asked(LessonSeen.AskedOn asked) {
        return new LessonsLines.Asked(
                asked.build().id().text(),
                builds.name(asked.engine().fact().number(), asked.build().fact()),
                SeamState.of(FitMarks.of(asked.check())),
                words.state(asked.check()),
                words.stands(asked.check()));
    }
}
