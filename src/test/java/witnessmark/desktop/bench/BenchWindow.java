package witnessmark.desktop.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JRootPane;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.logbook.Desk;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the measuring bench. */
final class BenchWindow implements AutoCloseable {
    final Texts texts;
    final Desk book;
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final List<Prefilled> asked = new ArrayList<>();
    int printed;
    Optional<Id<Engine>> inView = Optional.empty();
    final BenchPlace place;
    final ShellPane pane;

    BenchWindow(Look look, Texts texts, Desk book) {
        this.texts = texts;
        this.book = book;
        place = new BenchPlace(new BenchContext(
                book,
                SampleBook.ids(),
                window,
                tasks,
                texts,
                new Measures(texts, Units.METRIC),
                () -> {},
                asked::add,
                () -> inView,
                () -> printed++));
        pane = new ShellPane(
                new ShellContext(
                        texts, tasks, new MemorySettings(), look, window, new AboutFacts("0.1.0", List.of()), () -> {}),
                List.of(place),
                List.of(),
                List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.MEASURING_BENCH);
        tasks.awaitIdle();
    }

    /** The sample season on its last evening before Round 6. */
    static Desk sample() {
        return SampleBook.on(SampleBook.OPENING);
    }

    /** A logbook in which nothing is written down. */
    static Desk bare() {
        return new Desk(new MemoryLogbook(Facts.none()), new SampleBook.Day(SampleBook.OPENING), "TE");
    }

    static Texts english() {
        return Texts.in(Locale.UK);
    }

    /** Puts a build on the bench. */
    BenchWindow choose(String engine, int number) {
        window.go(PlaceId.MEASURING_BENCH, build(engine, number).id().text());
        tasks.awaitIdle();
        return this;
    }

    Entry<Build> build(String engine, int number) {
        Entry<Engine> found = book.view().facts().of(Engine.class).named(engine).orElseThrow();
        return SeeBuildSheet.build(book.view(), found.id(), number).orElseThrow();
    }

    /** The field of a kind at a number; of several there the one at that place in the row. */
    FigureField field(MeasureKind kind, int number, int spot) {
        MeasurePlace at = new MeasurePlace(
                kind, number, kind.spots().isEmpty() ? null : kind.spots().get(spot));
        Optional<FigureField> field = place.panel().grids().field(at);
        return field.orElseThrow();
    }

    String said() {
        return GoldenText.of(place.panel());
    }

    JRootPane root(int width, int height) {
        JRootPane root = Stage.window(pane, pane.menuBar(), width, height);
        tasks.awaitIdle();
        return Stage.lay(root, width, height);
    }

    @Override
    public void close() {
        tasks.awaitIdle();
        tasks.close();
    }
}
