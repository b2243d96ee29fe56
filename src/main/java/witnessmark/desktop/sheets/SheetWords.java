package witnessmark.desktop.sheets;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.StateWords;
import witnessmark.domain.Coded;
import witnessmark.domain.Fact;
import witnessmark.domain.Finding;
import witnessmark.domain.ReadingKind;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.JointDoubt;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.logbook.sheets.AirFigure;
import witnessmark.logbook.sheets.Choice;
import witnessmark.logbook.sheets.CorrectSheet;
import witnessmark.logbook.sheets.FieldKind;
import witnessmark.logbook.sheets.LimitRange;
import witnessmark.logbook.sheets.LogSheet;
import witnessmark.logbook.sheets.Percent;
import witnessmark.logbook.sheets.ReadingFigure;
import witnessmark.logbook.sheets.RecordSheet;
import witnessmark.logbook.sheets.SheetAmount;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.SheetNote;
import witnessmark.logbook.sheets.SheetWord;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.PressureUnit;
import witnessmark.quantity.typed.Unit;
import witnessmark.study.result.DynoFactor;
import witnessmark.study.result.PullColumn;
import witnessmark.wording.Amounts;
import witnessmark.wording.DynoWords;
import witnessmark.wording.FindingWords;
import witnessmark.wording.JointWords;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.OutWords;
import witnessmark.wording.Problems;
import witnessmark.wording.ReadingWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;
import witnessmark.wording.UnprovenWords;

/** The sentences of one sheet. */
public final class SheetWords {
    private final Texts texts;
    private final Measures measures;
    private final Problems problems;
    private final RecordWords records;
    private final ReadingWords readings;
    private final Amounts amounts;
    private final LifeWords lives;
    private final OutWords out;
    private final UnprovenWords unproven;
    private final JointWords joints;
    private final DynoWords dyno;
    private final FindingWords findings;
    private final LogSheet sheet;
    private final LogSheet form;
    private final String named;
    private final Supplier<String> now;

    public SheetWords(Texts texts, Measures measures, LogSheet sheet) {
        this(texts, measures, sheet, "", () -> "");
    }

    /**
     * @param named what is written on it, in words; empty for something new
     * @param now the same as the logbook has it by now: once corrected it may be called otherwise, and be of another day
     */
    SheetWords(Texts texts, Measures measures, LogSheet sheet, String named, Supplier<String> now) {
        this.texts = texts;
        this.measures = measures;
        this.problems = new Problems(texts, measures);
        this.records = new RecordWords(texts);
        this.readings = new ReadingWords(texts, measures);
        this.amounts = new Amounts(texts, measures);
        this.lives = new LifeWords(texts, measures);
        this.out = new OutWords(texts, measures);
        this.unproven = new UnprovenWords(texts, measures);
        this.joints = new JointWords(texts, measures);
        this.dyno = new DynoWords(texts, measures);
        this.findings = new FindingWords(texts, measures);
        this.sheet = sheet;
        this.form = sheet instanceof CorrectSheet written ? written.form() : sheet;
        this.named = named;
        this.now = now;
    }

    Texts texts() {
        return texts;
    }

    String title() {
        return sheet instanceof CorrectSheet written
                ? records.label(records.one(written.entry().fact().getClass()))
                : texts.get("sheets.title." + sheet.key());
    }

    String intro() {
        return named.isEmpty()
                ? texts.get("sheets.about." + sheet.key())
                : texts.get("sheets.about.correct", records.label(named));
    }

    String group(String key) {
        return texts.get("sheets.group." + key);
    }

    String label(SheetField field) {
        if (field.label() != null) {
            return records.label(phrase(field.label().words()));
        }
        if (form instanceof RecordSheet<?> record && !field.equals(CorrectSheet.BECAUSE)) {
            String name = records.field(record.kind(), record.component(field));
            return record.isClock(field) ? texts.get("sheets.field.record_time", name) : name;
        }
        String own = "sheets.field." + form.key() + "." + field.key();
        return texts.get(texts.has(own) ? own : "sheets.field." + field.key());
    }

    /** A choice as it reads in its list. */
    String choice(Choice choice) {
        List<String> words = choice.facts().stream().map(this::named).toList();
        if (words.size() > 1 && choice.facts().get(0) instanceof SheetWord) {
            return texts.get("sheets.choice.of_kind", words.get(0), words.get(1));
        }
        return measures.row(words);
    }

    /** The line under a field. */
    String line(SheetField field, SheetLine line) {
        Problem problem = line.problem();
        if (problem == null) {
            return note(field, line.note());
        }
        String kind = problem.kind().name().toLowerCase(Locale.ROOT);
        String own = "sheets.short." + form.key() + "." + kind;
        String key = texts.has(own) ? own : "sheets.short." + kind;
        return texts.has(key) ? texts.get(key, blanks(field, said(problem))) : problems.note(plain(problem));
    }

