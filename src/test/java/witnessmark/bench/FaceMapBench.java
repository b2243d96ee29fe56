package witnessmark.bench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import witnessmark.desktop.faces.FacesContext;
import witnessmark.desktop.faces.FacesPage;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.Theme;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.Looks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.domain.Part;
import witnessmark.logbook.run.MemoryLogbook;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleViews;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/**
 * How long the face map takes to paint, as it is seen on a small laptop and four times as large: the head of the sample
 * season in May, with all it has on it. A display is needed.
 *
 * <p>{@code java -cp CLASSPATH witnessmark.bench.FaceMapBench}
 */
public final class FaceMapBench {
    private static final int ROUNDS = 200;

    private FaceMapBench() {}

    public static void main(String[] args) throws Exception {
        Tasks tasks = new Tasks((thread, failure) -> {
            throw new IllegalStateException(failure);
        });
        SwingUtilities.invokeAndWait(() -> Looks.look(Theme.LIGHT, 1.0f));
        FacesPage[] made = new FacesPage[1];
        witnessmark.logbook.Desk book = new witnessmark.logbook.Desk(
                new MemoryLogbook(SampleViews.end().facts()), new SampleBook.Day(SampleBook.OPENING), "bench");
        SwingUtilities.invokeAndWait(() -> {
            Texts texts = Texts.in(Locale.UK);
            made[0] = new FacesPage(new FacesContext(
                    book,
                    SampleBook.ids(),
                    new Desk(),
                    new SheetTools(texts, tasks, new MemorySettings()),
                    new Measures(texts, Units.METRIC),
                    DayOrder.DAY_FIRST,
                    () -> {},
                    sheet -> {},
                    () -> {}));
            made[0].open(book.view()
                    .facts()
                    .of(Part.class)
                    .named("HD-06")
                    .orElseThrow()
                    .id()
                    .text());
        });
        tasks.awaitIdle();
        SwingUtilities.invokeAndWait(() -> {
            JComponent map = Objects.requireNonNull(map(made[0].component()));
            paint(map, 708, 344);
            paint(map, 1416, 688);
        });
        tasks.close();
    }

    private static void paint(JComponent map, int width, int height) {
        map.setSize(width, height);
        long[] took = new long[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            long start = System.nanoTime();
            map.paint(g);
            took[i] = System.nanoTime() - start;
            g.dispose();
        }
        long first = took[0];
        Arrays.sort(took);
        System.out.printf(
                Locale.ROOT,
                "face map of %d x %d: median %.1f ms, 99 in 100 within %.1f ms, the first %.1f ms%n",
                width,
                height,
                took[ROUNDS / 2] / 1e6,
                took[ROUNDS * 99 / 100] / 1e6,
                first / 1e6);
    }

    private static JComponent map(Component from) {
        if (from instanceof JComponent shown
                && "Face map"
                        .equals(
                                shown.getAccessibleContext() == null
                                        ? ""
                                        : shown.getAccessibleContext().getAccessibleName())) {
            return shown;
        }
        if (from instanceof Container room) {
            for (Component each : room.getComponents()) {
                JComponent found = map(each);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }
}
