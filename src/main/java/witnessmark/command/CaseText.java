package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Part;
import witnessmark.logbook.View;
import witnessmark.logbook.money.IncidentPage;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.proof.Evidence;
import witnessmark.quantity.Moment;
import witnessmark.wording.CauseWords;
import witnessmark.wording.FindingWords;
import witnessmark.wording.IncidentWords;
import witnessmark.wording.MoneyWords;

/** An incident and its investigation on a terminal and as JSON: what happened, what was found, causes, tests, actions. */
final class CaseText {
    private final Tools tools;
    private final IncidentWords words;
    private final CauseWords causes;
    private final FindingWords findings;
    private final ProofText proofs;

    CaseText(Tools tools) {
        this.tools = tools;
        this.words = new IncidentWords(tools.texts(), tools.measures());
        this.causes = new CauseWords(tools.texts(), tools.measures());
        this.findings = new FindingWords(tools.texts(), tools.measures());
        this.proofs = new ProofText(tools);
    }

    /** What happened, then what stands of it, in the order of its page in the window. */
    void print(Consumer<String> out, View view, IncidentPage page, CaseSeen seen) {
        Facts facts = view.facts();
        Incident incident = page.incident().fact();
        out.accept(words.name(incident));
        out.accept(words.told(facts, incident));
        out.accept(tools.texts()
                .get(
                        "command.incident.stands",
                        label(stands(view, page)),
                        tools.measures().date(view.day())));
        page.before().forEach(before -> out.accept(label(words.again(words.name(before.fact())))));
        heading(out, "incidents.section.seen", incident.seen().isBlank());
        if (!incident.seen().isBlank()) {
            out.accept("  " + incident.seen());
        }
        found(out, facts, seen.evidence());
        causes(out, page, seen.evidence());
        section(
                out,
                "incidents.section.tests",
                seen.tests().stream()
                        .map(each -> causes.test(
                                facts, each.fact(), seen.known(each.fact().done()), view.day()))
                        .toList());
        section(
                out,
                "incidents.section.actions",
                seen.actions().stream()
                        .map(each -> causes.action(
                                facts, each.fact(), seen.known(each.fact().done()), view.day()))
                        .toList());
        heading(out, "incidents.section.holds", false);
        proofs.print(out, seen.proof());
        heading(out, "incidents.section.parts", page.parts().isEmpty());
        page.parts().forEach(part -> out.accept("  " + part(facts, part.fact())));
    }

    private String stands(View view, IncidentPage page) {
        Incident incident = page.incident().fact();
        return page.open()
                ? words.open(ChronoUnit.DAYS.between(incident.at().day(), view.day()))
                : words.closed(incident);
    }

    private void heading(Consumer<String> out, String key, boolean empty) {
        out.accept("");
        String heading = tools.texts().get(key);
        out.accept(empty ? tools.texts().get("command.incident.none", heading) : heading);
    }

    private void found(Consumer<String> out, Facts facts, Evidence evidence) {
        heading(out, "command.incident.found", evidence.findings().isEmpty());
        for (Entry<Finding> finding : evidence.findings()) {
            out.accept("  " + findings.whole(facts, finding.fact()));
            for (int i = 0; i < evidence.causes().size(); i++) {
                int number = i + 1;
                Entry<Cause> cause = evidence.causes().get(i);
                evidence.of(finding.id(), cause.id())
                        .ifPresent(said ->
                                out.accept("    " + causes.says(finding.fact(), number, cause.fact(), said.fact())));
            }
        }
    }

    private void causes(Consumer<String> out, IncidentPage page, Evidence evidence) {
        heading(out, "incidents.section.causes", evidence.causes().isEmpty());
        for (int i = 0; i < evidence.causes().size(); i++) {
            Entry<Cause> cause = evidence.causes().get(i);
            line(out, causes.cause(i + 1, cause.fact(), evidence.calls().getOrDefault(cause.id(), List.of())));
        }
        if (!evidence.causes().isEmpty() && page.shareLeft() > 0) {
            out.accept("  " + tools.texts().get("incidents.nobody") + "  ("
                    + new MoneyWords(tools.texts(), tools.measures()).percent(page.shareLeft()) + ")");
        }
    }

    private void section(Consumer<String> out, String key, List<CauseWords.Line> lines) {
        heading(out, key, lines.isEmpty());
        lines.forEach(line -> line(out, line));
    }

    private void line(Consumer<String> out, CauseWords.Line line) {
        String said = tools.texts().get("command.incident.line", line.lead(), line.what());
        out.accept("  " + (line.figure().isEmpty() ? said : said + "  (" + line.figure() + ")"));
        line.under().forEach(each -> out.accept("    " + each));
    }