    /** The same in full, for the tip and for screen readers. */
    String inFull(SheetField field, SheetLine line) {
        Problem problem = line.problem();
        return problem == null ? note(field, line.note()) : problems.note(plain(problem));
    }

    String note(SheetField field, SheetNote note) {
        if (note.key().isEmpty()) {
            return "";
        }
        if (note.key().equals("line")) {
            return measures.row(
                    note.facts().stream().map(fact -> shown(field, fact)).toList());
        }
        return texts.get("sheets.note." + note.key(), blanks(field, note.facts()));
    }

    /** A problem of the sheet, its fields by their labels. */
    public String sentence(Problem problem) {
        return problems.typed(plain(problem));
    }

    String why(List<String> about) {
        if (named.isEmpty()) {
            return texts.get("sheets.why." + sheet.key(), about.toArray());
        }
        String because = about.get(0);
        return because.isEmpty()
                ? texts.get("sheets.why.correct", named)
                : texts.get("sheets.why.correct.because", named, because);
    }

    /** @param after what has to be known besides */
    String saved(List<String> about, Optional<SheetNote> after) {
        String saved = named.isEmpty()
                ? texts.get("sheets.saved." + sheet.key(), about.toArray())
                : texts.get("sheets.saved.correct", now.get());
        return after.map(note -> saved + " " + phrase(note)).orElse(saved);
    }

    /** Those facts of a problem that the short sentence under a field says; the field itself is above it. */
    private static List<Object> said(Problem problem) {
        List<Object> facts = problem.facts();
        return switch (problem.kind()) {
            case CANNOT_READ, LESS_THAN_NOTHING -> List.of(facts.get(2));
            case TWO_READINGS, UNUSUAL -> List.of(facts.get(2), facts.get(3));
            case OUT_OF_RANGE, OUTSIDE_EVENT -> facts.subList(1, 4);
            case LINE_WITHOUT_DAY -> List.of(facts.get(3));
            case PLANNED_RUNS_OVERLAP -> facts;
            case ENDS_BEFORE_IT_BEGINS, NAME_TAKEN, NOT_FOUND, MEMBER_ALONE -> List.of(facts.get(1));
            case EARLIER_THAN, FORCE_CAME_BACK, NOT_A_CYLINDER -> List.of(facts.get(2));
            case MORE_BACK_THAN_PAID,
                    SHARES_NOT_WHOLE,
                    NOT_LOOKED_AT,
                    SIGNED_WITHOUT,
                    SHEET_LEFT_OPEN,
                    LESSONS_OPEN,
                    LESSON_BEFORE_SIGNING -> facts;
            case OTHER_CURRENCY, DAY_OF_ANOTHER_SEASON, WRITTEN_FOR_IT_ALREADY, SEASON_NOT_OVER ->
                List.of(facts.get(1));
            case SAYS_OTHERWISE -> List.of(facts.get(3));
            case FITTED_LATER -> List.of(facts.get(2), facts.get(3));
            case PART_STILL_FITTED,
                    PART_IN_QUARANTINE,
                    PART_AWAY,
                    PART_SCRAPPED,
                    STOCK_BELOW_NOTHING,
                    AS_WRITTEN_ALREADY,
                    SHARE_BEYOND_WHOLE,
                    TOOL_OUT_OF_USE,
                    TOOL_NOT_CALIBRATED,
                    METER_BACKWARDS -> facts.subList(1, facts.size());
            case ENGINE_IN_CAR_LATER -> List.of(facts.get(1), facts.get(2));
            case ENGINE_LEAVES_CAR -> List.of(facts.get(1));
            case ENGINE_NOT_IN_CAR -> List.of(facts.get(0), facts.get(2));
            default -> List.of();
        };
    }

    /** What fills the blanks of a sentence; a count stays one, as words may be chosen by it. */
    private Object[] blanks(SheetField field, List<Object> facts) {
        return facts.stream()
                .map(fact -> fact instanceof Integer ? fact : shown(field, fact))
                .toArray();
    }

    /** Fields by their labels and choices by their words, so that any sentence can name them. */
    private Problem plain(Problem problem) {
        List<Object> facts = problem.facts().stream()
                .map(fact -> fact instanceof SheetField field
                        ? (Object) label(field)
                        : fact instanceof SheetWord
                                        || fact instanceof ReadingFigure
                                        || fact instanceof Percent
                                        || fact instanceof AirFigure
                                ? named(fact)
                                : fact)
                .toList();
        return new Problem(problem.kind(), facts, problem.place());
    }

