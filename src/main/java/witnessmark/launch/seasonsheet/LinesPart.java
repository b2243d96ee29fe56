package witnessmark.launch.seasonsheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.IncidentCost;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.cost.result.Switches;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.Car;
import witnessmark.domain.CostCategory;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Id;
import witnessmark.domain.IncomeLine;
import witnessmark.logbook.money.Failure;
import witnessmark.logbook.money.SeasonSheetFacts;
import witnessmark.quantity.Money;
import witnessmark.report.SeasonSheet.Cell;
import witnessmark.report.SeasonSheet.Column;
import witnessmark.report.SeasonSheet.Part;
import witnessmark.report.SeasonSheet.Row;
import witnessmark.report.SeasonSheet.Section;
import witnessmark.report.SeasonSheet.Weight;

/** Words every line a figure is made of, in tables with letters, each sum under its lines. */
final class LinesPart {
    private final SeasonInk ink;
    private final SeasonSheetFacts sheet;
    private final LineRows lines;
    private final Money none;

    LinesPart(SeasonInk ink, SeasonSheetFacts sheet) {
        this.ink = ink;
        this.sheet = sheet;
        this.lines = new LineRows(ink, sheet.pieces());
        this.none = Money.none(sheet.page().total().currency());
    }

    Part part() {
        List<Section> sections = new ArrayList<>();
        FailureSections.costly(sheet.page().failures()).forEach(failure -> sections.add(of(failure)));
        sections.add(running());
        sections.add(listed("lines.c", counted(Place.OWN_WORK)));
        sections.add(listed("lines.d", sheet.pieces().kept()));
        sections.add(listed("lines.e", sheet.pieces().broughtIn()));
        sections.add(budget());
        sections.add(income());
        sections.add(new KindSections(ink, sheet.page()).behind(lines));
        sections.removeIf(section -> section.rows().isEmpty());
        return new Part(
                ink.say("lines.title"),
                ink.say("lines.board", lines.count()),
                sections.isEmpty() ? List.of() : List.of(ink.say("lines.under"), ink.say("lines.number")),
                sections);
    }

    /** What the total takes in, each column's sum under its lines; then what the choices leave out. */
    private Section of(Failure failure) {
        IncidentCost cost = failure.cost();
        Switches switches = sheet.page().switches();
        List<Row> rows = new ArrayList<>();
        for (Place place : switches.columns()) {
            Predicate<Piece> counts = piece -> piece.place() == place && switches.takes(piece);
            List<Piece> pieces = cost.pieces().stream().filter(counts).toList();
            if (!pieces.isEmpty()) {
                lines.sorted(pieces).forEach(piece -> rows.add(lines.row(piece, true, true)));
                rows.add(sum(Weight.SUM, true, ink.money().column(place), cost.column(place, switches)));
            }
        }
        String letter = FailureSections.letter(sheet.page().failures(), failure);
        String name = ink.season().mark(failure.incident().fact());
        rows.add(SeasonInk.sum(
                Weight.TOTAL,
                lines.columns(true).size(),
                LineRows.WHAT,
                ink.say("lines.together", name),
                ink.money().together(cost, switches)));
        List<Piece> left =
                cost.pieces().stream().filter(piece -> !switches.takes(piece)).toList();
        if (!left.isEmpty()) {
            lines.sorted(left).forEach(piece -> rows.add(lines.row(piece, true, true)));
            rows.add(sum(Weight.SUM, true, ink.say("lines.not", name), total(left)));
        }
        return new Section(
                ink.say("lines.a", letter, ink.season().name(failure.incident().fact())),
                lines.columns(true),
                rows,
                List.of());
    }

    /** By event and car, in the order of their first days. */
    private Section running() {
        List<Piece> running = counted(Place.RUNNING);
        Map<String, List<Piece>> groups = new LinkedHashMap<>();
        running.stream()
                .sorted(Comparator.comparing((Piece piece) -> firstDay(piece.event()))
                        .thenComparing(piece -> whose(piece.event(), piece.car())))
                .forEach(piece -> groups.computeIfAbsent(whose(piece.event(), piece.car()), name -> new ArrayList<>())
                        .add(piece));
        List<Row> rows = new ArrayList<>();
        groups.forEach((name, pieces) -> {
            pieces.forEach(piece -> rows.add(lines.row(piece, false, false)));
            rows.add(sum(Weight.SUM, false, name, total(pieces)));
        });
        return totalled("lines.b", rows, running);
    }

    /** What is for no event comes last. */
    private LocalDate firstDay(@Nullable Id<Event> id) {
        return Optional.ofNullable(id)
                .flatMap(ink.facts().of(Event.class)::find)
                .map(event -> event.fact().firstDay())
                .orElse(LocalDate.MAX);
    }

