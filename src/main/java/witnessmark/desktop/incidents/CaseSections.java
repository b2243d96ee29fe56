package witnessmark.desktop.incidents;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.incidents.PageLines.Row;
import witnessmark.desktop.incidents.PageLines.Section;
import witnessmark.domain.Facts;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.study.result.ProofOfCase;
import witnessmark.study.result.ProofState;
import witnessmark.wording.CauseWords;
import witnessmark.wording.Measures;
import witnessmark.wording.ProofWords;
import witnessmark.wording.Texts;

/** What decides and what is done about an incident on its page, and whether it holds. */
final class CaseSections {
    private final Texts texts;
    private final Measures measures;
    private final ProofWords words;
    private final CauseWords causes;

    CaseSections(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new ProofWords(texts, measures);
        this.causes = new CauseWords(texts, measures);
    }

    /** Whether it holds: the first thing a reader wants to know; nothing where nothing was done or asked for. */
    List<Section> proof(CaseSeen seen, Prefilled ask) {
        ProofOfCase proof = seen.proof();
        if (proof.state() == ProofState.OPEN
                && proof.lines().isEmpty()
                && seen.actions().isEmpty()) {
            return List.of();
        }
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(
                texts.get("incidents.proof." + proof.state().name().toLowerCase(Locale.ROOT)),
                words.headline(proof),
                "",
                joined(List.of(words.counts(proof), words.running(proof))),
                proof.again() == null ? "" : proof.again().id().text()));
        proof.lines().forEach(line -> rows.add(new Row("", words.line(proof, line), "", "", "")));
        return List.of(section("holds", rows, String.join(". ", words.basis(proof)), ask));
    }

    /** What is to be tested, what is done. */
    List<Section> rest(Facts facts, CaseSeen seen, Prefilled act, @Nullable Prefilled test) {
        LocalDate today = seen.until().day();
        return List.of(
                section(
                        "tests",
                        seen.tests().stream()
                                .map(each -> row(causes.test(
                                        facts,
                                        each.fact(),
                                        seen.known(each.fact().done()),
                                        today)))
                                .toList(),
                        "",
                        test),
                section(
                        "actions",
                        seen.actions().stream()
                                .map(each -> row(causes.action(
                                        facts,
                                        each.fact(),
                                        seen.known(each.fact().done()),
                                        today)))
                                .toList(),
                        "",
                        act));
    }

    private Section section(String key, List<Row> rows, String sum, @Nullable Prefilled add) {
        String none = "incidents.none." + key;
        return new Section(
                texts.get("incidents.section." + key),
                rows,
                sum,
                texts.has(none) ? texts.get(none) : "",
                add,
                add == null ? "" : texts.get("incidents.add." + key));
    }

    /** What there is of it; empty for nothing. */
    private String joined(List<String> all) {
        List<String> filled = all.stream().filter(each -> !each.isEmpty()).toList();
        return filled.isEmpty() ? "" : measures.row(filled);
    }

    private Row row(CauseWords.Line line) {
        return new Row(line.lead(), line.what(), line.figure(), joined(line.under()), "");
    }
}
