package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.LimitRank;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.PartDesign;
import witnessmark.domain.SizeLimit;
import witnessmark.domain.Spot;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedMeasure;

/** Sets what a figure of the build sheet may be, for a design of engine or of part; one set before of that rank ends. */
public final class SetSizeLimit implements LogSheet {
    public static final SheetField KIND = choice("size_kind", 1);
    public static final SheetField SPOT = choice("size_spot", 1);
    public static final SheetField OF = choice("size_of", 2);
    public static final SheetField AT_LEAST = text("at_least", 1);
    public static final SheetField AT_MOST = text("at_most", 1);
    public static final SheetField AIM_LEAST = text("aim_least", 1);
    public static final SheetField AIM_MOST = text("aim_most", 1);
    public static final SheetField RANK = choice("rank", 1);
    public static final SheetField SOURCE = text("source", 2);
    public static final SheetField FROM = of("limit_from", FieldKind.DAY);

    @Override
    public String key() {
        return "set_size_limit";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("limit_for", List.of(KIND, SPOT), List.of(OF)),
                SheetGroup.of("size_may", List.of(AT_LEAST, AT_MOST, AIM_LEAST, AIM_MOST)),
                SheetGroup.of("limit_source", List.of(RANK, SOURCE, FROM)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<EngineDesign>> designs = sight.facts().of(EngineDesign.class).where(design -> true);
        Map<SheetField, String> out = new HashMap<>();
        out.put(KIND, MeasureKind.CROWN_TO_HEAD.code());
        out.put(SPOT, "");
        out.put(OF, designs.size() == 1 ? designs.get(0).id().text() : "");
        out.put(RANK, LimitRank.OWN.code());
        out.put(FROM, sight.today().toString());
        return out;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        MeasureKind kind = kind(typed);
        return !field.equals(SPOT) || kind != null && !kind.spots().isEmpty();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "size_kind" ->
                Arrays.stream(MeasureKind.values())
                        .sorted(Comparator.comparing(MeasureKind::code))
                        .map(kind -> Choice.of(kind.code(), kind))
                        .toList();
            case "size_spot" -> {
                List<Choice> choices = new ArrayList<>(List.of(SheetWord.ALL_PLACES.choice()));
                MeasureKind kind = kind(typed);
                if (kind != null) {
                    kind.spots().forEach(spot -> choices.add(Choice.of(spot.code(), spot)));
                }
                yield choices;
            }
            case "size_of" -> {
                List<Choice> choices = new ArrayList<>();
                sight.facts()
                        .of(EngineDesign.class)
                        .where(design -> true)
                        .forEach(design -> choices.add(
                                Choice.of(design.id().text(), design.fact().name())));
                sight.facts().of(PartDesign.class).where(design -> true).stream()
                        .sorted(Comparator.comparing(design -> design.fact().name()))
                        .forEach(design -> choices.add(Choice.of(
                                design.id().text(),
                                design.fact().name(),
                                design.fact().kind())));
                yield choices;
            }
            case "rank" -> Choice.words(LimitRank.values());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        MeasureKind kind = in.word(KIND, MeasureKind.class);
        Spot spot = spot(in, kind);
        Id<EngineDesign> engine = design(in, EngineDesign.class);
        Id<PartDesign> part = design(in, PartDesign.class);
        if (engine == null && part == null) {
            in.wrong(OF, ProblemKind.NEEDED, OF);
        }
        Long least = kind == null ? null : figure(in, AT_LEAST, kind);
        Long most = kind == null ? null : figure(in, AT_MOST, kind);
        Long aimLeast = kind == null ? null : figure(in, AIM_LEAST, kind);
        Long aimMost = kind == null ? null : figure(in, AIM_MOST, kind);
        in.note(AIM_MOST, SheetNote.of("size_aim"));
        LimitRank rank = in.word(RANK, LimitRank.class);
        String source = in.needed(SOURCE);
        in.note(SOURCE, SheetNote.of("source_example"));
        LocalDate from = new ReadValues(in).firstDay(FROM);
        if (in.fine() && Stream.of(least, most, aimLeast, aimMost).allMatch(Objects::isNull)) {
            in.wrong(AT_MOST, ProblemKind.NEEDED, AT_MOST);
        }
        crossed(in, AT_LEAST, least, AT_MOST, most);
        crossed(in, AIM_LEAST, aimLeast, AIM_MOST, aimMost);
        crossed(in, AT_LEAST, least, AIM_MOST, aimMost);
        crossed(in, AIM_LEAST, aimLeast, AT_MOST, most);
        if (in.fine() && kind != null && rank != null && from != null) {
            write(
                    in,
                    new SizeLimit(kind, spot, engine, part, least, most, aimLeast, aimMost, rank, source, from, null));
        }
    }

    /** A figure set before for the same, of the same rank, ends the day before; one that began that day is put right. */
    private static void write(ReadSheet in, SizeLimit limit) {
        boolean written = false;
        for (Entry<SizeLimit> old : rivals(in.sight(), limit)) {
            if (old.fact().validFrom().isAfter(limit.validFrom())) {
                in.wrong(
                        FROM,
                        ProblemKind.EARLIER_THAN,
                        FROM,
                        limit.validFrom(),
                        old.fact().validFrom());
                return;
            }
            boolean sameDay = old.fact().validFrom().equals(limit.validFrom());
            in.change(
                    KIND,
                    old,
                    sameDay ? limit : ended(old.fact(), limit.validFrom().minusDays(1)));
            written |= sameDay;
        }
        if (!written) {
            in.make(KIND, limit);
        }
    }

    private static List<Entry<SizeLimit>> rivals(SheetSight sight, SizeLimit limit) {
        return sight.facts()
                .of(SizeLimit.class)
                .where(other -> other.kind() == limit.kind()
                        && other.spot() == limit.spot()
                        && Objects.equals(other.design(), limit.design())
                        && Objects.equals(other.partDesign(), limit.partDesign())
                        && other.rank() == limit.rank()
                        && (other.validTo() == null || !other.validTo().isBefore(limit.validFrom())));
    }

    private static SizeLimit ended(SizeLimit limit, LocalDate last) {
        return new SizeLimit(
                limit.kind(),
                limit.spot(),
                limit.design(),
                limit.partDesign(),
                limit.atLeast(),
                limit.atMost(),
                limit.aimLeast(),
                limit.aimMost(),
                limit.rank(),
                limit.source(),
                limit.validFrom(),
                last);
    }

    private static @Nullable Spot spot(ReadSheet in, @Nullable MeasureKind kind) {
        if (kind == null || kind.spots().isEmpty() || in.text(SPOT).isEmpty() || in.is(SPOT, SheetWord.ALL_PLACES)) {
            return null;
        }
        Spot spot = in.word(SPOT, Spot.class);
        if (spot != null && !kind.spots().contains(spot)) {
            in.wrong(SPOT, ProblemKind.NEEDED, SPOT);
            return null;
        }
        return spot;
    }

    private static <F extends Fact> @Nullable Id<F> design(ReadSheet in, Class<F> type) {
        return in.sight().find(type, in.text(OF)).map(Entry::id).orElse(null);
    }

    static @Nullable Long figure(ReadSheet in, SheetField field, MeasureKind kind) {
        Dimension dimension = kind.dimension();
        MeasureUnit unit = MeasureUnit.shown(dimension);
        in.note(field, SheetNote.of("in_sign", unit.sign()));
        String text = in.text(field);
        if (text.isEmpty()) {
            return null;
        }
        Typed<TypedMeasure> typed = TypedMeasure.read(text, unit, kind.sided());
        if (typed instanceof Typed.Unreadable<TypedMeasure> wrong) {
            in.wrong(field, Problem.unread(field, text, wrong.example()));
            return null;
        }
        return typed.only().map(TypedMeasure::parts).orElse(null);
    }

    static void crossed(ReadSheet in, SheetField low, @Nullable Long least, SheetField high, @Nullable Long most) {
        if (least != null && most != null && least > most) {
            in.wrong(high, ProblemKind.SAYS_OTHERWISE, high, in.text(high), low, in.text(low));
        }
    }

    @Override
    public Optional<Map<SheetField, String>> written(Fact fact, SheetSight sight) {
        if (!(fact instanceof SizeLimit limit) || limit.validTo() != null) {
            return Optional.empty();
        }
        Map<SheetField, String> out = new HashMap<>();
        out.put(KIND, limit.kind().code());
        out.put(
                SPOT,
                limit.spot() == null ? SheetWord.ALL_PLACES.key() : limit.spot().code());
        Id<?> of = limit.partDesign() == null ? limit.design() : limit.partDesign();
        out.put(OF, of == null ? "" : of.text());
        out.put(AT_LEAST, shown(limit.kind(), limit.atLeast()));
        out.put(AT_MOST, shown(limit.kind(), limit.atMost()));
        out.put(AIM_LEAST, shown(limit.kind(), limit.aimLeast()));
        out.put(AIM_MOST, shown(limit.kind(), limit.aimMost()));
        out.put(RANK, limit.rank().code());
        out.put(SOURCE, limit.source());
        out.put(FROM, limit.validFrom().toString());
        return Optional.of(out);
    }

    static String shown(MeasureKind kind, @Nullable Long figure) {
        return figure == null ? "" : MeasureUnit.text(kind.dimension(), figure);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(KIND));
    }

    private static @Nullable MeasureKind kind(SheetTyped typed) {
        return Coded.find(MeasureKind.class, typed.text(KIND)).orElse(null);
    }
}
