package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.domain.Lesson;
import witnessmark.fit.result.LessonCheck;
import witnessmark.logbook.lessons.LessonSeen;
import witnessmark.wording.LessonWords;

/** Lessons as text and JSON: those a build sheet is asked, and all there are. */
final class LessonText {
    private final Tools tools;
    private final LessonWords words;

    LessonText(Tools tools) {
        this.tools = tools;
        this.words = new LessonWords(tools.texts(), tools.measures());
    }

    /** What lessons ask of a sheet; nothing where none does. */
    void print(Consumer<String> line, Facts facts, List<LessonCheck> lessons) {
        if (lessons.isEmpty()) {
            return;
        }
        line.accept("");
        line.accept(tools.texts().get("command.lessons.asked"));
        for (LessonCheck check : lessons) {
            Lesson lesson = check.lesson().fact();
            line.accept("  "
                    + tools.texts()
                            .get(
                                    "command.lessons.row",
                                    words.state(check),
                                    words.from(facts, lesson),
                                    words.asks(lesson)));
            line.accept("    " + words.stands(check));
        }
    }

    /** Every lesson, with what sheets answered. */
    void printAll(Consumer<String> line, Facts facts, List<LessonSeen> all) {
        if (all.isEmpty()) {
            line.accept(tools.texts().get("command.lessons.none"));
        }
        for (LessonSeen seen : all) {
            Lesson lesson = seen.lesson().fact();
            line.accept(tools.texts().get("command.lessons.heading", words.from(facts, lesson), lesson.what()));
            line.accept("  " + words.asks(lesson));
            line.accept("  " + words.concerns(facts, lesson));
            line.accept("  " + words.since(lesson));
            String withdrawn = words.withdrawn(lesson, seen.standing());
            if (!withdrawn.isEmpty()) {
                line.accept("  " + withdrawn);
            }
            if (seen.asked().isEmpty()) {
                line.accept("  " + words.neverAsked());
            }
            seen.asked().forEach(each -> line.accept("  " + words.asked(name(each), each.check())));
            line.accept("");
        }
    }

    private String name(LessonSeen.AskedOn asked) {
        return tools.texts()
                .get(
                        "builds.name",
                        asked.engine().fact().number(),
                        asked.build().fact().number());
    }

    void put(ObjectNode root, Facts facts, List<LessonCheck> lessons) {
        ArrayNode rows = root.putArray("lessons");
        lessons.forEach(check -> put(put(rows.addObject(), facts, check.lesson().fact()), check));
    }

    void putAll(ObjectNode root, Facts facts, List<LessonSeen> all) {
        ArrayNode rows = root.putArray("lessons");
        for (LessonSeen seen : all) {
            Lesson lesson = seen.lesson().fact();
            ObjectNode row = put(rows.addObject(), facts, lesson)
                    .put("stands", seen.standing())
                    .put("withdrawnBecause", seen.standing() ? "" : lesson.withdrawnBecause());
            ArrayNode asked = row.putArray("asked");
            seen.asked()
                    .forEach(each -> put(
                            asked.addObject()
                                    .put("engine", each.engine().fact().number())
                                    .put("build", each.build().fact().number()),
                            each.check()));
        }
    }

    private ObjectNode put(ObjectNode row, Facts facts, Lesson lesson) {
        return row.put(
                        "incident",
                        lesson.incident() == null
                                ? null
                                : facts.of(Incident.class)
                                        .get(lesson.incident())
                                        .mark())
                .put("learned", lesson.what())
                .put("asks", words.asks(lesson))
                .put("figure", code(lesson.kind()))
                .put("atLeast", lesson.atLeast())
                .put("atMost", lesson.atMost())
                .put(
                        "design",
                        lesson.design() == null
                                ? null
                                : facts.of(EngineDesign.class)
                                        .get(lesson.design())
                                        .name())
                .put("partKind", code(lesson.partKind()))
                .put("since", lesson.from().text());
    }

    private void put(ObjectNode row, LessonCheck check) {
        row.put("state", check.state().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .put("open", check.open())
                .put("accepted", check.accepted() != null)
                .put("sentence", words.stands(check));
    }

    private static @Nullable String code(@Nullable Coded word) {
        return word == null ? null : word.code();
    }
}
