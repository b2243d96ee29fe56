package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Fact;
import witnessmark.domain.Grade;
import witnessmark.domain.LimitRank;
import witnessmark.domain.PartKind;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.ReadingLimit;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;

/** Sets what a reading may be, and how old it may get. */
public final class SetReadingLimit implements LogSheet {
    public static final SheetField NAME = text("limit_name", 1);
    public static final SheetField KIND = choice("reading_kind", 1);
    public static final SheetField IN = choice("limit_in", 1);
    public static final SheetField OF = choice("limit_of", 1);
    public static final SheetField AT_LEAST = text("at_least", 1);
    public static final SheetField AT_MOST = text("at_most", 1);
    public static final SheetField CHANGE = text("change_at_most", 1);
    public static final SheetField FALL = text("fall_at_most", 1);
    public static final SheetField WORST = choice("worst_grade", 1);
    public static final SheetField EVERY = of("every", FieldKind.HOURS);
    public static final SheetField RANK = choice("rank", 1);
    public static final SheetField SOURCE = text("source", 2);
    public static final SheetField FROM = of("limit_from", FieldKind.DAY);

    private static final int WHOLE = 10_000;

    @Override
    public String key() {
        return "set_reading_limit";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("limit_for", List.of(KIND, IN, OF, NAME)),
                SheetGroup.of("reading_may", List.of(AT_LEAST, AT_MOST, CHANGE, FALL), List.of(WORST), List.of(EVERY)),
                SheetGroup.of("limit_source", List.of(RANK, SOURCE, FROM)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(KIND, ReadingKind.LEAK_DOWN.code());
        out.put(IN, EngineScope.fresh(sight));
        out.put(OF, SheetWord.ENGINE.key());
        out.put(RANK, LimitRank.OWN.code());
        out.put(FROM, sight.today().toString());
        return out;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean graded =
                kind(typed) != null && Objects.requireNonNull(kind(typed)).graded();
        if (field.equals(WORST)) {
            return graded;
        }
        return !graded || !List.of(AT_LEAST, AT_MOST, CHANGE, FALL).contains(field);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "reading_kind" -> Choice.words(ReadingKind.values());
            case "limit_in" -> EngineScope.choices(sight, true);
            case "limit_of" -> {
                List<Choice> choices = new ArrayList<>(List.of(SheetWord.ENGINE.choice()));
                choices.addAll(Choice.words(PartKind.values()));
                yield choices;
            }
            case "worst_grade" -> {
                ReadingKind kind = kind(typed);
                List<Choice> choices = new ArrayList<>(List.of(SheetWord.NONE.choice()));
                Arrays.stream(Grade.values())
                        .filter(grade -> kind != null && grade.of(kind))
                        .forEach(grade -> choices.add(Choice.of(grade.code(), grade)));
                yield choices;
            }
            case "rank" -> Choice.words(LimitRank.values());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        ReadingKind kind = in.word(KIND, ReadingKind.class);
        EngineScope scope = EngineScope.read(in, IN);
        @Nullable PartKind part = in.is(OF, SheetWord.ENGINE) ? null : in.word(OF, PartKind.class);
        String name = in.needed(NAME);
        in.note(NAME, SheetNote.of("reading_limit_name"));
        @Nullable Bounds bounds = kind == null ? null : Bounds.read(in, kind);
        RunningTime every = every(in);
        LimitRank rank = in.word(RANK, LimitRank.class);
        String source = in.needed(SOURCE);
        in.note(SOURCE, SheetNote.of("source_example"));
        LocalDate from = new ReadValues(in).firstDay(FROM);
        if (in.fine() && kind != null && bounds != null && bounds.empty() && every == null) {
            SheetField first = kind.graded() ? WORST : AT_MOST;
            in.wrong(first, ProblemKind.NEEDED, first);
        }
        if (!in.fine() || kind == null || bounds == null || rank == null || from == null) {
            return;
        }
        in.make(
                NAME,
                new ReadingLimit(
                        name,
                        kind,
                        scope.designId(),
                        part,
                        scope.engineId(),
                        bounds.atLeast(),
                        bounds.atMost(),
                        bounds.change(),
                        bounds.fall(),
                        bounds.worst(),
                        every,
                        rank,
                        source,
                        from,
                        null));
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof ReadingLimit limit)) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(KIND, limit.kind().code());
        out.put(IN, EngineScope.key(limit.design(), limit.engine()));
        out.put(
                OF,
                limit.partKind() == null
                        ? SheetWord.ENGINE.key()
                        : limit.partKind().code());
        out.put(NAME, limit.name());
        out.put(AT_LEAST, AsText.reading(limit.kind().unit(), limit.atLeast(), sight.units()));
        out.put(AT_MOST, AsText.reading(limit.kind().unit(), limit.atMost(), sight.units()));
        out.put(CHANGE, AsText.reading(limit.kind().unit(), limit.changeAtMost(), sight.units()));
        out.put(FALL, AsText.percent(limit.fallAtMost()));
        out.put(WORST, AsText.code(limit.worstGrade()));
        out.put(EVERY, AsText.hours(limit.every()));
        out.put(RANK, limit.rank().code());
        out.put(SOURCE, limit.source());
        out.put(FROM, limit.validFrom().toString());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(NAME));
    }

    /** What a reading may be. */
    private record Bounds(
            @Nullable Long atLeast,
            @Nullable Long atMost,
            @Nullable Long change,
            @Nullable Integer fall,
            @Nullable Grade worst) {
        static Bounds read(ReadSheet in, ReadingKind kind) {
            if (kind.graded()) {
                Grade grade = in.text(WORST).isEmpty() ? null : in.word(WORST, Grade.class);
                if (grade != null && !grade.of(kind)) {
                    in.wrong(WORST, ProblemKind.NEEDED, WORST);
                }
                return new Bounds(null, null, null, null, grade);
            }
            Long least = ReadingFigure.read(in, AT_LEAST, kind);
            Long most = ReadingFigure.read(in, AT_MOST, kind);
            if (least != null && most != null && least > most) {
                in.wrong(AT_MOST, ProblemKind.SAYS_OTHERWISE, AT_MOST, in.text(AT_MOST), AT_LEAST, in.text(AT_LEAST));
            }
            return new Bounds(least, most, ReadingFigure.read(in, CHANGE, kind), fall(in), null);
        }

        boolean empty() {
            return Stream.of(atLeast, atMost, change, fall, worst).allMatch(Objects::isNull);
        }

        private static @Nullable Integer fall(ReadSheet in) {
            in.note(FALL, SheetNote.of("percent_of_baseline"));
            Long fall = new ReadValues(in).read(FALL, ReadingFigure::percent);
            if (fall != null && fall > WHOLE) {
                in.wrong(FALL, ProblemKind.CANNOT_READ, FALL, in.text(FALL), "8 %");
                return null;
            }
            if (fall != null) {
                in.note(FALL, SheetNote.echo("understood", new ReadingFigure(ReadingKind.LEAK_DOWN, fall)));
            }
            return fall == null ? null : Math.toIntExact(fall);
        }
    }

    private static @Nullable RunningTime every(ReadSheet in) {
        in.note(EVERY, SheetNote.of("every"));
        RunningTime every = new ReadValues(in).hours(EVERY);
        if (every != null && every.millis() == 0) {
            in.wrong(EVERY, ProblemKind.CANNOT_READ, EVERY, in.text(EVERY), "3.5");
            return null;
        }
        return every;
    }

    private static @Nullable ReadingKind kind(SheetTyped typed) {
        return Coded.find(ReadingKind.class, typed.text(KIND)).orElse(null);
    }
}
