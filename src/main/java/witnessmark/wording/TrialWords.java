package witnessmark.wording;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Trial;
import witnessmark.quantity.Counter;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.TrialAnswer;
import witnessmark.study.result.TrialLife;
import witnessmark.study.result.TrialSide;
import witnessmark.study.result.TrialTest;

/** Words a part design on trial: lives first, a test where enough failed, the verdict a person gave. It is never a score. */
public final class TrialWords {
    private static final int OF_A_HUNDRED = 100;
    private static final double HALF = 0.5;
    private static final int P_DECIMALS = 3;
    private static final double LEAST_P = 0.001;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    public TrialWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** "steel gasket 0.85 coated against steel gasket 0.85". */
    public String against(TrialAnswer trial) {
        return trial.usualDesign() == null
                ? texts.get(
                        "trials.against.kind",
                        trial.triedDesign().name(),
                        records.word(trial.triedDesign().kind()))
                : texts.get(
                        "trials.against.design",
                        trial.triedDesign().name(),
                        trial.usualDesign().name());
    }

    /** "On trial since 5 Jun 2026, set up by Crew chief", or how it was judged, by whom. */
    public String stands(TrialAnswer answer) {
        Trial trial = answer.trial().fact();
        if (!answer.judged()) {
            String since = measures.date(trial.from());
            return trial.by().isEmpty()
                    ? texts.get("trials.on.nobody", since)
                    : texts.get("trials.on", since, trial.by());
        }
        String verdict = records.label(records.word(Objects.requireNonNull(trial.verdict())));
        String day = measures.date(Objects.requireNonNull(trial.ended()));
        return trial.judgedBy().isEmpty()
                ? texts.get("trials.judged.nobody", verdict, day)
                : texts.get("trials.judged", verdict, day, trial.judgedBy());
    }

    /** What is hoped for; empty where nobody said. */
    public String hoped(TrialAnswer answer) {
        String hoped = answer.trial().fact().hoped();
        return hoped.isEmpty() ? "" : texts.get("trials.hoped", hoped);
    }

    /** On what grounds it was judged; empty while it goes on. */
    public String because(TrialAnswer answer) {
        return answer.judged()
                ? texts.get("trials.because", answer.trial().fact().because())
                : "";
    }

    /** "Tried". */
    public String name(boolean tried) {
        return texts.get(tried ? "trials.tried" : "trials.usual");
    }

    /** "Tried: fitted once, none failed, 1 still in, 4.21 h in all". */
    public String side(TrialAnswer answer, boolean tried) {
        return texts.get("trials.side", name(tried), counts(answer, tried ? answer.tried() : answer.usual()));
    }

    private String counts(TrialAnswer answer, TrialSide side) {
        List<String> said = new ArrayList<>();
        int lives = side.lives().size();
        said.add(texts.get("trials.count.lives", lives));
        if (lives > 0) {
            said.add(texts.get("trials.count.failed", side.ended(TrialLife.End.FAILED)));
        }
        int off = side.ended(TrialLife.End.CAME_OFF);
        if (off > 0) {
            said.add(texts.get("trials.count.off", off));
        }
        int in = side.ended(TrialLife.End.STILL_IN);
        if (in > 0) {
            said.add(texts.get("trials.count.in", in));
        }
        if (lives > 0) {
            boolean loaded = answer.counter() == Counter.LOADED;
            said.add(texts.get(loaded ? "trials.count.ran.loaded" : "trials.count.ran", hours(side.ran())));
        }
        if (side.neverFitted() > 0) {
            said.add(texts.get("trials.count.waiting", side.neverFitted()));
        }
        return measures.row(said);
    }

    // One life

    /** The whole of it in one line. */
    public String life(TrialLife life) {
        String said = texts.get(
                "trials.life",
                life.part().fact().mark(),
                where(life),
                measures.date(life.stay().from().day()),
                age(life),
                end(life));
        List<String> more = new ArrayList<>(harms(life));
        String condition = life.stay().fitment().fact().condition();
        if (life.stay().to() != null && !condition.isEmpty()) {
            more.add(condition);
        }
        if (life.doubt() != TrialLife.Doubt.NONE) {
            more.add(doubt(life));
        }
        return more.isEmpty() ? said : texts.get("trials.life.beside", said, measures.row(more));
    }

