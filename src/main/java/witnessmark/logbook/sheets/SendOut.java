package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.SentOut;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Sends a part or an engine out for work, or orders new parts. */
public final class SendOut implements LogSheet {
    public static final SheetField WHAT = choice("send_what", 2);
    public static final SheetField TO = text("sent_to", 2);
    public static final SheetField COUNT = text("count", 1);
    public static final SheetField ASKED = text("asked_for", 2);
    public static final SheetField TARGET = text("target", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField PROMISED = of("promised", FieldKind.DAY);
    public static final SheetField BY = text("by", 1);
    public static final SheetField NOTE = text("note", 4);

    @Override
    public String key() {
        return "send_out";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("send_out", List.of(WHAT, TO), NewDesign.first(COUNT), NewDesign.second()),
                SheetGroup.of(
                        "send_asked", List.of(ASKED, TARGET), List.of(WHEN, WHEN_TIME, PROMISED, BY), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        NewDesign.fresh(out, sight);
        out.put(WHEN, sight.today().toString());
        out.put(BY, sight.who());
        return out;
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(WHAT, EngineOrPart.key(engine, null));
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(TO, WHEN, WHEN_TIME, PROMISED, BY);
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean order = typed.is(WHAT, SheetWord.NEW_PARTS);
        return field.equals(COUNT) ? order : !NewDesign.has(field) || (order && NewDesign.asks(field, typed));
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (!field.equals(WHAT)) {
            return NewDesign.choices(field, sight, design -> true);
        }
        List<Choice> choices = new ArrayList<>();
        choices.add(SheetWord.NEW_PARTS.choice());
        choices.addAll(EngineOrPart.engines(sight));
        PartsNow.choices(sight, PartsNow::inUse)
                .forEach(choice -> choices.add(new Choice(EngineOrPart.partKey(choice.key()), choice.facts())));
        return choices;
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        boolean order = in.is(WHAT, SheetWord.NEW_PARTS);
        @Nullable EngineOrPart what = order ? null : EngineOrPart.read(in, WHAT);
        @Nullable NewDesign design = order ? NewDesign.read(in, null) : null;
        @Nullable Integer count = order ? values.atLeast(COUNT, 1) : null;
        String to = in.needed(TO);
        in.note(ASKED, SheetNote.of(order ? "asked_order_example" : "asked_example"));
        String asked = order ? in.text(ASKED) : in.needed(ASKED);
        in.note(TARGET, SheetNote.of("target_example"));
        Moment when = values.moment(WHEN, WHEN_TIME);
        LocalDate promised = promised(in, values, when);
        in.blame(WHAT, ProblemKind.PART_STILL_FITTED);
        in.blame(WHEN, ProblemKind.RUN_WHILE_AWAY);
        alreadyAway(in, what);
        if (!in.fine() || when == null || (!order && what == null)) {
            return;
        }
        in.make(
                WHAT,
                new SentOut(
                        what == null ? null : what.partId(),
                        what == null ? null : what.engineId(),
                        design == null ? null : design.make(in),
                        count,
                        to,
                        asked,
                        in.text(TARGET),
                        when,
                        promised,
                        null,
                        "",
                        in.text(BY),
                        in.text(NOTE)));
    }

    private static @Nullable LocalDate promised(ReadSheet in, ReadValues values, @Nullable Moment sent) {
        LocalDate promised = values.dayAhead(PROMISED);
        if (in.text(PROMISED).isEmpty()) {
            in.note(PROMISED, SheetNote.of("nothing_promised"));
        }
        if (promised != null && sent != null && promised.isBefore(sent.day())) {
            in.wrong(PROMISED, ProblemKind.EARLIER_THAN, PROMISED, promised, sent);
        }
        return promised;
    }

    private static void alreadyAway(ReadSheet in, @Nullable EngineOrPart what) {
        in
                .sight()
                .facts()
                .of(SentOut.class)
                .where(sent -> what != null
                        && sent.back() == null
                        && (sent.part() != null && sent.part().equals(what.partId())
                                || sent.engine() != null && sent.engine().equals(what.engineId())))
                .stream()
                .findFirst()
                .ifPresent(entry -> in.wrong(
                        WHAT,
                        ProblemKind.PART_AWAY,
                        Objects.requireNonNull(what).name(),
                        entry.fact().sentTo(),
                        entry.fact().from()));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(
                typed.is(WHAT, SheetWord.NEW_PARTS)
                        ? NewDesign.name(typed, sight)
                        : EngineOrPart.of(sight, typed.text(WHAT))
                                .map(EngineOrPart::name)
                                .orElse(""),
                typed.text(TO));
    }
}
