package witnessmark.desktop.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.study.result.FailureMode;
import witnessmark.study.result.Prompted;
import witnessmark.wording.FindingWords;
import witnessmark.wording.Measures;
import witnessmark.wording.PromptWords;
import witnessmark.wording.Texts;

/** Words what the trade asks of a failure. */
final class PromptModel {
    private final Texts texts;
    private final Measures measures;
    private final PromptWords words;
    private final FindingWords found;

    PromptModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new PromptWords(texts);
        this.found = new FindingWords(texts, measures);
    }

    PromptLines lines(List<Prompted> all, CaseSeen seen) {
        Set<String> written = seen.evidence().causes().stream()
                .map(cause -> cause.fact().statement())
                .collect(Collectors.toSet());
        return new PromptLines(all.stream().map(each -> prompt(each, written)).toList(), written.isEmpty());
    }

    private PromptLines.Prompt prompt(Prompted prompted, Set<String> written) {
        FailureMode mode = prompted.mode();
        List<String> by = new ArrayList<>();
        prompted.findings().stream()
                .map(finding -> found.lead(finding.fact()))
                .distinct()
                .forEach(by::add);
        prompted.failed().stream().map(Entry::fact).map(Part::mark).forEach(by::add);
        return new PromptLines.Prompt(
                words.name(mode),
                by.isEmpty() ? texts.get("cases.prompts.always") : texts.get("cases.prompts.by", measures.all(by)),
                texts.get("cases.prompts.look", String.join("; ", words.look(mode))),
                texts.get("cases.prompts.ask", String.join(" ", words.ask(mode))),
                words.causes(mode).stream()
                        .filter(cause -> !written.contains(cause))
                        .toList(),
                String.join("; ", words.look(mode)));
    }
}
