package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import witnessmark.domain.Concession;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.domain.Lesson;
import witnessmark.domain.LessonAnswer;
import witnessmark.domain.MeasureKind;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.LessonCheck;

/** What lessons ask of build sheets, and how these answer. It says what is written; never that an engine may run. */
public final class LessonWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final FitWords fit;

    public LessonWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.fit = new FitWords(texts, measures);
    }

    /** What it asks: its question, or "Big-end housing ovality at most 0.012 mm". */
    public String asks(Lesson lesson) {
        MeasureKind kind = lesson.kind();
        if (kind == null) {
            return lesson.question();
        }
        String name = records.label(records.word(kind));
        Long least = lesson.atLeast();
        Long most = lesson.atMost();
        if (least != null && most != null) {
            return texts.get("lessons.asks.between", name, fit.set(kind, least), fit.set(kind, most));
        }
        return least != null
                ? texts.get("lessons.asks.least", name, fit.set(kind, least))
                : most != null
                        ? texts.get("lessons.asks.most", name, fit.set(kind, most))
                        : texts.get("lessons.asks.measured", name);
    }

    /** The incident it comes of, by its mark; or that it is the team's own. */
    public String from(Facts facts, Lesson lesson) {
        return lesson.incident() == null
                ? texts.get("lessons.own")
                : facts.of(Incident.class).get(lesson.incident()).mark();
    }

    /** The word of its mark. */
    public String state(LessonCheck check) {
        return texts.get(
                check.state() != LessonCheck.State.MET && !check.open()
                        ? "lessons.state.accepted"
                        : "lessons.state." + check.state().name().toLowerCase(Locale.ROOT));
    }

    /** How it stands in a line: the figure that decides, who answered, what accepts it. */
    public String stands(LessonCheck check) {
        Lesson lesson = check.lesson().fact();
        MeasureKind kind = lesson.kind();
        String how = kind == null ? answered(check) : figure(lesson, kind, check);
        Concession accepted = check.accepted() == null ? null : check.accepted().fact();
        return accepted == null ? how : texts.get("lessons.accepted", how, accepted.why(), accepted.by());
    }

    private String answered(LessonCheck check) {
        LessonAnswer answer = check.answer() == null ? null : check.answer().fact();
        String word = texts.get("lessons.state." + check.state().name().toLowerCase(Locale.ROOT));
        if (answer == null) {
            return word;
        }
        String day = measures.shortDate(answer.at().day());
        return texts.get(
                "lessons.pair",
                word,
                answer.words().isBlank()
                        ? texts.get("lessons.answered", answer.by(), day)
                        : texts.get("lessons.answered.words", answer.words(), answer.by(), day));
    }

    private String figure(Lesson lesson, MeasureKind kind, LessonCheck check) {
        List<String> said = new ArrayList<>();
        Check decides = check.decides();
        if (decides != null) {
            String value = value(lesson, kind, Objects.requireNonNull(decides.value()));
            boolean one = check.checks().size() == 1;
            said.add(
                    one
                            ? texts.get("lessons.figure", fit.where(decides.place()), value)
                            : texts.get("lessons.figure.worst", fit.where(decides.place()), value));
            if (decides.bounds().set()) {
                said.add(texts.get("lessons.sheet.limit", fit.bounds(kind, decides.bounds())));
            }
        }
        List<String> lacks = check.checks().stream()
                .filter(each -> each.value() == null)
                .map(each -> fit.where(each.place()))
                .toList();
        if (decides == null) {
            said.add(texts.get("lessons.figure.none"));
        } else if (!lacks.isEmpty()) {
            said.add(texts.get("lessons.figure.lacks", measures.all(lacks)));
        }
        return texts.get(
                "lessons.pair",
                texts.get("lessons.state." + check.state().name().toLowerCase(Locale.ROOT)),
                measures.row(said));
    }

    private String value(Lesson lesson, MeasureKind kind, long value) {
        String figure = fit.figure(kind, value);
        Long most = lesson.atMost();
        Long least = lesson.atLeast();
        if (most != null && value > most) {
            return texts.get("lessons.figure.over", figure, fit.figure(kind, value - most));
        }
        return least != null && value < least
                ? texts.get("lessons.figure.under", figure, fit.figure(kind, least - value))
                : figure;
    }

    /** On which sheets it is asked. */
    public String concerns(Facts facts, Lesson lesson) {
        String design = lesson.design() == null
                ? texts.get("lessons.concerns.all")
                : facts.of(EngineDesign.class).get(lesson.design()).name();
        return lesson.partKind() == null
                ? texts.get("lessons.concerns", design)
                : texts.get("lessons.concerns.part", design, records.word(lesson.partKind()));
    }

    /** "Since 8 Sep 2026, Crew chief". */
    public String since(Lesson lesson) {
        return texts.get("lessons.since", measures.date(lesson.from().day()), lesson.by());
    }

    /** By whom and why it was withdrawn; empty while it stands. */
    public String withdrawn(Lesson lesson, boolean standing) {
        return standing || lesson.withdrawn() == null
                ? ""
                : texts.get(
                        "lessons.withdrawn",
                        measures.date(lesson.withdrawn().day()),
                        lesson.withdrawnBy(),
                        lesson.withdrawnBecause());
    }

    /** One build sheet that asked it: "Asked on K05, build 3: Met". */
    public String asked(String build, LessonCheck check) {
        return texts.get("lessons.asked", build, stands(check));
    }

    /** That no build sheet asked it so far. */
    public String neverAsked() {
        return texts.get("lessons.asked.none");
    }
}