    private String shown(SheetField field, Object fact) {
        if (fact instanceof SheetField other) {
            return label(other);
        }
        if (fact instanceof SheetNote within && within.echo()) {
            return note(field, within);
        }
        if (fact instanceof SheetNote within) {
            return phrase(within);
        }
        if (fact instanceof SheetWord) {
            return named(fact);
        }
        if (fact instanceof Choice choice) {
            return choice(choice);
        }
        if (fact instanceof RunningTime time) {
            return field.kind() == FieldKind.LINES ? measures.running(time) : measures.hours(time);
        }
        if (fact instanceof Counter counter && counter.unit() == Counter.Unit.MILLISECOND) {
            return texts.get("sheets.unit.hours_long");
        }
        if (fact instanceof Counter counter) {
            return counter.unit() == Counter.Unit.METRE
                    ? measures.sign(measures.units().distance())
                    : records.counter(counter);
        }
        return fact instanceof Coded word ? records.word(word) : measure(fact);
    }

    private String measure(Object fact) {
        if (fact instanceof LocalDate day) {
            return measures.date(day);
        }
        if (fact instanceof LocalTime time) {
            return measures.time(time);
        }
        if (fact instanceof Moment moment) {
            return measures.moment(moment);
        }
        if (fact instanceof Money money) {
            return measures.money(money);
        }
        if (fact instanceof EngineSpeed speed) {
            return measures.speed(speed);
        }
        if (fact instanceof Length length) {
            return measures.length(length);
        }
        if (fact instanceof Distance distance) {
            return measures.distance(distance);
        }
        if (fact instanceof Temperature temperature) {
            return measures.temperature(temperature);
        }
        if (fact instanceof Pressure pressure) {
            return measures.pressure(pressure);
        }
        if (fact instanceof AirFigure figure) {
            return measures.pressure(figure.air(), PressureUnit.KILOPASCAL, 1);
        }
        if (fact instanceof PullColumn column) {
            return dyno.column(column);
        }
        if (fact instanceof DynoFactor factor) {
            return records.label(dyno.factor(factor));
        }
        if (fact instanceof Percent share) {
            return readings.percent(share.hundredths());
        }
        if (fact instanceof ReadingFigure figure) {
            return readings.figure(figure.kind(), figure.value());
        }
        if (fact instanceof ReadingKind.Unit unit) {
            return readings.sign(unit);
        }
        if (fact instanceof Unit<?> unit) {
            return measures.sign(unit);
        }
        if (fact instanceof LimitRange range) {
            return amounts.limits(range.counter(), range.low(), range.high());
        }
        if (fact instanceof SheetAmount amount) {
            return amounts.amount(amount.counter(), amount.amount());
        }
        if (fact instanceof BigDecimal figure) {
            return measures.number(figure, Math.max(0, figure.scale()));
        }
        return fact instanceof Integer number ? measures.number(number) : String.valueOf(fact);
    }

    /** The unit at the edge of a field; empty where it has none. */
    String unit(SheetField field) {
        if (field.label() != null) {
            Counter counter = field.label().counter();
            return counter.unit() == Counter.Unit.MILLISECOND ? texts.get("sheets.unit.hours") : shown(field, counter);
        }
        return switch (field.kind()) {
            case HOURS -> texts.get("sheets.unit.hours");
            case SPEED -> texts.get("sheets.unit.speed");
            case LENGTH -> measures.sign(measures.units().length());
            case PRESSURE -> measures.sign(measures.units().pressure());
            case TEMPERATURE -> measures.sign(measures.units().temperature());
            case FORCE -> MeasureUnit.KILONEWTON.sign();
            default -> ""; // words, days and times
        };
    }

    private String named(Object fact) {
        if (fact instanceof SheetWord word) {
            return texts.get("sheets.word." + word.key());
        }
        if (fact instanceof Counter counter) {
            return records.label(records.counter(counter));
        }
        if (fact instanceof Coded word) {
            return records.label(records.word(word));
        }
        if (fact instanceof SheetNote phrase) {
            return records.label(phrase(phrase));
        }
        if (fact instanceof MarkState state) {
            return new StateWords(texts).of(SeamState.of(state));
        }
        if (fact instanceof Life life) {
            return lives.life(life);
        }
        if (fact instanceof Away away) {
            return out.what(away);
        }
        if (fact instanceof UnprovenBuild build) {
            return unproven.list(build);
        }
        if (fact instanceof JointDoubt doubt) {
            return joints.groups(doubt);
        }
        if (fact instanceof Finding finding) {
            return findings.named(finding);
        }
        return fact instanceof Fact known ? records.label(String.valueOf(known.knownAs())) : measure(fact);
    }

    private String phrase(SheetNote phrase) {
        return texts.get(
                "sheets.choice." + phrase.key(),
                phrase.facts().stream().map(this::inPhrase).toArray());
    }

    /** Within a phrase a word of a closed list stands as it is. */
    private String inPhrase(Object fact) {
        if (fact instanceof SheetNote phrase) {
            return phrase(phrase);
        }
        if (fact instanceof MarkState) {
            return named(fact).toLowerCase(texts.locale());
        }
        return fact instanceof Coded word ? records.word(word) : named(fact);
    }
}
