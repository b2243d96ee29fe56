package witnessmark.wording;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import witnessmark.domain.ProofBy;
import witnessmark.domain.ProofWanted;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.ProofLine;
import witnessmark.study.result.ProofMade;
import witnessmark.study.result.ProofOfCase;
import witnessmark.study.result.ProofState;
import witnessmark.study.result.UseOfRuns;

/** Words how far a fix is proven: running and looks first, the chance of seeing this anyway last. It never says that an engine may run. */
public final class ProofWords {
    private static final int TIMES = 10;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    public ProofWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** "5.72 h since 8 Sep 2026. It failed at 6.08 h and 6.39 h: not there yet". */
    public String headline(ProofOfCase proof) {
        return switch (proof.state()) {
            case OPEN -> texts.get("proof.open");
            case DONE -> done(proof);
            case HOLDING -> holding(proof);
            case CLOSED -> closed(proof);
            case CAME_BACK ->
                texts.get(
                        proof.ran().millis() > 0 ? "proof.back.after" : "proof.back",
                        Objects.requireNonNull(proof.again()).fact().mark(),
                        ran(proof));
        };
    }

    private String done(ProofOfCase proof) {
        Optional<String> against = against(proof);
        if (against.isPresent()) {
            return texts.get("proof.against", ran(proof), against.get());
        }
        Moment since = proof.since();
        return since == null ? texts.get("proof.done.nowhere") : texts.get("proof.done", measures.date(since.day()));
    }

    private String holding(ProofOfCase proof) {
        String since = measures.date(Objects.requireNonNull(proof.since()).day());
        if (proof.failed().isEmpty()) {
            return texts.get("proof.holding", ran(proof), since);
        }
        return texts.get(
                proof.reachedItsAge() ? "proof.holding.past" : "proof.holding.before", ran(proof), since, ages(proof));
    }

    private String closed(ProofOfCase proof) {
        String day = measures.date(
                Objects.requireNonNull(proof.incident().fact().closed()).day());
        return against(proof)
                .map(what -> texts.get("proof.closed.against", day, what))
                .orElseGet(() -> proof.since() == null
                        ? texts.get("proof.closed.nowhere", day)
                        : texts.get("proof.closed", day, ran(proof)));
    }

    private Optional<String> against(ProofOfCase proof) {
        return proof.lines().stream()
                .filter(line -> line.state() == ProofLine.State.NOT_MET)
                .findFirst()
                .map(line -> {
                    ProofMade last = line.made().get(line.made().size() - 1);
                    return texts.get(
                            "proof.against.what",
                            measures.date(last.seen().fact().at().day()),
                            line.wanted().fact().what(),
                            last.seen().fact().words());
                });
    }

    private String ran(ProofOfCase proof) {
        String hours = measures.hours(proof.ran());
        return proof.atLeast() ? measures.atLeast(hours) : hours;
    }

    private String ages(ProofOfCase proof) {
        return measures.all(proof.failed().stream()
                .map(each -> each.atLeast() ? measures.atLeast(measures.hours(each.ran())) : measures.hours(each.ran()))
                .toList());
    }

    /** "Looks 1 of 2, filter 1 of 3"; empty when neither was asked for. */
    public String counts(ProofOfCase proof) {
        List<String> counts = new ArrayList<>();
        List<ProofLine> looks = proof.lines().stream()
                .filter(line -> line.wanted().fact().kind() == ProofBy.LOOK)
                .toList();
        if (!looks.isEmpty()) {
            int met = looks.stream().mapToInt(ProofWords::met).sum();
            int asked = looks.stream()
                    .mapToInt(line -> line.wanted().fact().times())
                    .sum();
            counts.add(texts.get("proof.looks", met, asked));
        }
        proof.lines().stream()
                .filter(line -> line.wanted().fact().kind() == ProofBy.READING)
                .forEach(line -> counts.add(texts.get(
                        "proof.readings",
                        records.word(Objects.requireNonNull(line.wanted().fact().reading())),
                        Math.min(line.met(), line.wanted().fact().times()),
                        line.wanted().fact().times())));
        return counts.isEmpty() ? "" : measures.row(counts);
    }

    /** How often a look was as asked for, of the times asked for; not at all while the last was not. */
    private static int met(ProofLine line) {
        return line.state() == ProofLine.State.NOT_MET
                ? 0
                : Math.min(line.met(), line.wanted().fact().times());
    }

