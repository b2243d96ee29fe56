package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Coded;
import witnessmark.logbook.port.EngineClass;
import witnessmark.logbook.port.StartingValue;
import witnessmark.wording.Amounts;

/** What limits usually start from in a class of engine, without a logbook. */
@Command(name = "starting-values", mixinStandardHelpOptions = true)
final class StartingList implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "CLASS", descriptionKey = "command.starting-values.class")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String engineClass;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    StartingList(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        Answer answer = new Answer(tools, "starting-values", json);
        Optional<EngineClass> of = Coded.find(EngineClass.class, engineClass);
        if (of.isEmpty()) {
            return answer.refuse(tools.texts().get("command.starting-values.unknown", engineClass, all()), Exit.USAGE);
        }
        List<StartingValue> values = tools.startingValues().all().stream()
                .filter(value -> value.of() == of.get())
                .toList();
        if (json) {
            ObjectNode root = answer.node().put("class", of.get().code());
            ArrayNode list = root.putArray("startingValues");
            values.forEach(value -> add(list.addObject(), value));
            answer.print(root);
        } else {
            answer.line(tools.texts().get("command.starting-values.note"));
            values.forEach(value -> answer.line(line(value)));
        }
        return Exit.WORKED;
    }

    private static String all() {
        return String.join(
                ", ", Arrays.stream(EngineClass.values()).map(EngineClass::code).toList());
    }

    private String line(StartingValue value) {
        Amounts amounts = new Amounts(tools.texts(), tools.measures());
        String figure = value.low() == null || value.high() == null
                ? ""
                : amounts.limits(value.counter(), value.low(), value.high());
        String what = "%s: %s"
                .formatted(tools.words().word(value.part()), tools.words().word(value.action()));
        String why = value.note().isEmpty() ? value.source() : value.note() + "; " + value.source();
        return "%-28s %-22s %s".formatted(what, figure, why);
    }

    /** Figures in the counter's unit: milliseconds, counts, months of age. */
    private static void add(ObjectNode node, StartingValue value) {
        node.put("part", value.part().code())
                .put("action", value.action().code())
                .put("counter", value.counter().code())
                .put("low", value.low())
                .put("high", value.high())
                .put("note", value.note())
                .put("source", value.source());
    }
}
