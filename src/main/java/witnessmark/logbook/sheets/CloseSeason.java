package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.Costs;
import witnessmark.cost.SeasonRunning;
import witnessmark.cost.SeasonTotals;
import witnessmark.cost.Seasons;
import witnessmark.cost.result.SeasonCost;
import witnessmark.cost.result.SeasonSpan;
import witnessmark.domain.Entry;
import witnessmark.domain.Season;
import witnessmark.ledger.AsOf;
import witnessmark.outcome.ProblemKind;

/** Closes a season: its figures are kept as they are reported now. Lives go on as they are. */
public final class CloseSeason implements LogSheet {
    public static final SheetField SEASON = choice("season", 1);
    public static final SheetField FIRST = of("season_first", FieldKind.DAY);
    public static final SheetField LAST = of("season_last", FieldKind.DAY);
    public static final SheetField BY = text("by", 1);
    public static final SheetField NOTE = text("note", 4);

    @Override
    public String key() {
        return "close_season";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of("close_season", List.of(SEASON, FIRST, LAST, BY), List.of(NOTE)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(BY, sight.who());
        open(sight).stream().findFirst().ifPresent(season -> {
            out.put(SEASON, season.name());
            out.put(FIRST, season.first().toString());
            out.put(LAST, season.last().toString());
        });
        return out;
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        return picked.equals(SEASON)
                ? Seasons.named(sight.facts(), typed.text(SEASON))
                        .map(season -> Map.of(
                                FIRST,
                                season.first().toString(),
                                LAST,
                                season.last().toString()))
                        .orElse(Map.of())
                : Map.of();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(SEASON)
                ? open(sight).stream()
                        .map(season -> Choice.of(season.name(), SheetNote.of("season_named", season.name())))
                        .toList()
                : List.of();
    }

    /** Those that nobody closed, the earliest first. */
    private static List<SeasonSpan> open(SheetSight sight) {
        return Seasons.all(sight.facts(), sight.today()).stream()
                .filter(season -> written(sight, season)
                        .filter(entry -> entry.fact().closed() != null)
                        .isEmpty())
                .filter(season -> !season.first().isAfter(sight.today()))
                .toList();
    }

    private static Optional<Entry<Season>> written(SheetSight sight, SeasonSpan season) {
        return Optional.ofNullable(season.season())
                .flatMap(id -> sight.facts().of(Season.class).find(id));
    }

    @Override
    public void read(ReadSheet in) {
        String name = in.needed(SEASON);
        ReadValues values = new ReadValues(in);
        LocalDate first = values.plannedDay(FIRST);
        LocalDate last = values.plannedDay(LAST);
        in.needed(BY);
        if (first != null && last != null && last.isBefore(first)) {
            in.wrong(LAST, ProblemKind.ENDS_BEFORE_IT_BEGINS, LAST, first, last);
        } else if (last != null && last.isAfter(in.sight().today())) {
            in.wrong(LAST, ProblemKind.SEASON_NOT_OVER, name, last);
        }
        if (first == null || last == null || last.isBefore(first) || name.isEmpty()) {
            return;
        }
        @Nullable
        Entry<Season> written = in.sight().facts().of(Season.class).named(name).orElse(null);
        SeasonCost cost = cost(in.sight(), new SeasonSpan(name, first, last, written == null ? null : written.id()));
        in.note(
                SEASON,
                SheetNote.echo("season_reported", cost.spent(), cost.cash().plus(cost.missed())));
        if (!in.fine()) {
            return;
        }
        Season closed = new Season(
                name,
                first,
                last,
                in.sight().now(),
                in.text(BY),
                cost.budget(),
                cost.spent(),
                cost.income(),
                cost.cash(),
                cost.labour(),
                cost.missed(),
                cost.running(),
                in.text(NOTE));
        if (written == null) {
            in.make(SEASON, closed);
        } else {
            in.change(SEASON, written, closed);
        }
    }

    private static SeasonCost cost(SheetSight sight, SeasonSpan season) {
        AsOf asOf = new AsOf(sight.today(), sight.view().zone());
        return SeasonTotals.of(
                sight.facts(),
                Costs.asOf(sight.facts(), asOf),
                asOf,
                season,
                new SeasonRunning(sight.facts(), season, asOf).all());
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(SEASON));
    }
}