    /** "K06, head gasket". */
    public String where(TrialLife life) {
        return texts.get("trials.where", life.place(), life.position());
    }

    /** "from new to 4.21 h", "3.00 h to 7.21 h". */
    public String age(TrialLife life) {
        if (life.ran() == 0) {
            return texts.get("trials.notYet");
        }
        if (life.doubt() == TrialLife.Doubt.BEFORE_NOT_KNOWN) {
            return texts.get("trials.age.unknown", hours(life.entry()), hours(life.exit()));
        }
        return life.entry() == 0
                ? texts.get("trials.age.new", hours(life.exit()))
                : texts.get("trials.age", hours(life.entry()), hours(life.exit()));
    }

    /** "came off, head off; scrap". */
    public String end(TrialLife life) {
        String why = life.stay().fitment().fact().why();
        return life.end() == TrialLife.End.CAME_OFF && !why.isEmpty()
                ? texts.get("trials.end.because", why)
                : endWord(life.end());
    }

    /** "failed", "came off", "still in". */
    public String endWord(TrialLife.End end) {
        return texts.get("trials.end." + end.name().toLowerCase(Locale.ROOT));
    }

    /** Why it stands in no comparison; empty where it does. */
    public String doubt(TrialLife life) {
        return life.doubt() == TrialLife.Doubt.NONE
                ? ""
                : texts.get("trials.doubt." + life.doubt().name().toLowerCase(Locale.ROOT));
    }

    /** "INC-04: damaged", each. */
    public List<String> harms(TrialLife life) {
        return life.harms().stream().map(this::harm).toList();
    }

    /** "INC-04: damaged". */
    public String harm(TrialLife.Harm harm) {
        IncidentPart named = harm.named().fact();
        String mark = harm.incident().fact().mark();
        String word = records.word(named.harm());
        return named.member().isEmpty()
                ? texts.get("trials.harm", mark, word)
                : texts.get("trials.harm.member", mark, word, named.member());
    }

    // Both sides

    /** What figures say of both, and what keeps them from saying more. */
    public List<String> test(TrialAnswer answer) {
        List<String> said = new ArrayList<>();
        int failed = answer.tried().ended(TrialLife.End.FAILED) + answer.usual().ended(TrialLife.End.FAILED);
        TrialTest test = answer.test();
        if (failed == 0) {
            said.add(texts.get("trials.test.nothing"));
        } else if (test == null) {
            said.add(texts.get("trials.test.noAges"));
        } else if (test.enough()) {
            said.add(texts.get(
                    "trials.test.said",
                    test.failed(),
                    figure(test.expected(), 1),
                    figure(test.chiSquare(), 2),
                    chanceFigure(test.p())));
            said.add(chance(test.p()));
        } else {
            said.add(texts.get("trials.test.few", failed, figure(test.needed(), 0), figure(test.room(), 1)));
        }
        int leftOut = answer.tried().leftOut() + answer.usual().leftOut();
        if (leftOut > 0) {
            said.add(texts.get("trials.leftOut", leftOut));
        }
        return said;
    }

    /** "0.032", "below 0.001": a chance is never nothing. */
    private String chanceFigure(double p) {
        return p < LEAST_P ? texts.get("trials.test.p.least", figure(LEAST_P, P_DECIMALS)) : figure(p, P_DECIMALS);
    }

    private String chance(double p) {
        long times = Math.round(p * OF_A_HUNDRED);
        if (p > HALF) {
            return texts.get("trials.test.chance.most");
        }
        return times == 0 ? texts.get("trials.test.chance.small") : texts.get("trials.test.chance", times);
    }

    /** What counts as failed, and who judges. */
    public List<String> basis(TrialAnswer answer) {
        return answer.judged()
                ? List.of(texts.get("trials.means"))
                : List.of(texts.get("trials.means"), texts.get("trials.person"));
    }

    private String figure(double value, int decimals) {
        return measures.number(BigDecimal.valueOf(value), decimals);
    }

    /** "4.21 h". */
    public String hours(long millis) {
        return measures.hours(new RunningTime(millis));
    }
}
