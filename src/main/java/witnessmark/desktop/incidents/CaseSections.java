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
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.logbook.proof.CaseSeen;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Moment;
import witnessmark.study.result.ProofOfCase;
import witnessmark.study.result.ProofState;
import witnessmark.wording.Measures;
import witnessmark.wording.ProofWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** The investigation of an incident on its page: findings, tests, actions, and whether they hold. */
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

    /** Findings, what is to be tested, what is done. */
    List<Section> rest(Facts facts, CaseSeen seen, Prefilled find, Prefilled act) {
        return List.of(
                section(
                        "findings",
                        seen.findings().stream()
                                .map(each -> finding(facts, each.fact()))
                                .toList(),
                        "",
                        find),
                section(
                        "tests",
                        seen.tests().stream()
                                .map(each -> test(facts, seen, each.fact()))
                                .toList(),
                        "",
                        null),
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

    private Row finding(Facts facts, Finding finding) {
        List<String> where = new ArrayList<>();
        if (finding.place() != null) {
            where.add(records.label(records.word(finding.place())));
        }
        if (finding.number() != null) {
            where.add(Integer.toString(finding.number()));
        }
        List<String> marks = new ArrayList<>();
        if (finding.mark() != null) {
            marks.add(records.word(finding.mark()));
        }
        if (finding.how() != null) {
            marks.add(records.word(finding.how()));
        }
        List<String> under = new ArrayList<>();
        under.add(finding.spot());
        if (finding.part() != null) {
            under.add(facts.of(Part.class).get(finding.part()).mark());
        }
        under.add(finding.by());
        String said = finding.words().isBlank() || marks.isEmpty()
                ? measures.row(marks.isEmpty() ? List.of(finding.words()) : marks)
                : texts.get("incidents.finding", measures.row(marks), finding.words());
        return new Row(
                where.isEmpty() ? texts.get("incidents.finding.none") : String.join(" ", where),
                said,
                measures.shortDate(finding.at().day()),
                joined(under),
                "");
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

    /** What is made of a cause now and what was before: "main, seen: out of round; open, likely, 18 Jun". Empty for nothing. */
    List<String> calls(CaseSeen seen, Id<Cause> cause) {
        List<String> said = new ArrayList<>();
        List<CauseCall> calls = seen.calls().getOrDefault(cause, List.of());
        for (int i = 0; i < calls.size(); i++) {
            CauseCall call = calls.get(i);
            said.add(texts.get(
                    i == 0 ? "incidents.call" : "incidents.call.before",
                    records.word(call.state()),
                    records.word(call.sure()),
                    measures.shortDate(call.at().day()),
                    call.because()));
        }
        return said;
    }
}