    private String part(Facts facts, IncidentPart part) {
        String harm = tools.words().word(part.harm());
        return "%-12s %-24s %s"
                .formatted(
                        facts.of(Part.class).get(part.part()).mark(),
                        part.member().isEmpty() ? harm : tools.measures().row(List.of(harm, part.member())),
                        words.had(part));
    }

    private String label(String said) {
        return tools.words().label(said);
    }

    /** The same as JSON, beside what it cost. */
    void put(ObjectNode root, View view, IncidentPage page, CaseSeen seen) {
        Facts facts = view.facts();
        Incident incident = page.incident().fact();
        Moment closed = incident.closed();
        root.put("engine", IncidentWords.engine(facts, incident))
                .put("car", IncidentWords.car(facts, incident))
                .put(
                        "event",
                        incident.event() == null
                                ? null
                                : facts.of(Event.class).get(incident.event()).name())
                .put("found", incident.found().code())
                .put("seen", incident.seen())
                .put("by", incident.by())
                .put("open", page.open())
                .put("closed", page.open() || closed == null ? null : closed.text())
                .put("closedBecause", page.open() ? null : incident.closedBecause());
        ArrayNode before = root.putArray("before");
        page.before().forEach(each -> before.add(each.fact().mark()));
        ArrayNode found = root.putArray("findings");
        seen.evidence().findings().forEach(each -> finding(found.addObject(), seen.evidence(), each));
        ArrayNode all = root.putArray("causes");
        seen.evidence().causes().forEach(each -> cause(all.addObject(), seen.evidence(), each));
        ArrayNode tests = root.putArray("tests");
        seen.tests().forEach(each -> test(tests.addObject(), seen, each.fact()));
        ArrayNode actions = root.putArray("actions");
        seen.actions().forEach(each -> action(actions.addObject(), seen, each.fact()));
        proofs.put(root.putObject("proof"), seen.proof());
        ArrayNode parts = root.putArray("parts");
        page.parts().forEach(each -> part(parts.addObject(), facts, each.fact()));
    }

    private void finding(ObjectNode node, Evidence evidence, Entry<Finding> entry) {
        Finding finding = entry.fact();
        node.put("where", findings.lead(finding))
                .put("mark", finding.mark() == null ? null : finding.mark().code())
                .put("how", finding.how() == null ? null : finding.how().code())
                .put("words", finding.words())
                .put("at", finding.at().text())
                .put("by", finding.by());
        ArrayNode speaks = node.putArray("speaks");
        for (int i = 0; i < evidence.causes().size(); i++) {
            int number = i + 1;
            evidence.of(entry.id(), evidence.causes().get(i).id())
                    .ifPresent(said -> speaks.addObject()
                            .put("cause", number)
                            .put("how", said.fact().speaks().code())
                            .put("why", said.fact().why()));
        }
    }

    private static void cause(ObjectNode node, Evidence evidence, Entry<Cause> entry) {
        Cause cause = entry.fact();
        node.put("area", cause.area().code())
                .put("statement", cause.statement())
                .put("shareHundredths", cause.share())
                .put("state", evidence.state(entry.id()).code());
        ArrayNode calls = node.putArray("calls");
        for (CauseCall call : evidence.calls().getOrDefault(entry.id(), List.of())) {
            calls.addObject()
                    .put("state", call.state().code())
                    .put("sure", call.sure().code())
                    .put("at", call.at().text())
                    .put("because", call.because());
        }
    }

    private static void test(ObjectNode node, CaseSeen seen, CauseTest test) {
        int cause = seen.evidence().causes().stream().map(Entry::id).toList().indexOf(test.cause()) + 1;
        Moment done = seen.known(test.done());
        node.put("cause", cause).put("what", test.what()).put("who", test.who());
        done(node, test.due(), done, seen.until().day());
        node.put("foundOut", done == null ? null : test.found());
    }

    private static void action(ObjectNode node, CaseSeen seen, CaseAction action) {
        node.put("kind", action.kind().code()).put("what", action.what()).put("who", action.who());
        done(node, action.due(), seen.known(action.done()), seen.until().day());
        node.put("note", action.note());
    }

    private static void done(ObjectNode node, @Nullable LocalDate due, @Nullable Moment done, LocalDate today) {
        node.put("due", due == null ? null : due.toString())
                .put("done", done == null ? null : done.text())
                .put("late", CauseWords.late(due, done, today));
    }

    private static void part(ObjectNode node, Facts facts, IncidentPart part) {
        node.put("part", facts.of(Part.class).get(part.part()).mark())
                .put("harm", part.harm().code())
                .put("member", part.member())
                .put("ranMillis", part.ran() == null ? null : part.ran().millis())
                .put("atLeast", part.atLeast())
                .put("note", part.note());
    }
}
