package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Run;
import witnessmark.ledger.result.Account;
import witnessmark.ledger.result.Charge;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.Desk;
import witnessmark.logbook.SeeLives;
import witnessmark.logbook.Subject;
import witnessmark.logbook.View;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** The life of an engine or a part, as of a day, with the entries behind it when asked. */
@Command(name = "life", mixinStandardHelpOptions = true)
final class LifeOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", paramLabel = "ENGINE-OR-PART", descriptionKey = "command.subject")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private String name;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--entries", descriptionKey = "command.entries")
    private boolean entries;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    LifeOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "life", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        Optional<Subject> subject = Subject.named(view.facts(), name);
        if (subject.isEmpty()) {
            return answer.didNot(
                    List.of(Problem.of(ProblemKind.NOT_FOUND, tools.texts().get("command.engineorpart"), name)));
        }
        if (json) {
            answer.print(asJson(answer, view, subject.get()));
        } else {
            print(answer, view, subject.get());
        }
        return Exit.WORKED;
    }

    private void print(Answer answer, View view, Subject subject) {
        answer.line(tools.texts()
                .get("command.life.heading", subject.name(), tools.measures().date(view.day())));
        SeeLives.firstEntry(view, subject)
                .ifPresent(first -> answer.line(tools.texts()
                        .get("command.life.notYet", tools.measures().date(first.day()))));
        for (Life life : SeeLives.of(view, subject)) {
            answer.line("  %-14s %s"
                    .formatted(
                            tools.words().counter(life.counter()), tools.lives().life(life)));
        }
        if (entries) {
            Account account = SeeLives.account(view, subject, Counter.RUNNING);
            for (Charge charge : account.charges()) {
                answer.line("  %-28s %10s  %s"
                        .formatted(
                                charge.source().fact() instanceof Run run
                                        ? tools.measures().start(run)
                                        : tools.measures().moment(charge.at()),
                                tools.charges().adds(charge, Counter.RUNNING),
                                tools.charges().source(charge)));
            }
        }
    }

    private ObjectNode asJson(Answer answer, View view, Subject subject) {
        ObjectNode root = answer.node();
        root.put("name", subject.name()).put("asOf", view.day().toString());
        Optional<Moment> first = SeeLives.firstEntry(view, subject);
        root.put("firstEntry", first.map(moment -> moment.day().toString()).orElse(null));
        ArrayNode lives = root.putArray("lives");
        // of what has no entry yet no figure is known, and 0 would be one
        for (Life life : first.isPresent() ? List.<Life>of() : SeeLives.of(view, subject)) {
            lives.addObject()
                    .put("counter", life.counter().code())
                    .put("unit", unit(life.counter()))
                    .put("total", life.total())
                    .put("known", life.known())
                    .put("told", life.told())
                    .put("toldLowest", life.toldLowest())
                    .put("toldHighest", life.toldHighest())
                    .put("estimated", life.estimated())
                    .put("atLeast", life.atLeast())
                    .put("runs", life.runs())
                    .put("runsNotRead", life.runsNotRead())
                    .put("complete", life.complete());
        }
        if (entries) {
            ArrayNode rows = root.putArray("entries");
            for (Charge charge :
                    SeeLives.account(view, subject, Counter.RUNNING).charges()) {
                rows.addObject()
                        .put("id", charge.source().id().text())
                        .put("at", charge.at().text())
                        .put(
                                "startKnown",
                                charge.source().fact() instanceof Run run
                                        ? run.startKnown().code()
                                        : null)
                        .put("amount", charge.amount())
                        .put("lowest", charge.lowest())
                        .put("highest", charge.highest())
                        .put("counted", charge.counted().name());
            }
        }
        return root;
    }

    private static String unit(Counter counter) {
        return switch (counter.unit()) {
            case MILLISECOND -> "ms";
            case METRE -> "m";
            case COUNT -> "";
            case DAY -> "d";
        };
    }
}
