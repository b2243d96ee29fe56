package witnessmark.desktop.incidents;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.incidents.PageLines.Row;
import witnessmark.desktop.incidents.PageLines.Section;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Moment;
import witnessmark.study.result.ProofOfCase;
import witnessmark.study.result.ProofState;
import witnessmark.wording.Measures;
import witnessmark.wording.ProofWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** What decides and what is done about an incident on its page, and whether it holds. */
final class CaseSections {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final ProofWords words;

    CaseSections(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.words = new ProofWords(texts, measures);
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
        return List.of(
                section(
                        "tests",
                        seen.tests().stream()
                                .map(each -> test(facts, seen, each.fact()))
                                .toList(),
                        "",
                        test),
                section(
                        "actions",
                        seen.actions().stream()
                                .map(each -> action(facts, seen, each))
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

    private Row test(Facts facts, CaseSeen seen, CauseTest test) {
        Moment done = seen.known(test.done());
        List<String> under = new ArrayList<>();
        under.add(texts.get("incidents.against", cause(facts, test.cause())));
        under.add(done != null ? test.found() : "");
        under.add(test.who());
        return new Row(
                texts.get(done != null ? "incidents.done" : "incidents.open.action"),
                test.what(),
                done != null ? measures.shortDate(done.day()) : due(test.due()),
                joined(under),
                "");
    }

    private Row action(Facts facts, CaseSeen seen, Entry<CaseAction> entry) {
        CaseAction action = entry.fact();
        Moment done = seen.known(action.done());
        List<String> under = new ArrayList<>();
        under.add(done != null ? "" : texts.get("incidents.open.small"));
        under.add(action.who());
        under.add(action.cause() == null ? "" : texts.get("incidents.against", cause(facts, action.cause())));
        under.add(action.note());
        return new Row(
                records.label(records.word(action.kind())),
                action.what(),
                done != null ? measures.shortDate(done.day()) : due(action.due()),
                joined(under),
                "");
    }

    private static String cause(Facts facts, Id<Cause> cause) {
        return facts.of(Cause.class).get(cause).statement();
    }

    private String due(@Nullable LocalDate due) {
        return due == null ? "" : texts.get("incidents.due", measures.shortDate(due));
    }
}
