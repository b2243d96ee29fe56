package witnessmark.wording;

import static witnessmark.outcome.ProblemKind.DIFFERS_FROM_LOGBOOK;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import witnessmark.domain.Coded;
import witnessmark.domain.Fact;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.FieldOf;
import witnessmark.domain.image.Figure;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.result.About;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Money;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.Volume;
import witnessmark.study.result.PullColumn;

/** The facts of a problem as texts, each by its type. */
final class FactWords {
    /** Texts longer than this are cut in a sentence; what was typed stays whole where it was typed. */
    private static final int LONGEST = 120;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    FactWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** The facts of a problem in words, in their order. */
    List<String> words(ProblemKind kind, List<Object> all) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            words.add(word(kind, i, all.get(i)));
        }
        if (kind == DIFFERS_FROM_LOGBOOK) {
            differing(all, words);
        }
        return words;
    }

    /** The field by its label, and two values so that they can be told apart: exactly when their words are the same. */
    private void differing(List<Object> all, List<String> words) {
        boolean alike = words.get(3).equals(words.get(4));
        if (all.get(0) instanceof RecordType<?> type && all.get(2) instanceof Component field) {
            words.set(2, records.field(type.kind(), field));
            for (int i = 3; alike && i < all.size(); i++) {
                words.set(i, exactly(field, all.get(i)));
            }
        }
        for (int i = 3; i < all.size(); i++) {
            if (words.get(i).isEmpty()) {
                words.set(i, texts.get(Problems.key(DIFFERS_FROM_LOGBOOK, "nothing")));
            } else if (all.get(i) instanceof String) {
                words.set(i, texts.get(Problems.key(DIFFERS_FROM_LOGBOOK, "quoted"), words.get(i)));
            }
        }
    }

    private String exactly(Component field, Object value) {
        if (value instanceof Figure figure) {
            return measures.number(figure.value());
        }
        return value instanceof String text ? oneLine(text) : field.text(value);
    }

    /**
     * One fact in words.
     *
     * @param kind of the problem
     * @param index which of its facts
     * @param fact its value
     */
    String word(ProblemKind kind, int index, Object fact) {
        if (index == 0 && fact instanceof Number && texts.has(Problems.key(kind, "count"))) {
            return texts.get(Problems.key(kind, "count"), fact);
        }
        if (fact instanceof Collection<?> several) {
            var words = several.stream().map(each -> word(kind, index, each)).toList();
            return kind == ProblemKind.CANNOT_READ || kind == ProblemKind.LESS_THAN_NOTHING
                    ? measures.any(words)
                    : measures.all(words);
        }
        if (fact instanceof String name && namesRecordKind(kind, index)) {
            return RecordTypes.named(name).map(type -> records.one(type.kind())).orElse(oneLine(name));
        }
        if (fact instanceof String name && namesField(kind, index)) {
            return records.runField(name).orElse(oneLine(name));
        }
        return saidByTheSystem(kind, index) ? withoutStop(plain(fact)) : plain(fact);
    }

    private static boolean namesRecordKind(ProblemKind kind, int index) {
        return switch (kind) {
            case NOT_TOGETHER,
                    NOT_FOUND,
                    NAME_TAKEN,
                    CHANGED_MEANWHILE,
                    REFUSED_BY_LOGBOOK,
                    RECORD_NOT_AS_WRITTEN,
                    SALVAGED_DOUBTFUL,
                    NOT_SALVAGED -> index == 0;
            case REFERENCE_UNKNOWN -> index == 2;
            default -> false;
        };
    }

    /** Whether the fact names a field: by its label on a form, or as the record of a run spells it. */
    private static boolean namesField(ProblemKind kind, int index) {
        return switch (kind) {
            case CANNOT_READ,
                    LESS_THAN_NOTHING,
                    TWO_READINGS,
                    NEEDED,
                    UNUSUAL,
                    UNUSUAL_MEANT,
                    NOT_A_CYLINDER,
                    FORCE_CAME_BACK,
                    OUT_OF_RANGE,
                    LONGER_THAN_RUN -> index == 0;
            default -> false;
        };
    }

    /** Whether the fact is somebody else's sentence, which ours goes on to end. */
    private static boolean saidByTheSystem(ProblemKind kind, int index) {
        return switch (kind) {
            case NOT_A_LOGBOOK, LOGBOOK_DAMAGED, CANNOT_WRITE, CANNOT_READ_FILE, BACKUP_NOT_GOOD, PLACE_FAILED ->
                index == 1;
            case REFUSED_BY_LOGBOOK -> index == 2;
            default -> false;
        };
    }

    private static String withoutStop(String said) {
        return said.replaceFirst("[.!\\s]+$", "");
    }

    /** One value by its type alone. */
    String plain(Object fact) {
        if (fact instanceof Moment moment) {
            return measures.fullMoment(moment);
        }
        if (fact instanceof About about) {
            return measures.fullMoment(about);
        }
        if (fact instanceof LocalDate day) {
            return measures.date(day);
        }
        if (fact instanceof LocalTime time) {
            return measures.time(time);
        }
        if (fact instanceof Coded word) {
            return records.word(word);
        }
        if (fact instanceof Counter counter) {
            return records.counter(counter);
        }
        if (fact instanceof FieldOf field) {
            return records.field(field.kind(), field.component());
        }
        if (fact instanceof RecordType<?> type) {
            return records.one(type.kind());
        }
        if (fact instanceof Class<?> kind && Fact.class.isAssignableFrom(kind)) {
            return records.one(kind.asSubclass(Fact.class));
        }
        if (fact instanceof PullColumn column) {
            return texts.get("dyno.column." + column.name().toLowerCase(Locale.ROOT));
        }
        return measure(fact);
    }

    private String measure(Object fact) {
        if (fact instanceof RunningTime time) {
            return measures.running(time);
        }
        if (fact instanceof Length length) {
            return measures.length(length);
        }
        if (fact instanceof Pressure pressure) {
            return measures.pressure(pressure);
        }
        if (fact instanceof Temperature temperature) {
            return measures.temperature(temperature);
        }
        if (fact instanceof Volume volume) {
            return measures.volume(volume);
        }
        if (fact instanceof Distance distance) {
            return measures.distance(distance);
        }
        if (fact instanceof EngineSpeed speed) {
            return measures.speed(speed);
        }
        if (fact instanceof Money money) {
            return measures.money(money);
        }
        return fact instanceof Figure figure ? figure(figure) : number(fact);
    }

    private String figure(Figure figure) {
        if (figure.unit() instanceof Figure.Counted counted) {
            return new Amounts(texts, measures).range(counted.counter(), figure.value(), figure.value());
        }
        if (figure.unit() instanceof Figure.Measured measured) {
            return new MeasureWords(texts, measures).figure(measured.dimension(), figure.value());
        }
        if (figure.unit() instanceof Figure.Read read && read.unit() != ReadingKind.Unit.GRADE) {
            return new ReadingWords(texts, measures).figure(read.unit(), figure.value());
        }
        return texts.get("measures.months", figure.value());
    }

    private String number(Object fact) {
        if (fact instanceof BigDecimal figure) {
            return measures.number(figure, Math.max(0, figure.scale()));
        }
        if (fact instanceof Integer || fact instanceof Long || fact instanceof Short || fact instanceof Byte) {
            return measures.number(((Number) fact).longValue());
        }
        return oneLine(String.valueOf(fact));
    }

    /** Text from outside on one line, cut when very long. */
    private static String oneLine(String text) {
        String line = text.replaceAll("\\p{Cntrl}+", " ").strip();
        return line.codePointCount(0, line.length()) <= LONGEST
                ? line
                : line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "…";
    }
}