    /** Whether what is still to be run says anything: while it is being proven. */
    private static boolean runs(ProofOfCase proof) {
        return proof.state() == ProofState.DONE || proof.state() == ProofState.HOLDING;
    }

    /** "Asked for before it is closed: 12.77 h, 7.05 h to go", or by the rule of the trade; empty where it says nothing. */
    public String running(ProofOfCase proof) {
        RunningTime needed = proof.needed();
        if (needed == null || !runs(proof)) {
            return "";
        }
        String hours = measures.hours(needed);
        if (proof.ranEnough()) {
            return texts.get(proof.byRule() ? "proof.needed.rule.there" : "proof.needed.there", hours);
        }
        String left =
                measures.hours(new RunningTime(needed.millis() - proof.ran().millis()));
        return texts.get(proof.byRule() ? "proof.needed.rule" : "proof.needed", hours, left);
    }

    /** What is asked for in one line, and how it stands: "after 5 h, shell of 3 …: as asked for, 24 Oct at 5.72 h". */
    public String line(ProofOfCase proof, ProofLine line) {
        ProofWanted wanted = line.wanted().fact();
        RunningTime after = wanted.after();
        String what = wanted.kind() == ProofBy.RUNNING
                ? texts.get("proof.line.running", measures.hours(Objects.requireNonNull(after)))
                : after == null ? wanted.what() : texts.get("proof.line.after", measures.hours(after), wanted.what());
        if (wanted.times() > 1) {
            what = texts.get("proof.line.times", what, wanted.times());
        }
        String stands = switch (line.state()) {
            case NOT_YET ->
                after == null
                        ? texts.get("proof.line.waits")
                        : texts.get(
                                "proof.line.notYet",
                                measures.hours(new RunningTime(
                                        Math.max(0, after.millis() - proof.ran().millis()))));
            case DUE ->
                wanted.times() > 1
                        ? texts.get("proof.line.due.times", line.met(), wanted.times())
                        : texts.get("proof.line.due");
            case MET -> wanted.kind() == ProofBy.RUNNING ? texts.get("proof.line.ran") : made(line, "proof.line.met");
            case NOT_MET -> made(line, "proof.line.notMet");
        };
        String said = texts.get("proof.line", what, stands);
        return line.setLate() ? texts.get("proof.line.late", said) : said;
    }

    private String made(ProofLine line, String key) {
        ProofMade last = line.made().get(line.made().size() - 1);
        return texts.get(
                key,
                measures.date(last.seen().fact().at().day()),
                measures.hours(last.ran()),
                last.seen().fact().words());
    }

    /** What else is to be known, the chance last; none that is empty. */
    public List<String> basis(ProofOfCase proof) {
        List<String> lines = new ArrayList<>();
        if (!proof.together().isEmpty()) {
            lines.add(texts.get(
                    "proof.together",
                    measures.all(proof.together().stream()
                            .map(action -> action.fact().what())
                            .toList())));
        }
        use(proof).ifPresent(lines::add);
        if (!Double.isNaN(proof.chance()) && proof.ran().millis() > 0 && runs(proof)) {
            RunningTime needed = Objects.requireNonNull(proof.forOneInTen());
            String runs = measures.roughHours(needed);
            long times = Math.round(proof.chance() * TIMES);
            lines.add(
                    times >= 1
                            ? texts.get("proof.chance", times, proof.failed().size(), runs)
                            : texts.get("proof.chance.small", proof.failed().size()));
        }
        return lines;
    }

    private Optional<String> use(ProofOfCase proof) {
        UseOfRuns before = proof.before();
        UseOfRuns now = proof.now();
        if (before == null || now == null || now.runs() == 0 || before.runs() == 0) {
            return Optional.empty();
        }
        List<String> said = new ArrayList<>();
        if (before.highest() != null && now.highest() != null) {
            said.add(texts.get("proof.use.speed", measures.speed(now.highest()), measures.speed(before.highest())));
        }
        if (!Double.isNaN(before.loadedShare()) && !Double.isNaN(now.loadedShare())) {
            said.add(texts.get("proof.use.load", percent(now.loadedShare()), percent(before.loadedShare())));
        }
        return said.isEmpty() ? Optional.empty() : Optional.of(texts.get("proof.use", measures.row(said)));
    }

    private String percent(double share) {
        return measures.number(BigDecimal.valueOf(share * 100), 0);
    }
}
