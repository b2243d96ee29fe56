package witnessmark.logbook.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseState;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Weighing;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;

/** Sees the investigation of an incident as it stood at the end of a day: what came later is not known yet. */
public final class SeeCase {
    private static final List<CauseState> BLAMED_FIRST =
            List.of(CauseState.MAIN, CauseState.CONTRIBUTING, CauseState.OPEN, CauseState.RULED_OUT);

    private SeeCase() {}

    /** Of one incident. */
    public static CaseSeen of(View view, Entry<Incident> incident) {
        Facts facts = view.facts();
        AsOf asOf = view.ledger().asOf();
        List<Entry<Finding>> findings = facts
                .of(Finding.class)
                .where(finding -> incident.id().equals(finding.incident()) && asOf.counts(finding.at()))
                .stream()
                .sorted(Comparator.comparing(finding -> finding.fact().at()))
                .toList();
        List<Entry<Cause>> causes =
                facts.of(Cause.class).where(cause -> cause.incident().equals(incident.id()));
        Set<Id<Cause>> ids = causes.stream().map(Entry::id).collect(Collectors.toSet());
        return new CaseSeen(
                evidence(facts, findings, causes, calls(facts, asOf, ids)),
                openFirst(facts.of(CauseTest.class).where(test -> ids.contains(test.cause())), asOf, CauseTest::done),
                openFirst(
                        facts.of(CaseAction.class)
                                .where(action -> action.incident().equals(incident.id())),
                        asOf,
                        CaseAction::done),
                SeeProof.of(view, incident),
                asOf.last());
    }

    private static Evidence evidence(
            Facts facts,
            List<Entry<Finding>> findings,
            List<Entry<Cause>> causes,
            Map<Id<Cause>, List<CauseCall>> calls) {
        Map<Evidence.Pair, Entry<Weighing>> weighed = new HashMap<>();
        Set<Id<Finding>> known = findings.stream().map(Entry::id).collect(Collectors.toSet());
        facts.of(Weighing.class)
                .where(each -> known.contains(each.finding()))
                .forEach(each -> weighed.put(
                        new Evidence.Pair(each.fact().finding(), each.fact().cause()), each));
        Evidence asWritten = new Evidence(findings, causes, calls, weighed);
        List<Entry<Cause>> blamedFirst = causes.stream()
                .sorted(Comparator.comparingInt(cause -> BLAMED_FIRST.indexOf(asWritten.state(cause.id()))))
                .toList();
        return new Evidence(findings, blamedFirst, calls, weighed);
    }

    private static Map<Id<Cause>, List<CauseCall>> calls(Facts facts, AsOf asOf, Set<Id<Cause>> causes) {
        Map<Id<Cause>, List<CauseCall>> calls = new HashMap<>();
        facts.of(CauseCall.class).where(call -> causes.contains(call.cause()) && asOf.counts(call.at())).stream()
                .map(Entry::fact)
                .sorted(Comparator.comparing(CauseCall::at).reversed())
                .forEach(call -> calls.computeIfAbsent(call.cause(), none -> new ArrayList<>())
                        .add(call));
        return calls;
    }

    private static <F extends Fact> List<Entry<F>> openFirst(
            List<Entry<F>> all, AsOf asOf, Function<F, @Nullable Moment> done) {
        return all.stream()
                .sorted(Comparator.comparing(
                        (Entry<F> each) -> {
                            Moment at = done.apply(each.fact());
                            return at != null && asOf.counts(at) ? at : null;
                        },
                        Comparator.nullsFirst(Comparator.naturalOrder())))
                .toList();
    }
}
