package witnessmark.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.logbook.View;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * Prints what a command came to: for people sentences, problems on standard error; for programs one JSON answer on
 * standard output, a refusal too.
 */
final class Answer {
    /** Raised when a field changes its meaning or goes; new fields do not raise it. */
    static final int JSON_VERSION = 1;

    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private final Tools tools;
    private final String command;
    private final boolean json;
    private final List<Problem> met = new ArrayList<>();

    /** @param json whether a program reads the answer */
    Answer(Tools tools, String command, boolean json) {
        this.tools = tools;
        this.command = command;
        this.json = json;
    }

    Tools tools() {
        return tools;
    }

    boolean json() {
        return json;
    }

    /** A JSON answer to be filled, with its version and the command's name. */
    ObjectNode node() {
        return JSON.createObjectNode().put("version", JSON_VERSION).put("command", command);
    }

    /** Prints a JSON answer of something that worked, with the problems met on the way. */
    void print(ObjectNode answer) {
        print(answer, true, null);
    }

    /** The same of something that may not have come to what was asked for. */
    void print(ObjectNode answer, boolean worked) {
        print(answer, worked, null);
    }

    void line(String sentence) {
        tools.out().println(sentence);
    }

    /** Says problems, each once, as sentences on standard error or in the JSON answer. */
    void problems(List<Problem> problems) {
        List<Problem> news =
                problems.stream().filter(problem -> !met.contains(problem)).toList();
        met.addAll(news);
        if (!json) {
            news.forEach(problem -> tools.err().println(tools.problems().sentence(problem)));
        }
    }

    /** Whether a problem of that kind was said. */
    boolean said(ProblemKind kind) {
        return met.stream().anyMatch(problem -> problem.kind() == kind);
    }

    /** Says the problems and gives the exit code of something that did not work. */
    int didNot(List<Problem> problems) {
        problems(problems);
        if (json) {
            print(node(), false, null);
        }
        return Exit.DID_NOT;
    }

    /** What people call by that name; did-not, with the sentence that says so, where there is none. */
    <F extends Fact> Outcome<Entry<F>> named(View view, Class<F> kind, String name) {
        return view.facts().of(kind).named(name).map(Outcome::worked).orElseGet(() -> unnamed(kind, name));
    }

    /** There is nothing of that kind that people call so. */
    <T> Outcome<T> unnamed(Class<? extends Fact> kind, String name) {
        return Outcome.didNot(Problem.of(ProblemKind.NOT_FOUND, tools.words().one(kind), name));
    }

    /** Says in a sentence why nothing was done, and gives the exit code. */
    int refuse(String sentence, int exit) {
        if (json) {
            print(node(), false, sentence);
        } else {
            tools.err().println(sentence);
        }
        return exit;
    }

    /**
     * Says how much was written to a file, and gives the exit code.
     *
     * @param written how many rows, entries or pages
     * @param counted what they are, as JSON calls it
     * @param done key of the sentence
     */
    int wrote(Outcome<Integer> written, String counted, String done, Path file) {
        if (!written.didWork()) {
            return didNot(written.problems());
        }
        if (json) {
            print(node().put(counted, written.orThrow()).put("file", file.toString()));
        } else {
            line(tools.texts().get(done, written.orThrow(), file.toString()));
        }
        return Exit.WORKED;
    }

    private void print(ObjectNode answer, boolean worked, @Nullable String said) {
        answer.put("worked", worked);
        if (said != null) {
            answer.put("said", said);
        }
        ArrayNode found = answer.putArray("found");
        met.forEach(problem -> describe(found.addObject(), problem));
        try {
            tools.out().println(JSON.writeValueAsString(answer));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values cannot be written", e);
        }
    }

    private void describe(ObjectNode node, Problem problem) {
        node.put("kind", problem.kind().name())
                .put("stops", problem.stops())
                .put("sentence", tools.problems().sentence(problem));
        Place place = problem.place();
        if (place != null) {
            node.put("file", place.file());
            if (place.row() > 0) {
                node.put("row", place.row());
            }
            if (!place.named().isEmpty()) {
                node.put("named", place.named());
            }
            if (place.column() != null) {
                node.put("column", place.column());
            }
        }
    }
}
