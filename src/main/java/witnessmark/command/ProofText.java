package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.ProofWanted;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.ProofLine;
import witnessmark.study.result.ProofOfCase;
import witnessmark.study.result.UseOfRuns;
import witnessmark.wording.ProofWords;

/** How far fixes are proven, on a terminal and as JSON: running in hours. */
final class ProofText {
    private static final double PER_HOUR = 3_600_000;

    private final Tools tools;
    private final ProofWords words;

    ProofText(Tools tools) {
        this.tools = tools;
        this.words = new ProofWords(tools.texts(), tools.measures());
    }

    void print(Consumer<String> out, List<ProofOfCase> proofs) {
        for (ProofOfCase proof : proofs) {
            out.accept(tools.texts()
                    .get(
                            "command.proof.row",
                            proof.incident().fact().mark(),
                            proof.incident().fact().title()));
            print(out, proof);
        }
    }

    /** One of them, where it is known of which incident. */
    void print(Consumer<String> out, ProofOfCase proof) {
        out.accept("  " + words.headline(proof));
        String counts = words.counts(proof);
        if (!counts.isEmpty()) {
            out.accept("  " + counts);
        }
        String running = words.running(proof);
        if (!running.isEmpty()) {
            out.accept("  " + running);
        }
        proof.lines().forEach(line -> out.accept("    " + words.line(proof, line)));
        words.basis(proof).forEach(line -> out.accept("  " + line));
    }

    ObjectNode asJson(ObjectNode root, List<ProofOfCase> proofs) {
        ArrayNode cases = root.putArray("incidents");
        proofs.forEach(proof -> put(cases.addObject(), proof));
        return root;
    }

    /** One of them. */
    void put(ObjectNode node, ProofOfCase proof) {
        node.put("incident", proof.incident().fact().mark())
                .put("state", proof.state().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .put("said", words.headline(proof))
                .put("since", proof.since() == null ? null : proof.since().text())
                .put("ranHours", hours(proof.ran()))
                .put("atLeast", proof.atLeast());
        ArrayNode failed = node.putArray("failed");
        proof.failed()
                .forEach(each -> failed.addObject()
                        .put("incident", each.incident().fact().mark())
                        .put("afterHours", hours(each.ran()))
                        .put("atLeast", each.atLeast()));
        node.put("neededHours", hours(proof.needed()))
                .put("byRule", proof.byRule())
                .put("reachedItsAge", proof.reachedItsAge())
                .put("everythingThere", proof.allThere());
        ArrayNode lines = node.putArray("asked");
        proof.lines().forEach(line -> put(lines.addObject(), line));
        ArrayNode together = node.putArray("together");
        proof.together().forEach(action -> together.add(action.fact().what()));
        node.put(
                "cameBackAs",
                proof.again() == null ? null : proof.again().fact().mark());
        put(node.putObject("usedBefore"), proof.before());
        put(node.putObject("usedSince"), proof.now());
        node.put("chanceAnyway", Double.isNaN(proof.chance()) ? null : proof.chance())
                .put("hoursForOneInTen", hours(proof.forOneInTen()));
    }

    private static void put(ObjectNode node, ProofLine line) {
        ProofWanted wanted = line.wanted().fact();
        Coded reading = wanted.reading();
        node.put("by", wanted.kind().code())
                .put("what", wanted.what())
                .put("afterHours", hours(wanted.after()))
                .put("reading", reading == null ? null : reading.code())
                .put("times", wanted.times())
                .put("met", line.met())
                .put("state", line.state().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .put("setLate", line.setLate());
        ArrayNode made = node.putArray("seen");
        line.made()
                .forEach(each -> made.addObject()
                        .put("at", each.seen().fact().at().text())
                        .put("hours", hours(each.ran()))
                        .put("asAsked", each.seen().fact().met())
                        .put("words", each.seen().fact().words()));
    }

    private static void put(ObjectNode node, @Nullable UseOfRuns use) {
        if (use == null) {
            return;
        }
        node.put("runs", use.runs())
                .put("highestRpm", use.highest() == null ? null : use.highest().rpm())
                .put("loadedShare", Double.isNaN(use.loadedShare()) ? null : use.loadedShare());
    }

    private static @Nullable Double hours(@Nullable RunningTime time) {
        return time == null ? null : time.millis() / PER_HOUR;
    }
}
