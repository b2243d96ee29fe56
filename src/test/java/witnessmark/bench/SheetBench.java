package witnessmark.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.IntSupplier;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Standing;
import witnessmark.domain.Zone;
import witnessmark.ledger.BigLogbook;
import witnessmark.ledger.History;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.logbook.building.BuildDraft;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.SeeBuild;
import witnessmark.logbook.building.WriteBuildWork;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.WriteFigures;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.sheets.SheetUnits;
import witnessmark.quantity.Moment;
import witnessmark.quantity.typed.DayOrder;

/** How long build sheets and the page of a build take in twenty seasons' book; medians over warm rounds. */
public final class SheetBench {
    private static final int ROUNDS = 9;
    private static final int BUILDS = 10;
    private static final List<MeasureKind> MEASURED = List.of(
            MeasureKind.BORE,
            MeasureKind.PISTON,
            MeasureKind.MAIN_CLEARANCE,
            MeasureKind.BIG_END_CLEARANCE,
            MeasureKind.RING_GAP_TOP,
            MeasureKind.DECK_CLEARANCE,
            MeasureKind.CHAMBER_VOLUME,
            MeasureKind.HEAD_THICKNESS);

    private long ids;
    private final List<Entry<?>> more = new ArrayList<>();

    private SheetBench() {}

    /** Prints the figures; takes no arguments. */
    public static void main(String[] none) {
        new SheetBench().run();
    }

    private void run() {
        History book = BigLogbook.twentySeasons(1);
        Id<Build> open = book.engines().stream()
                .map(engine -> builds(engine, book.asOf().last()))
                .reduce((one, other) -> other)
                .orElseThrow();
        Facts facts = book.story().facts().with(more);
        System.out.printf(
                Locale.ROOT,
                "%d builds, %d figures%n",
                facts.of(Build.class).size(),
                facts.of(Measurement.class).size());
        Desk desk = new Desk(
                new MemoryLogbook(facts), new SampleBook.Day(book.asOf().day()), "TE");
        View view = desk.view();
        SheetPage page = SeeBuildSheet.of(view, open).orElseThrow();
        Id<Engine> engine = page.build().fact().engine();
        WriteFigures write = new WriteFigures(SampleBook.ids());
        List<Entry<Measurement>> typed = write.entries(
                page,
                page.order().get(0),
                "85",
                new WriteFigures.Setting(
                        null, null, HowStood.NOT_SAID, view.ledger().asOf().last(), "TE"));
        time(
                "a build's sheet",
                () -> SeeBuildSheet.of(view, open).orElseThrow().order().size());
        time(
                "the same with what is typed",
                () -> SeeBuildSheet.with(view, page, typed).measured());
        time("every build to choose from", () -> SeeBuildSheet.all(view).size());
        time(
                "the build of an engine measured last",
                () -> SeeBuildSheet.build(view, engine, null).hashCode());
        time(
                "the page of a build",
                () -> SeeBuild.of(view, open).orElseThrow().gaps().size());
        WriteBuildWork work = new WriteBuildWork(desk, SampleBook.ids(), SheetUnits.metric(DayOrder.values()[0]));
        time(
                "reading what is typed on the page of a build",
                () -> work.read(new BuildDraft(engine, open, Map.of())).found().size());
        Map<BuildField, String> closing = Map.of(
                BuildField.of(BuildField.Name.CLOSED),
                view.day().toString(),
                BuildField.of(BuildField.Name.SIGNED),
                "CC");
        time(
                "the same with its closing and who signs",
                () -> work.read(new BuildDraft(engine, open, closing)).found().size());
    }

    /** Ten builds of an engine, the last one open, each with its figures; answers the last. */
    private Id<Build> builds(Id<Engine> engine, Moment today) {
        Id<Build> last = null;
        for (int number = 1; number <= BUILDS; number++) {
            Moment opened = new Moment(
                    today.epochMillis()
                            - Duration.ofDays(700L * (BUILDS - number) + 10).toMillis(),
                    today.zone(),
                    today.offset());
            Moment closed = number == BUILDS
                    ? null
                    : new Moment(opened.epochMillis() + Duration.ofDays(20).toMillis(), today.zone(), today.offset());
            Id<Build> build = add(new Build(engine, number, EnumSet.allOf(Zone.class), opened, closed, "", ""));
            for (MeasureKind kind : MEASURED) {
                for (MeasurePlace place : places(kind)) {
                    add(new Measurement(
                            build,
                            kind,
                            place.number(),
                            place.spot(),
                            50_000 + ids % 7 * 1_000,
                            "0.05",
                            opened,
                            null,
                            null,
                            HowStood.NOT_SAID,
                            true,
                            "CC",
                            ""));
                }
            }
            last = build;
        }
        return java.util.Objects.requireNonNull(last);
    }

    private static List<MeasurePlace> places(MeasureKind kind) {
        List<MeasurePlace> places = new ArrayList<>();
        int numbers = kind.placedAt() == witnessmark.domain.PlacedAt.ENGINE ? 1 : 4;
        for (int i = 1; i <= numbers; i++) {
            Integer number = kind.placedAt() == witnessmark.domain.PlacedAt.ENGINE ? null : Integer.valueOf(i);
            if (kind.spots().isEmpty()) {
                places.add(new MeasurePlace(kind, number, null));
            }
            kind.spots().forEach(spot -> places.add(new MeasurePlace(kind, number, spot)));
        }
        return places;
    }

    private <F extends Fact> Id<F> add(F fact) {
        Id<F> id = new Id<>(new UUID(0x7003, ids++));
        more.add(new Entry<>(id, fact, Standing.IN_FORCE, null, 1));
        return id;
    }

    private static void time(String what, IntSupplier work) {
        long[] wall = new long[ROUNDS];
        int answer = 0;
        for (int i = 0; i < 2 * ROUNDS; i++) {
            long begun = System.nanoTime();
            answer = work.getAsInt();
            wall[i % ROUNDS] = System.nanoTime() - begun;
        }
        Arrays.sort(wall);
        System.out.printf(
                Locale.ROOT,
                "%-48s median %8.1f ms, best %8.1f, worst of %d %8.1f (%d)%n",
                what,
                wall[ROUNDS / 2] / 1e6,
                wall[0] / 1e6,
                ROUNDS,
                wall[ROUNDS - 1] / 1e6,
                answer);
    }
}
