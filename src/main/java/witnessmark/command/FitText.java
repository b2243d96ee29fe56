package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Contradiction;
import witnessmark.fit.result.Pull;
import witnessmark.fit.result.Term;
import witnessmark.wording.FitWords;
import witnessmark.wording.MeasureWords;
import witnessmark.wording.PullWords;

/** Checks of a build sheet on a terminal, and as JSON in the units people write. */
final class FitText {
    private final Tools tools;
    private final FitWords words;

    FitText(Tools tools) {
        this.tools = tools;
        this.words = new FitWords(tools.texts(), tools.measures());
    }

    /**
     * The answers, the worst first.
     *
     * @param pulls what tightened joints pull with
     * @param columns whether every figure is shown as the column it adds up of; else those that are not as they should be
     */
    void print(
            Consumer<String> out,
            List<Answer> answers,
            List<Contradiction> contradictions,
            List<Pull> pulls,
            boolean columns) {
        contradictions.forEach(found -> out.accept(words.contradiction(found)));
        answers.stream().sorted(Answer.WORST_FIRST).forEach(answer -> print(out, answer, columns || asks(answer)));
        joints(out, pulls, columns);
        out.accept("");
        out.accept(tools.texts().get("fit.caution.computed"));
    }

    private static boolean asks(Answer answer) {
        return answer.verdict() != FitVerdict.INSIDE && answer.verdict() != FitVerdict.NO_LIMIT;
    }

    private void print(Consumer<String> out, Answer answer, boolean column) {
        out.accept(words.answer(answer));
        if (column) {
            if (answer.pattern() != null) {
                out.accept("  " + words.pattern(answer.pattern()));
            }
            Check nearest = answer.nearest();
            if (nearest != null) {
                words.column(nearest).forEach(line -> out.accept(columnLine(line)));
                words.beside(nearest).forEach(line -> out.accept("  " + line));
            }
            if (!words.lacks(answer).isEmpty()) {
                out.accept("  " + words.lacks(answer));
            }
        }
    }

    private void joints(Consumer<String> out, List<Pull> pulls, boolean columns) {
        if (pulls.isEmpty()) {
            return;
        }
        PullWords said = new PullWords(tools.texts(), tools.measures());
        out.accept("");
        for (Pull pull : pulls) {
            out.accept(said.sentence(pull));
            if (columns) {
                said.column(pull).forEach(line -> out.accept(columnLine(line)));
            }
            said.lacks(pull).forEach(line -> out.accept("  " + line));
        }
        out.accept("  " + tools.texts().get("fit.caution.fasteners"));
    }

    static String columnLine(FitWords.Line line) {
        return "    %-58s%14s  %s"
                .formatted(line.what(), line.figure(), line.basis())
                .stripTrailing();
    }

    void putJoints(ObjectNode root, List<Pull> pulls) {
        ArrayNode list = root.putArray("joints");
        for (Pull pull : pulls) {
            ObjectNode node = list.addObject()
                    .put("fasteners", pull.joint().fasteners().code())
                    .put("which", pull.joint().which())
                    .put("method", pull.joint().method().code())
                    .put("value", pull.joint().value())
                    .put("lubricant", pull.joint().lubricant())
                    .put("finding", code(pull.finding()));
            if (pull.each() != null) {
                put(node.putObject("pullNewtons"), pull.each());
            }
            Pull.Hold hold = pull.hold();
            if (hold != null) {
                put(node.putObject("clampNewtons"), hold.clamp());
                node.put("gasNewtons", hold.gas()).put("pressureAssumed", hold.assumed());
            }
            ArrayNode lacks = node.putArray("lacks");
            pull.lacks().forEach(lack -> lacks.add(code(lack)));
        }
    }

    private static String code(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    private static void put(ObjectNode node, Pull.Range range) {
        node.put("least", range.least()).put("likely", range.likely()).put("most", range.most());
    }

    void put(ObjectNode root, List<Answer> answers, List<Contradiction> contradictions) {
        ArrayNode list = root.putArray("answers");
        for (Answer answer : answers) {
            ObjectNode node = list.addObject()
                    .put("of", answer.kind().code())
                    .put("verdict", answer.verdict().code())
                    .put(
                            "unit",
                            new MeasureWords(tools.texts(), tools.measures())
                                    .sign(answer.kind().dimension()));
            if (answer.pattern() != null) {
                node.put("pattern", answer.pattern().shape().name().toLowerCase(Locale.ROOT));
            }
            ArrayNode checks = node.putArray("checks");
            answer.checks().forEach(check -> put(checks.addObject(), check));
        }
        ArrayNode found = root.putArray("contradictions");
        contradictions.forEach(each -> found.add(words.contradiction(each)));
    }

    private static void put(ObjectNode node, Check check) {
        place(node, check.place());
        node.put("verdict", check.verdict().code());
        figure(node, "figure", check.place(), check.value());
        figure(node, "uncertainty", check.place(), check.margin());
        bound(node, "least", check.place(), check.bounds().least());
        bound(node, "most", check.place(), check.bounds().most());
        ArrayNode terms = node.putArray("column");
        for (Term term : check.terms()) {
            ObjectNode line = terms.addObject();
            place(line, term.given().place());
            line.put("of", term.given().place().kind().code())
                    .put("part", term.part().name().toLowerCase(Locale.ROOT))
                    .put("basis", term.given().basis().name().toLowerCase(Locale.ROOT));
            figure(line, "figure", term.given().place(), term.given().value());
        }
        ArrayNode missing = node.putArray("missing");
        check.missing()
                .forEach(place ->
                        place(missing.addObject().put("of", place.kind().code()), place));
    }

    private static void place(ObjectNode node, MeasurePlace place) {
        if (place.number() != null) {
            node.put("number", place.number());
        }
        if (place.spot() != null) {
            node.put("spot", place.spot().code());
        }
    }

    private static void figure(ObjectNode node, String name, MeasurePlace place, @Nullable Long parts) {
        if (parts != null) {
            node.put(name, place.kind().dimension().shown(parts));
        }
    }

    private static void bound(ObjectNode node, String name, MeasurePlace place, @Nullable Bound bound) {
        if (bound != null) {
            figure(node, name, place, bound.value());
            node.put(name + "Source", bound.source());
        }
    }
}