    private String whose(@Nullable Id<Event> event, @Nullable Id<Car> car) {
        return joined(Optional.of(ink.event(event).orElseGet(() -> ink.texts().get("season.noEvent"))), ink.car(car));
    }

    private Section listed(String heading, List<Piece> pieces) {
        List<Row> rows = new ArrayList<>();
        lines.sorted(pieces).forEach(piece -> rows.add(lines.row(piece, false, true)));
        return totalled(heading, rows, pieces);
    }

    private Section totalled(String heading, List<Row> rows, List<Piece> pieces) {
        if (!rows.isEmpty()) {
            rows.add(sum(Weight.TOTAL, false, ink.say("together"), total(pieces)));
        }
        return new Section(ink.say(heading), lines.columns(false), rows, List.of());
    }

    private Row sum(Weight weight, boolean where, String words, Money amount) {
        return SeasonInk.sum(weight, lines.columns(where).size(), LineRows.WHAT, words, ink.amount(amount));
    }

    private List<Piece> counted(Place place) {
        return lines.sorted(sheet.pieces().counted().stream()
                .filter(piece -> piece.place() == place)
                .toList());
    }

    private Money total(List<Piece> pieces) {
        return pieces.stream().map(Piece::amount).reduce(none, Money::plus);
    }

    /** By event and car; what has no rate is in no total. */
    private Section budget() {
        Map<String, List<BudgetLine>> groups = new LinkedHashMap<>();
        ink
                .facts()
                .of(BudgetLine.class)
                .where(line -> sheet.page().cost().season().has(line.day()))
                .stream()
                .map(Entry::fact)
                .filter(line -> ink.home(line.amount(), line.rate()).isPresent())
                .sorted(Comparator.comparing((BudgetLine line) -> firstDay(line.event()))
                        .thenComparing(line -> whose(line.event(), line.car()))
                        .thenComparing(BudgetLine::category))
                .forEach(line -> groups.computeIfAbsent(whose(line.event(), line.car()), name -> new ArrayList<>())
                        .add(line));
        List<Row> rows = new ArrayList<>();
        Money all = none;
        for (Map.Entry<String, List<BudgetLine>> group : groups.entrySet()) {
            Money sum = none;
            for (BudgetLine line : group.getValue()) {
                Money home = ink.home(line.amount(), line.rate()).orElseThrow();
                sum = sum.plus(home);
                rows.add(row(line.day(), category(line.category()), foreign(line), home));
            }
            all = all.plus(sum);
            rows.add(SeasonInk.sum(Weight.SUM, 3, 1, group.getKey(), ink.amount(sum)));
        }
        return closed("lines.f", rows, all);
    }

    private Row row(LocalDate day, String what, String more, Money home) {
        return new Row(Weight.LINE, List.of(Cell.of(ink.day(day)), Cell.of(what, more), Cell.of(ink.amount(home))));
    }

    private String foreign(BudgetLine line) {
        return line.rate() == null ? line.note() : ink.rate(line.amount(), line.rate());
    }

    private Section income() {
        List<Row> rows = new ArrayList<>();
        Money sum = none;
        for (Entry<IncomeLine> entry : sheet.page().income()) {
            IncomeLine line = entry.fact();
            Optional<Money> home = ink.home(line.amount(), line.rate());
            if (home.isPresent()) {
                sum = sum.plus(home.get());
                rows.add(row(
                        line.day(),
                        line.what(),
                        joined(
                                Optional.of(ink.records().word(line.kind())),
                                Optional.of(line.from()),
                                ink.event(line.event()),
                                ink.car(line.car()),
                                Optional.ofNullable(line.rate()).map(rate -> ink.rate(line.amount(), rate))),
                        home.get()));
            }
        }
        return closed("lines.g", rows, sum);
    }

    private Section closed(String heading, List<Row> rows, Money sum) {
        if (!rows.isEmpty()) {
            rows.add(SeasonInk.sum(Weight.TOTAL, 3, 1, ink.say("together"), ink.amount(sum)));
        }
        return new Section(
                ink.say(heading),
                List.of(
                        Column.mark(ink.texts().get("season.column.day")),
                        Column.runningOn(ink.say("lines.what"), 1),
                        Column.figure(ink.texts().get("season.column.amount"))),
                rows,
                List.of());
    }

    private String category(CostCategory category) {
        return ink.records().label(ink.records().word(category));
    }

    @SafeVarargs
    @SuppressWarnings("varargs") // only read
    private String joined(Optional<String>... words) {
        List<String> said = Stream.of(words)
                .flatMap(Optional::stream)
                .filter(word -> !word.isEmpty())
                .toList();
        return said.isEmpty() ? "" : ink.measures().row(said);
    }
}
