package witnessmark.wording;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.CaseAction;
import witnessmark.domain.Cause;
import witnessmark.domain.CauseCall;
import witnessmark.domain.CauseTest;
import witnessmark.domain.Facts;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Weighing;
import witnessmark.quantity.Moment;

/** Words the causes of an incident, what speaks for them, the tests that decide and what is done about it. */
public final class CauseWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final FindingWords findings;
    private final MoneyWords money;

    public CauseWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.findings = new FindingWords(texts, measures);
        this.money = new MoneyWords(texts, measures);
    }

    /**
     * A line of an investigation.
     *
     * @param lead what comes first: {@code 2. Assembly}, {@code To do}
     * @param what the words of it
     * @param figure a share of the blame, or a day
     * @param under what else is to be said, in its order
     */
    public record Line(String lead, String what, String figure, List<String> under) {
        public Line {
            under = under.stream().filter(each -> !each.isBlank()).toList();
        }
    }

    /**
     * A cause with what is made of it.
     *
     * @param number its number among the causes, from 1
     * @param calls what was made of it, the latest first
     */
    public Line cause(int number, Cause cause, List<CauseCall> calls) {
        List<String> under = new ArrayList<>(calls(calls));
        under.addAll(List.of(cause.by(), cause.note()));
        return new Line(
                texts.get("incidents.numbered", number, records.label(records.word(cause.area()))),
                cause.statement(),
                cause.share() == null ? texts.get("incidents.no_share") : money.percent(cause.share()),
                under);
    }

    /** What is made of a cause now and what was before that, as they come: the latest first. */
    public List<String> calls(List<CauseCall> calls) {
        List<String> said = new ArrayList<>();
        for (CauseCall call : calls) {
            said.add(texts.get(
                    said.isEmpty() ? "cases.call" : "cases.call.before",
                    records.word(call.state()),
                    records.word(call.sure()),
                    measures.shortDate(call.at().day()),
                    call.because()));
        }
        return said;
    }

    /** {@code Crank pin 3 speaks strongly for 2, housing of rod 3 lost its grip, because …}. */
    public String says(Finding finding, int number, Cause cause, Weighing weighing) {
        String said = texts.get(
                "cases.says." + weighing.speaks().name().toLowerCase(Locale.ROOT),
                findings.lead(finding),
                Integer.toString(number),
                cause.statement());
        return weighing.why().isEmpty()
                ? texts.get("cases.says.plain", said)
                : texts.get("cases.says.because", said, weighing.why());
    }

    /** What stands where nobody has weighed them. */
    public String unweighed(Finding finding, int number, Cause cause) {
        return texts.get("cases.says.nothing", findings.lead(finding), Integer.toString(number), cause.statement());
    }

    /**
     * A test that decides.
     *
     * @param done when it was done, as far as that is known on the day; or null
     * @param today the day looked at
     */
    public Line test(Facts facts, CauseTest test, @Nullable Moment done, LocalDate today) {
        return new Line(
                texts.get(done != null ? "incidents.done" : "incidents.open.action"),
                test.what(),
                when(test.due(), done, today),
                List.of(against(facts, test.cause()), done != null ? test.found() : "", test.who()));
    }

    /** What is done about an incident; the same. */
    public Line action(Facts facts, CaseAction action, @Nullable Moment done, LocalDate today) {
        return new Line(
                records.label(records.word(action.kind())),
                action.what(),
                when(action.due(), done, today),
                List.of(
                        done != null ? "" : texts.get("incidents.open.small"),
                        action.who(),
                        action.cause() == null ? "" : against(facts, action.cause()),
                        action.note()));
    }

    /** {@code due 3 Jul}; {@code late: was due 3 Jul} once that day is past; empty where no day is set. */
    public String due(@Nullable LocalDate due, LocalDate today) {
        return due == null
                ? ""
                : texts.get(late(due, null, today) ? "incidents.due.late" : "incidents.due", measures.shortDate(due));
    }

    /** {@code 1 Jul}, {@code late}: the same where there is little room. */
    public String dueShort(@Nullable LocalDate due, LocalDate today) {
        return due == null
                ? ""
                : late(due, null, today) ? texts.get("incidents.due.late.short") : measures.shortDate(due);
    }

    /** Whether something that was to be done by a day is not, and the day is past. */
    public static boolean late(@Nullable LocalDate due, @Nullable Moment done, LocalDate today) {
        return due != null && done == null && due.isBefore(today);
    }

    private String when(@Nullable LocalDate due, @Nullable Moment done, LocalDate today) {
        return done != null ? measures.shortDate(done.day()) : due(due, today);
    }

    private String against(Facts facts, Id<Cause> cause) {
        return texts.get("incidents.against", facts.of(Cause.class).get(cause).statement());
    }
}
