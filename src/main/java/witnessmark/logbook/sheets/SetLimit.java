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
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.quantity.Counter;

/**
 * Sets a limit: for a kind of part in engines of a design, for one part, or for one engine as a whole. What falls due
 * says since when it counts; an engine's own counts since its bottom end was last opened and closed.
 */
public final class SetLimit implements LogSheet {
    public static final SheetField SCOPE = choice("scope", 1);
    public static final SheetField DESIGN = choice("limit_design", 1);
    public static final SheetField PART_KIND = choice("part_kind", 1);
    public static final SheetField PART = choice("limit_part", 2);
    public static final SheetField ENGINE = choice("limit_engine", 1);
    public static final SheetField ACTION = choice("action", 1);
    public static final SheetField WORK_DUE = text("work_due", 1);
    public static final SheetField COUNTER = choice("counter", 1);
    public static final SheetField FIGURE = text("figure", 1);
    public static final SheetField RANK = choice("rank", 1);
    public static final SheetField SOURCE = text("source", 2);
    public static final SheetField FROM = of("limit_from", FieldKind.DAY);

    @Override
    public String key() {
        return "set_limit";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("limit_for", List.of(SCOPE, DESIGN, PART_KIND), List.of(PART), List.of(ENGINE)),
                SheetGroup.of("limit", List.of(ACTION, WORK_DUE, COUNTER, FIGURE)),
                SheetGroup.of("limit_source", List.of(RANK, SOURCE, FROM)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        List<Entry<EngineDesign>> designs = sight.facts().of(EngineDesign.class).where(d -> true);
        out.put(SCOPE, SheetWord.KIND_IN_DESIGN.key());
        out.put(DESIGN, designs.size() == 1 ? designs.get(0).id().text() : SheetWord.ALL_DESIGNS.key());
        out.put(ACTION, LimitAction.RENEW.code());
        out.put(COUNTER, Counter.RUNNING.code());
        out.put(RANK, LimitRank.OWN.code());
        out.put(FROM, sight.today().toString());
        return out;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "scope" ->
                List.of(
                        SheetWord.KIND_IN_DESIGN.choice(),
                        SheetWord.ONE_PART.choice(),
                        SheetWord.WHOLE_ENGINE.choice());
            case "limit_design" -> {
                List<Choice> choices = new ArrayList<>();
                choices.add(SheetWord.ALL_DESIGNS.choice());
                choices.addAll(sight.all(EngineDesign.class, design -> true));
                yield choices;
            }
            case "part_kind" -> Choice.words(PartKind.values());
            case "limit_part" -> sight.all(Part.class, part -> true);
            case "limit_engine" -> sight.all(Engine.class, engine -> true);
            case "action" -> Choice.words(LimitAction.values());
            case "counter" ->
                Arrays.stream(Counter.values())
                        .map(counter -> Choice.of(counter.code(), counter))
                        .toList();
            case "rank" -> Choice.words(LimitRank.values());
            default -> List.of();
        };
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(DESIGN) || field.equals(PART_KIND)) {
            return typed.is(SCOPE, SheetWord.KIND_IN_DESIGN);
        }
        if (field.equals(ENGINE)) {
            return typed.is(SCOPE, SheetWord.WHOLE_ENGINE);
        }
        return !field.equals(PART) || typed.is(SCOPE, SheetWord.ONE_PART);
    }

    @Override
    public void read(ReadSheet in) {
        in.needed(SCOPE);
        boolean ofKind = in.is(SCOPE, SheetWord.KIND_IN_DESIGN);
        @Nullable Entry<Part> part = in.is(SCOPE, SheetWord.ONE_PART) ? in.chosen(PART, Part.class) : null;
        @Nullable Entry<Engine> engine = in.is(SCOPE, SheetWord.WHOLE_ENGINE) ? engine(in) : null;
        @Nullable PartKind kind = ofKind ? in.word(PART_KIND, PartKind.class) : null;
        @Nullable
        Entry<EngineDesign> design =
                !ofKind || in.is(DESIGN, SheetWord.ALL_DESIGNS) ? null : in.chosen(DESIGN, EngineDesign.class);
        LimitAction action = in.word(ACTION, LimitAction.class);
        if (action != null && engine == null) {
            in.note(ACTION, SheetNote.of(since(action)));
        }
        LimitRank rank = in.word(RANK, LimitRank.class);
        String due = in.needed(WORK_DUE);
        in.note(WORK_DUE, SheetNote.of("due_example"));
        String source = rank == LimitRank.OWN ? in.text(SOURCE) : in.needed(SOURCE); // our own habit is written nowhere
        in.note(SOURCE, SheetNote.of("source_example"));
        Counter counter = counter(in.text(COUNTER));
        in.needed(FIGURE);
        Long amount = RecordAmounts.limit(in, FIGURE, counter);
        in.needed(FROM);
        LocalDate from = new ReadValues(in).firstDay(FROM);
        if (!in.fine() || action == null || rank == null || amount == null || from == null) {
            return;
        }
        in.make(
                FIGURE,
                new Limit(
                        due,
                        action,
                        design == null ? null : design.id(),
                        kind,
                        null,
                        part == null ? null : part.id(),
                        engine == null ? null : engine.id(),
                        null,
                        counter,
                        amount,
                        rank,
                        source,
                        from,
                        null));
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof Limit limit)
                || limit.partDesign() != null
                || (limit.engine() != null && (limit.part() != null || limit.partKind() != null))
                || limit.car() != null) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(SCOPE, scope(limit).key());
        out.put(ENGINE, limit.engine() == null ? "" : limit.engine().text());
        out.put(DESIGN, EngineScope.key(limit.design(), null));
        out.put(PART_KIND, AsText.code(limit.partKind()));
        out.put(PART, limit.part() == null ? "" : limit.part().text());
        out.put(ACTION, limit.action().code());
        out.put(WORK_DUE, limit.name());
        out.put(COUNTER, limit.counter().code());
        out.put(FIGURE, AsText.amount(limit.counter(), limit.amount(), sight.units()));
        out.put(RANK, limit.rank().code());
        out.put(SOURCE, limit.source());
        out.put(FROM, limit.validFrom().toString());
        return Optional.of(out);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(WORK_DUE));
    }

    /** The sentence that says since when a limit of a part counts. */
    private static String since(LimitAction action) {
        return switch (action) {
            case LOOK -> "since_look";
            case CRACK_TEST -> "since_crack_test";
            case SKIM -> "since_skim";
            case REBUILD -> "since_engine_rebuild";
            case RENEW -> "since_new";
        };
    }

    private static SheetWord scope(Limit limit) {
        return limit.engine() != null
                ? SheetWord.WHOLE_ENGINE
                : limit.part() == null ? SheetWord.KIND_IN_DESIGN : SheetWord.ONE_PART;
    }

    private static @Nullable Entry<Engine> engine(ReadSheet in) {
        in.note(ENGINE, SheetNote.of("since_rebuild"));
        return in.chosen(ENGINE, Engine.class);
    }

    private static Counter counter(String code) {
        return Counter.find(code).orElse(Counter.RUNNING);
    }
}
