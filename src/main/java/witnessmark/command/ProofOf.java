package witnessmark.command;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.proof.SeeProof;
import witnessmark.outcome.Outcome;
import witnessmark.study.result.ProofOfCase;

/** How far it is proven that what was done about an incident holds; about every incident when none is named. */
@Command(name = "proof", mixinStandardHelpOptions = true)
final class ProofOf implements Callable<Integer> {
    @Mixin
    private Open open = new Open();

    @Parameters(index = "1", arity = "0..1", paramLabel = "INCIDENT", descriptionKey = "command.proof.incident")
    private @Nullable String incident;

    @Option(names = "--as-of", paramLabel = "DAY", descriptionKey = "command.asof")
    private @Nullable String asOf;

    @Option(names = "--json", descriptionKey = "command.json")
    private boolean json;

    private final Tools tools;

    ProofOf(Tools tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() {
        return open.with(new Answer(tools, "proof", json), asOf, this::work);
    }

    private int work(Desk desk, Answer answer) {
        View view = desk.view();
        List<ProofOfCase> proofs;
        if (incident == null) {
            proofs = SeeProof.all(view);
        } else {
            Outcome<Entry<Incident>> found = answer.named(view, Incident.class, incident);
            if (!found.didWork()) {
                return answer.didNot(found.problems());
            }
            proofs = List.of(SeeProof.of(view, found.orThrow()));
        }
        ProofText text = new ProofText(tools);
        if (json) {
            answer.print(text.asJson(answer.node().put("asOf", view.day().toString()), proofs));
        } else {
            text.print(answer::line, proofs);
        }
        return Exit.WORKED;
    }
}
