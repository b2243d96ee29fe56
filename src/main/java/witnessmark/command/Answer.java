package witnessmark.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import witnessmark.outcome.Problem;

/** Prints what a command came to, for people or for programs. */
final class Answer {
    /** Raised when a field changes its meaning or goes; new fields do not raise it. */
    static final int JSON_VERSION = 1;

    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private final Tools tools;

    Answer(Tools tools) {
        this.tools = tools;
    }

    /** A JSON answer to be filled, with its version and the command's name. */
    ObjectNode json(String command) {
        return JSON.createObjectNode().put("version", JSON_VERSION).put("command", command);
    }

    void print(ObjectNode answer) {
        try {
            tools.out().println(JSON.writeValueAsString(answer));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values cannot be written", e);
        }
    }

    void line(String sentence) {
        tools.out().println(sentence);
    }

    /** Prints problems as sentences on standard error. */
    void problems(List<Problem> problems) {
        for (Problem problem : problems) {
            tools.err().println(tools.problems().sentence(problem));
        }
    }

    /** Prints the problems and gives the exit code of something that did not work. */
    int didNot(List<Problem> problems) {
        problems(problems);
        return Exit.DID_NOT;
    }
}
