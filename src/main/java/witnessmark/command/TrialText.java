package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Trial;
import witnessmark.quantity.Moment;
import witnessmark.study.result.TrialAnswer;
import witnessmark.study.result.TrialLife;
import witnessmark.study.result.TrialSide;
import witnessmark.study.result.TrialTest;
import witnessmark.wording.FindingWords;
import witnessmark.wording.TrialWords;

/** Trials on a terminal and as JSON: ages in hours of the counter that is named. */
final class TrialText {
    private static final double PER_HOUR = 3_600_000;

    private final Tools tools;
    private final TrialWords words;
    private final FindingWords findings;

    TrialText(Tools tools) {
        this.tools = tools;
        this.words = new TrialWords(tools.texts(), tools.measures());
        this.findings = new FindingWords(tools.texts(), tools.measures());
    }

    void print(Consumer<String> out, List<TrialAnswer> trials) {
        if (trials.isEmpty()) {
            out.accept(tools.texts().get("command.trial.none"));
        }
        for (TrialAnswer trial : trials) {
            out.accept(
                    tools.texts().get("command.trial.row", trial.trial().fact().name(), words.against(trial)));
            out.accept("  " + words.stands(trial));
            said(out, words.hoped(trial));
            said(out, words.because(trial));
            side(out, trial, true);
            side(out, trial, false);
            words.test(trial).forEach(line -> out.accept("  " + line));
            words.basis(trial).forEach(line -> out.accept("  " + line));
        }
    }

    private static void said(Consumer<String> out, String line) {
        if (!line.isEmpty()) {
            out.accept("  " + line);
        }
    }

    private void side(Consumer<String> out, TrialAnswer trial, boolean tried) {
        out.accept("  " + words.side(trial, tried));
        for (TrialLife life : (tried ? trial.tried() : trial.usual()).lives()) {
            out.accept("    " + words.life(life));
            life.findings()
                    .forEach(finding -> out.accept("      "
                            + tools.texts()
                                    .get(
                                            "command.trial.finding",
                                            tools.measures()
                                                    .date(finding.fact().at().day()),
                                            findings.words(finding.fact()))));
        }
    }

    ObjectNode asJson(ObjectNode root, List<TrialAnswer> trials) {
        ArrayNode all = root.putArray("trials");
        trials.forEach(trial -> put(all.addObject(), trial));
        return root;
    }

    private void put(ObjectNode node, TrialAnswer answer) {
        Trial trial = answer.trial().fact();
        node.put("trial", trial.name())
                .put("tried", answer.triedDesign().name())
                .put(
                        "usual",
                        answer.usualDesign() == null
                                ? null
                                : answer.usualDesign().name())
                .put("hopedFor", trial.hoped())
                .put("from", trial.from().toString())
                .put("by", trial.by())
                .put("judged", answer.judged())
                .put("said", words.stands(answer))
                .put(
                        "verdict",
                        answer.judged() && trial.verdict() != null
                                ? trial.verdict().code()
                                : null)
                .put("grounds", answer.judged() ? trial.because() : null)
                .put("counter", answer.counter().code())
                .put("renewedAtHours", answer.limit() == null ? null : answer.limit() / PER_HOUR);
        put(node.putObject("ofTried"), answer.tried());
        put(node.putObject("ofUsual"), answer.usual());
        TrialTest test = answer.test();
        if (test != null) {
            boolean enough = test.enough();
            node.putObject("test")
                    .put("failures", test.failures())
                    .put("failed", test.failed())
                    .put("expected", test.expected())
                    .put("room", test.room())
                    .put("roomNeeded", test.needed())
                    .put("enough", enough)
                    .put("chiSquare", enough ? Double.valueOf(test.chiSquare()) : null)
                    .put("p", enough ? Double.valueOf(test.p()) : null);
        }
    }

    private void put(ObjectNode node, TrialSide side) {
        node.put("failed", side.ended(TrialLife.End.FAILED))
                .put("cameOff", side.ended(TrialLife.End.CAME_OFF))
                .put("stillIn", side.ended(TrialLife.End.STILL_IN))
                .put("hours", side.ran() / PER_HOUR)
                .put("neverFitted", side.neverFitted());
        ArrayNode lives = node.putArray("lives");
        side.lives().forEach(life -> put(lives.addObject(), life));
    }

    private void put(ObjectNode node, TrialLife life) {
        String ended = life.end().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String why =
                life.stay().to() == null ? null : life.stay().fitment().fact().why();
        String doubt = words.doubt(life);
        node.put("part", life.part().fact().mark())
                .put("where", life.place())
                .put("position", life.position())
                .put("since", life.stay().from().text())
                .put("until", text(life.stay().to()))
                .put("fromHours", life.entry() / PER_HOUR)
                .put("toHours", life.exit() / PER_HOUR)
                .put("end", ended)
                .put("why", why)
                .put("compared", life.counts())
                .put("doubt", doubt.isEmpty() ? null : doubt);
        ArrayNode incidents = node.putArray("incidents");
        life.harms()
                .forEach(harm -> incidents
                        .addObject()
                        .put("incident", harm.incident().fact().mark())
                        .put("harm", harm.named().fact().harm().code())
                        .put("member", harm.named().fact().member()));
        ArrayNode found = node.putArray("findings");
        life.findings()
                .forEach(finding -> found.addObject()
                        .put("at", finding.fact().at().text())
                        .put("found", findings.words(finding.fact()))
                        .put("aroundDegrees", finding.fact().aroundDegrees())
                        .put("outPercent", finding.fact().outPercent()));
    }

    private static @Nullable String text(@Nullable Moment moment) {
        return moment == null ? null : moment.text();
    }
}
