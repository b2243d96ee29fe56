package witnessmark.desktop.faces;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JRootPane;
import witnessmark.desktop.bench.BenchContext;
import witnessmark.desktop.bench.BenchPlace;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.strip.StripContext;
import witnessmark.desktop.strip.StripReportPage;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.GoldenText;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.desktop.testing.Stage;
import witnessmark.domain.FaceLook;
import witnessmark.domain.FaceMethod;
import witnessmark.domain.Facts;
import witnessmark.domain.Part;
import witnessmark.logbook.Desk;
import witnessmark.logbook.faces.FaceInSight;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.SampleBook;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** The window on the faces of the measuring bench. */
final class FacesWindow implements AutoCloseable {
    final Texts texts;
    final Desk book;
    final witnessmark.desktop.shell.Desk window = new witnessmark.desktop.shell.Desk();
    final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    final List<Prefilled> asked = new ArrayList<>();
    final List<FaceInSight> printed = new ArrayList<>();
    final FacesPage page;
    final BenchPages place;
    final ShellPane pane;

    FacesWindow(Look look, Texts texts, Desk book) {
        this.texts = texts;
        this.book = book;
        Measures measures = new Measures(texts, Units.METRIC);
        MemorySettings settings = new MemorySettings();
        page = new FacesPage(new FacesContext(
                book,
                SampleBook.ids(),
                window,
                new SheetTools(texts, tasks, settings),
                measures,
                DayOrder.DAY_FIRST,
                () -> {},
                asked::add,
                () -> printed.add(faces().inSight().orElseThrow())));
        place = new BenchPages(
                new BenchPlace(new BenchContext(
                        book,
                        SampleBook.ids(),
                        window,
                        tasks,
                        texts,
                        measures,
                        () -> {},
                        asked::add,
                        Optional::empty,
                        () -> {})),
                page,
                new StripReportPage(new StripContext(
                        book,
                        SampleBook.ids(),
                        window,
                        new SheetTools(texts, tasks, settings),
                        measures,
                        () -> {},
                        record -> {})),
                texts,
                () -> window.go(PlaceId.MEASURING_BENCH));
        pane = new ShellPane(
                new ShellContext(texts, tasks, settings, look, window, new AboutFacts("0.1.0", List.of()), () -> {}),
                List.of(place),
                List.of(),
                List.of());
        pane.logbook("Marrowgate, sample season");
        window.go(PlaceId.MEASURING_BENCH);
        place.commands().get(place.commands().size() - 1).perform();
        tasks.awaitIdle();
    }

    /** The sample season on its last evening before Round 6. */
    static Desk sample() {
        return SampleBook.on(SampleBook.OPENING);
    }

    /** The sample season told to its end. */
    static Desk end() {
        return new Desk(
                new MemoryLogbook(SampleViews.end().facts()), new SampleBook.Day(SampleViews.WINTER), "Crew chief");
    }

    /** A logbook in which nothing is written down. */
    static Desk bare() {
        return new Desk(new MemoryLogbook(Facts.none()), new SampleBook.Day(SampleBook.OPENING), "TE");
    }

    static Texts english() {
        return Texts.in(Locale.UK);
    }

    String part(String mark) {
        return book.view().facts().of(Part.class).named(mark).orElseThrow().id().text();
    }

    private FacesPage faces() {
        return page;
    }

    FacesWindow choose(String mark) {
        window.go(PlaceId.MEASURING_BENCH, part(mark));
        tasks.awaitIdle();
        return this;
    }

    /** Shows the look of a part on a day by a method. */
    FacesWindow look(String mark, String day, FaceMethod method) {
        choose(page.panel().look(), key(mark, day, method));
        return this;
    }

    /** Lays such a look over what is shown. */
    FacesWindow against(String mark, String day, FaceMethod method) {
        choose(page.panel().against(), key(mark, day, method));
        return this;
    }

    private String key(String mark, String day, FaceMethod method) {
        return book.view()
                .facts()
                .of(FaceLook.class)
                .where(look -> look.part().text().equals(part(mark))
                        && look.at().day().toString().equals(day)
                        && look.method() == method)
                .get(0)
                .id()
                .text();
    }

    private static void choose(ChoiceBox<FaceChoice> box, String key) {
        for (int i = 0; i < box.combo().getItemCount(); i++) {
            if (box.combo().getItemAt(i).key().equals(key)) {
                box.combo().setSelectedIndex(i);
                return;
            }
        }
        throw new IllegalArgumentException(key);
    }

    String said() {
        return GoldenText.of(page.panel());
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
