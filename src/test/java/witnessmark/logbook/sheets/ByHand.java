package witnessmark.logbook.sheets;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Trigger;
import witnessmark.ledger.Holds;
import witnessmark.ledger.Marks;
import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.quantity.typed.DayOrder;

/** A logbook of one car and one engine with rods and springs, written by sheets, and what tests ask of it. */
abstract class ByHand {
    static final long HOUR = 3_600_000;
    static final LocalDate FROM = LocalDate.of(2026, 3, 1);

    @TempDir
    Path folder;

    OwnLogbook own;

    @BeforeEach
    void begin() {
        own = new OwnLogbook(folder);
        own.save(new AddCar(), "name", "7").orThrow();
        own.save(
                        new AddEngine(),
                        "number",
                        "H1",
                        "design_name",
                        "Quarrow 2.0",
                        "cylinders",
                        "4",
                        "limiter",
                        "8200",
                        "hours_how",
                        "part_new",
                        "car",
                        "7",
                        "since",
                        "1 Mar")
                .orThrow();
        fit("rods", "RS-1");
        fit("valve springs", "VS-1");
    }

    @AfterEach
    void end() {
        own.close();
    }

    void setOverRev() {
        own.save(
                        new SetTrigger(),
                        "trigger_name",
                        "over-rev",
                        "trigger_figure",
                        "8500",
                        "lasting",
                        "0.1",
                        "holds",
                        "rods; valve spr",
                        "held_asks",
                        "rods crack tested",
                        "source",
                        "ours",
                        "limit_from",
                        "1 Mar")
                .orThrow();
    }

    Trigger trigger(String... more) {
        Map<SheetField, String> typed = own.filled(
                new SetTrigger(), "trigger_name", "t", "held_asks", "look", "source", "ours", "limit_from", "1 Mar");
        typed.putAll(own.filled(new SetTrigger(), more).entrySet().stream()
                .filter(entry -> List.of(more).contains(entry.getKey().key()))
                .collect(java.util.stream.Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
        own.sheets.save(new SetTrigger(), typed, "by hand").orThrow();
        return last(Trigger.class);
    }

    void limit(String rank, String hours) {
        own.save(
                        new SetLimit(),
                        "part_kind",
                        "valve springs",
                        "work_due",
                        "renew valve springs",
                        "figure",
                        hours,
                        "rank",
                        rank,
                        "source",
                        "a sheet",
                        "limit_from",
                        "1 Mar")
                .orThrow();
    }

    Map<SheetField, String> runOn(String upTo, String asked) {
        Map<SheetField, String> typed = own.filled(new SignRunOn(), "up_to", upTo, "run_on_why", "no set on the shelf");
        typed.put(SignRunOn.ASKED, asked);
        typed.put(
                SignRunOn.LIMIT,
                new SignRunOn()
                        .choices(SignRunOn.LIMIT, new SheetTyped(typed), own.sheets.sight())
                        .get(0)
                        .key());
        return typed;
    }

    Map<SheetField, String> clear(String what) {
        Map<SheetField, String> typed =
                own.filled(new SignClear(), "clear_done", "head off, rods crack tested", "clear_found", "none");
        typed.put(
                SignClear.HELD,
                clearChoices().stream()
                        .filter(choice -> choice.facts().toString().contains(what))
                        .findFirst()
                        .orElseThrow()
                        .key());
        return typed;
    }

    List<Choice> clearChoices() {
        return new SignClear().choices(SignClear.HELD, new SheetTyped(Map.of()), own.sheets.sight());
    }

    List<String> found(LogSheet sheet, Map<SheetField, String> typed) {
        return own.sheets.check(own.sheets.read(sheet, typed)).stream()
                .map(found -> found.problem().kind() + " beside "
                        + (found.field() == null ? "none" : found.field().key()))
                .toList();
    }

    Map<SheetField, String> reading(String place, String value, String... more) {
        Map<SheetField, String> typed = own.filled(
                new WriteReading(),
                "reading_on",
                "H1",
                "reading_place",
                place,
                "reading_value",
                value,
                "reading_day",
                "9 Mar");
        for (int i = 0; i < more.length; i += 2) {
            typed.put(OwnLogbook.field(new WriteReading(), more[i]), more[i + 1]);
        }
        return typed;
    }

    void read(String place, String value) {
        own.sheets.save(new WriteReading(), reading(place, value), "by hand").orThrow();
    }

    String place(String typed) {
        SheetReading reading = own.sheets.read(new WriteReading(), reading(typed, "4"));
        return ((Reading) reading.entries().get(0).fact()).place();
    }

    long value(ReadingKind kind, String typed) {
        Map<SheetField, String> fields = reading("", typed);
        fields.put(WriteReading.KIND, kind.code());
        SheetReading reading = own.sheets.read(new WriteReading(), fields);
        return Objects.requireNonNull(((Reading) reading.entries().get(0).fact()).value());
    }

    List<String> held() {
        return new Holds(own.desk.view().ledger())
                .open().stream()
                        .map(HeldBy::part)
                        .map(part -> own.sheets.sight().name(Part.class, Objects.requireNonNull(part)))
                        .toList();
    }

    MarkState springs() {
        return new Marks(own.desk.view().ledger()).ofPart(part("VS-1")).get(0).state();
    }

    MarkState readings() {
        return new Marks(own.desk.view().ledger())
                .ofEngine(engine()).stream()
                        .filter(mark -> mark.reason() instanceof ReadingUse)
                        .map(Mark::state)
                        .findFirst()
                        .orElseThrow();
    }

    void fit(String position, String mark) {
        own.save(
                        new FitPart(),
                        "place",
                        "H1",
                        "position",
                        position,
                        "since",
                        "1 Mar",
                        "mark",
                        mark,
                        "part_design",
                        "new_design",
                        "part_design_name",
                        "Design of " + mark)
                .orThrow();
    }

    void logRun(String running, String highest) {
        logRun(running, highest, "");
    }

    /** @param out the time it went out; empty for as the sheet comes */
    void logRun(String running, String highest, String out) {
        RunSheet sheet = new RunSheet(own.desk, own.ids, FieldUnits.metric(DayOrder.DAY_FIRST));
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(
                own.desk.view().facts().of(Car.class).named("7").orElseThrow().id()));
        typed.put(RunField.RUNNING, running);
        typed.put(RunField.HIGHEST, highest);
        if (!out.isEmpty()) {
            typed.put(RunField.OUT_AT, out);
        }
        sheet.save(typed, "run").orThrow();
    }

    <F extends Fact> F last(Class<F> kind) {
        List<witnessmark.domain.Entry<F>> all = own.desk.view().facts().of(kind).where(fact -> true);
        return all.get(all.size() - 1).fact();
    }

    <F extends Fact> Id<F> id(Class<F> kind) {
        List<witnessmark.domain.Entry<F>> all = own.desk.view().facts().of(kind).where(fact -> true);
        return all.get(all.size() - 1).id();
    }

    Id<Engine> engine() {
        return id(Engine.class);
    }

    Id<EngineDesign> design() {
        return id(EngineDesign.class);
    }

    Id<Part> part(String mark) {
        return own.desk.view().facts().of(Part.class).named(mark).orElseThrow().id();
    }

    java.time.ZoneId zone() {
        return own.desk.view().zone();
    }
}
