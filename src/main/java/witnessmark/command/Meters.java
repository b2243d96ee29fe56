package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.logbook.Desk;
import witnessmark.logbook.shelf.SeeMeters;
import witnessmark.wording.MeterWords;

/** Every hour meter from reading to reading, held against what was logged. */
@Command(name = "meters", mixinStandardHelpOptions = true)
final class Meters implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    Meters(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "meters", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        List<MeterStretch> all = SeeMeters.of(desk.view());
        if (json) {
            ObjectNode root = answer.node();
            root.put("asOf", desk.view().day().toString());
            ArrayNode stretches = root.putArray("stretches");
            all.forEach(stretch -> add(stretches.addObject(), stretch));
            answer.print(root);
        } else {
            print(answer, all);
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, List<MeterStretch> all) {
        MeterWords words = new MeterWords(tools.texts(), tools.measures());
        if (all.isEmpty()) {
            answer.line(tools.texts().get("command.meters.none"));
        }
        for (MeterStretch stretch : all) {
            String note = stretch.to().fact().note();
            answer.line("%-10s %-18s %-36s  %s"
                    .formatted(
                            stretch.meter().fact().mark(),
                            words.between(stretch),
                            words.both(stretch),
                            note.isBlank() ? words.finding(stretch) : words.finding(stretch) + "; " + note)
                    .stripTrailing());
        }
    }

    /** Times in milliseconds. */
    static void add(ObjectNode node, MeterStretch stretch) {
        node.put("meter", stretch.meter().fact().mark())
                .put("from", stretch.from().fact().at().text())
                .put("to", stretch.to().fact().at().text())
                .put("shown", stretch.shown())
                .put("loggedLowest", stretch.lowest())
                .put("loggedHighest", stretch.highest())
                .put("runs", stretch.runs())
                .put(
                        "finding",
                        stretch.finding().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .put("apart", stretch.apart())
                .put("note", stretch.to().fact().note());
    }
}
