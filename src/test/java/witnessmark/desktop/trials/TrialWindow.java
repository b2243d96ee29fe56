package witnessmark.desktop.trials;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import javax.swing.JRootPane;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shelf.ShelfAsked;
import witnessmark.desktop.shelf.ShelfPlace;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.FoundWhen;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartHarm;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.PriorKind;
import witnessmark.domain.Severity;
import witnessmark.domain.Trial;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Story;
import witnessmark.logbook.View;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the page of a trial, in the place of the parts shelf. What it leads to is noted down. */
final class TrialWindow implements AutoCloseable {
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final List<String> asked = new ArrayList<>();
    final TrialAside page;
    final ShelfPlace place;
    private final ShellPane pane;
    private Supplier<View> view;

    TrialWindow(Look look, Texts texts, View first) {
        view = () -> first;
        MemorySettings settings = new MemorySettings();
        SheetTools tools = new SheetTools(texts, tasks, settings);
        Measures measures = new Measures(texts, Units.METRIC);
        place = new ShelfPlace(
                tools,
                measures,
                window,
                () -> view.get(),
                new ShelfAsked(part -> {}, record -> {}, sheet -> {}, () -> {}, () -> {}));
        page = new TrialAside(new TrialsContext(
                () -> view.get(),
                window,
                tools,
                measures,
                new TrialsContext.Asked(
                        place::stepAside,
                        () -> {
                            asked.add("left");
                            place.dismiss();
                        },
                        (sheet, back) -> asked.add(sheet.sheet()),
                        (record, back) -> asked.add("correct " + record),
                        incident -> asked.add("incident " + incident),
                        part -> asked.add("part " + part))));
        place.onTrial(page::openPart);
        ShellContext context =
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {});
        pane = new ShellPane(context, List.of(place), List.of(), List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.PARTS_SHELF);
        tasks.awaitIdle();
        page.open();
        tasks.awaitIdle();
    }

    JRootPane root(int width, int height) {
        JRootPane root = Stage.window(pane, pane::menuBar, width, height);
        tasks.awaitIdle();
        return Stage.lay(root, width, height);
    }

    /** From now on there is another logbook, or it cannot be read. */
    void become(Supplier<View> other) {
        view = other;
        window.changed();
        tasks.awaitIdle();
        root(1366, 768);
    }

    /** Sets of springs of which most broke, drawn from a fixed seed. */
    static View springs(int sets) {
        Story story = new Story();
        Id<EngineDesign> design = story.design("Four");
        Id<Position> springs = story.position(design, PartKind.VALVE_SPRINGS, "valve springs", 1, true);
        Id<PartDesign> tried = story.partDesign("beehive springs", PartKind.VALVE_SPRINGS, false);
        Id<PartDesign> usual = story.partDesign("double springs", PartKind.VALVE_SPRINGS, false);
        Random random = new Random(7);
        for (int i = 0; i < sets; i++) {
            boolean first = i % 2 == 0;
            Id<Engine> engine = story.engine("A" + (i + 1), design);
            Id<Part> part = story.part((first ? "BS-" : "VS-") + (i / 2 + 1), first ? tried : usual);
            long before = i == 3 ? 3 * 3_600_000 : 0;
            boolean known = i != 5;
            PriorKind kind = known ? PriorKind.KNOWN : PriorKind.UNKNOWN;
            story.prior(part, Counter.RUNNING, kind, before, before, known ? before : 0, day(0, 8));
            story.fit(part, engine, springs, day(1, 8), i == 6 || i == 9 ? null : day(60, 8));
            int hours = (first ? 11 : 7) + random.nextInt(4);
            for (int hour = 0; hour < hours; hour++) {
                story.run(engine, null, day(2 + hour, 10), 45 + random.nextInt(30));
            }
            if (i != 6 && i != 9 && i != 4) {
                broke(story, "INC-" + (i + 10), engine, part);
            }
        }
        limitAndTrial(story, tried, usual);
        LocalDate today = LocalDate.parse("2026-04-01");
        AsOf asOf = new AsOf(today, Story.UTC);
        return new View(story.facts(), today, Story.UTC, LifeLedger.of(story.facts(), asOf), false);
    }

    private static void broke(Story story, String mark, Id<Engine> engine, Id<Part> part) {
        Id<Incident> broke = story.add(new Incident(
                mark,
                "spring broke",
                day(40, 12),
                FoundWhen.AT_A_CHECK,
                null,
                null,
                null,
                engine,
                Severity.RETIRED,
                "",
                null,
                "",
                null,
                "",
                "",
                ""));
        story.add(new IncidentPart(broke, part, "3A", PartHarm.FAILED, null, false, null, "inner broken"));
    }

    private static void limitAndTrial(Story story, Id<PartDesign> tried, Id<PartDesign> usual) {
        LocalDate first = LocalDate.parse("2026-01-01");
        story.add(new Limit(
                "renew springs",
                LimitAction.RENEW,
                null,
                PartKind.VALVE_SPRINGS,
                null,
                null,
                null,
                null,
                Counter.RUNNING,
                12 * 3_600_000L,
                LimitRank.BUILDER,
                "",
                first,
                null));
        story.add(new Trial(
                "beehive springs",
                tried,
                usual,
                "a third longer to the first break",
                first,
                "Crew chief",
                null,
                null,
                "",
                ""));
    }

    private static Moment day(int day, int hour) {
        return Story.at(LocalDate.parse("2026-01-01").plusDays(day) + (hour < 10 ? "T0" : "T") + hour + ":00Z[UTC]");
    }

    @Override
    public void close() {
        tasks.close();
    }
}
