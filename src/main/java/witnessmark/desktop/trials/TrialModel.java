package witnessmark.desktop.trials;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.LifeRows;
import witnessmark.chart.LivesChart;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.PartHarm;
import witnessmark.quantity.Counter;
import witnessmark.study.result.TrialAnswer;
import witnessmark.study.result.TrialLife;
import witnessmark.study.result.TrialSide;
import witnessmark.wording.FindingWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.TrialWords;

/** Makes a trial ready to be shown, without a widget. */
final class TrialModel {
    private static final double PER_HOUR = 3_600_000;
    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
    private static final int MOST_TICKS = 7;
    private static final double ROOM = 1.04;

    private final Texts texts;
    private final Measures measures;
    private final TrialWords words;
    private final FindingWords findings;

    TrialModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new TrialWords(texts, measures);
        this.findings = new FindingWords(texts, measures);
    }

    TrialLines lines(TrialAnswer trial) {
        List<String> said = Stream.of(words.against(trial), words.hoped(trial), words.because(trial))
                .filter(line -> !line.isEmpty())
                .toList();
        List<String> figures = new ArrayList<>(words.test(trial));
        figures.addAll(words.basis(trial));
        return new TrialLines(
                trial.trial().id().text(),
                trial.trial().fact().ended() == null,
                trial.trial().fact().name(),
                words.stands(trial),
                said,
                figures,
                chart(trial),
                texts.get("trialview.lives.whole", words.side(trial, true), words.side(trial, false)),
                found(trial));
    }

    // Lives

    private LivesChart chart(TrialAnswer trial) {
        double longest = Stream.concat(trial.tried().lives().stream(), trial.usual().lives().stream())
                .mapToDouble(TrialLife::exit)
                .max()
                .orElse(0);
        double limit = trial.limit() == null ? 0 : trial.limit();
        double scale = Math.max(0.1, Math.max(longest, limit) / PER_HOUR * ROOM);
        return new LivesChart(
                scale,
                ticks(scale),
                limit(trial),
                List.of(group(trial, true), group(trial, false)),
                List.of(
                        texts.get("trialview.legend.failed"),
                        texts.get("trialview.legend.cameOff"),
                        texts.get("trialview.legend.stillIn")),
                headings(trial));
    }

    private LifeRows.@Nullable Tick limit(TrialAnswer trial) {
        Long limit = trial.limit();
        return limit == null
                ? null
                : new LifeRows.Tick(limit / PER_HOUR, texts.get("trialview.limit", words.hours(limit)));
    }

    private List<LifeRows.Tick> ticks(double scale) {
        double step = STEPS[0];
        for (double each : STEPS) {
            step = each;
            if (scale / each <= MOST_TICKS) {
                break;
            }
        }
        List<LifeRows.Tick> ticks = new ArrayList<>();
        for (int i = 0; i * step <= scale; i++) {
            BigDecimal at = BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(i));
            ticks.add(new LifeRows.Tick(
                    at.doubleValue(), texts.get("trialview.tick", measures.number(at, step < 1 ? 1 : 0))));
        }
        return ticks;
    }

    private LivesChart.Group group(TrialAnswer trial, boolean tried) {
        TrialSide side = tried ? trial.tried() : trial.usual();
        return new LivesChart.Group(
                words.side(trial, tried),
                side.lives().stream()
                        .map(life -> strip(life, tried, onePlace(trial)))
                        .toList(),
                texts.get("trialview.lives.none"));
    }

    /** Whether all of them sit in one position of an engine, so that its name need not be said with each. */
    private static boolean onePlace(TrialAnswer trial) {
        return Stream.concat(trial.tried().lives().stream(), trial.usual().lives().stream())
                        .map(TrialLife::position)
                        .distinct()
                        .count()
                <= 1;
    }

    private LivesChart.Strip strip(TrialLife life, boolean tried, boolean onePlace) {
        return new LivesChart.Strip(
                life.part().fact().mark(),
                texts.get(
                        "trialview.where",
                        onePlace ? life.place() : words.where(life),
                        measures.date(life.stay().from().day())),
                life.entry() / PER_HOUR,
                life.exit() / PER_HOUR,
                LivesChart.Ended.valueOf(life.end().name()),
                life.doubt() == TrialLife.Doubt.NONE,
                beside(life),
                words.life(life),
                List.of(
                        words.name(tried),
                        life.part().fact().mark(),
                        words.where(life),
                        measures.date(life.stay().from().day()),
                        hours(life.entry()),
                        hours(life.exit()),
                        words.endWord(life.end()),
                        more(life)),
                life.part().id().text());
    }

    /** "12.46 h, came off", "3.20 h, damaged". */
    private String beside(TrialLife life) {
        String ran = life.ran() == 0 ? words.age(life) : words.hours(life.exit());
        String shown = switch (life.doubt()) {
            case NONE -> ran;
            case TOLD -> measures.about(ran);
            default -> measures.atLeast(ran);
        };
        String end = life.harms().isEmpty()
                ? words.endWord(life.end())
                : words.harm(life.harms().get(life.harms().size() - 1));
        return texts.get("trialview.beside", shown, end);
    }

    private String more(TrialLife life) {
        List<String> more = new ArrayList<>();
        Stream.of(
                        life.stay().to() == null
                                ? ""
                                : life.stay().fitment().fact().why(),
                        life.stay().to() == null
                                ? ""
                                : life.stay().fitment().fact().condition(),
                        words.doubt(life))
                .filter(each -> !each.isEmpty())
                .forEach(more::add);
        more.addAll(words.harms(life));
        return more.isEmpty() ? "" : measures.row(more);
    }

    private String hours(long millis) {
        return measures.number(BigDecimal.valueOf(millis / PER_HOUR), 2);
    }

    private List<String> headings(TrialAnswer trial) {
        boolean loaded = trial.counter() == Counter.LOADED;
        return List.of(
                texts.get("trialview.column.side"),
                texts.get("trialview.column.part"),
                texts.get("trialview.column.where"),
                texts.get("trialview.column.since"),
                texts.get(loaded ? "trialview.column.from.loaded" : "trialview.column.from"),
                texts.get(loaded ? "trialview.column.to.loaded" : "trialview.column.to"),
                texts.get("trialview.column.end"),
                texts.get("trialview.column.more"));
    }

    // What was found

    private List<FoundLine> found(TrialAnswer trial) {
        return Stream.concat(found(trial.tried(), true), found(trial.usual(), false))
                .sorted(Comparator.comparing(FoundLine::at).reversed())
                .toList();
    }

    private Stream<FoundLine> found(TrialSide side, boolean tried) {
        return side.lives().stream()
                .flatMap(life -> Stream.concat(
                        life.findings().stream()
                                .map(finding -> new FoundLine(
                                        finding.id().text(),
                                        false,
                                        finding.fact().at(),
                                        measures.date(finding.fact().at().day()),
                                        words.name(tried),
                                        life.part().fact().mark(),
                                        findings.words(finding.fact()),
                                        SeamState.WITHIN)),
                        life.harms().stream().map(harm -> harm(life, harm, tried))));
    }

    private FoundLine harm(TrialLife life, TrialLife.Harm harm, boolean tried) {
        String note = harm.named().fact().note();
        String said = words.harm(harm);
        return new FoundLine(
                harm.incident().id().text(),
                true,
                harm.incident().fact().at(),
                measures.date(harm.incident().fact().at().day()),
                words.name(tried),
                life.part().fact().mark(),
                note.isEmpty() ? said : texts.get("trialview.found.note", said, note),
                harm.named().fact().harm() == PartHarm.FAILED ? SeamState.OVER : SeamState.WITHIN);
    }
}
