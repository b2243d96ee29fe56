package witnessmark.desktop.incidents;

import java.util.ArrayList;
import java.util.List;
import witnessmark.desktop.incidents.PageLines.Row;
import witnessmark.desktop.incidents.PageLines.Section;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Lesson;
import witnessmark.logbook.View;
import witnessmark.logbook.lessons.LessonSeen;
import witnessmark.logbook.lessons.SeeLessons;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.LessonWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** What an incident taught, on its page. */
final class LessonSection {
    private final Texts texts;
    private final Measures measures;
    private final LessonWords words;

    LessonSection(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new LessonWords(texts, measures);
    }

    Section of(View view, Id<Incident> incident) {
        return new Section(
                texts.get("incidents.section.lessons"),
                SeeLessons.of(view, incident).stream()
                        .map(seen -> row(view, seen))
                        .toList(),
                "",
                texts.get("incidents.none.lessons"),
                Prefilled.lessonOf(incident),
                texts.get("incidents.add.lessons"));
    }

    private Row row(View view, LessonSeen seen) {
        Lesson lesson = seen.lesson().fact();
        List<String> under = new ArrayList<>();
        under.add(words.concerns(view.facts(), lesson));
        under.add(texts.get("incidents.lesson.asked", seen.asked().size()));
        if (seen.open() > 0) {
            under.add(texts.get("incidents.lesson.open", seen.open()));
        }
        under.add(words.withdrawn(lesson, seen.standing()));
        under.removeIf(String::isEmpty);
        return new Row(
                texts.get(seen.standing() ? "incidents.lesson.stands" : "incidents.lesson.withdrawn"),
                words.asks(lesson),
                measures.shortDate(lesson.from().day()),
                measures.row(under),
                "");
    }
}
