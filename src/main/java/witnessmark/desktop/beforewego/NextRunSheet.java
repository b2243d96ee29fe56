package witnessmark.desktop.beforewego;

import java.awt.event.KeyEvent;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.OpenRow;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/**
 * What is to be looked at before the next run, a column for each car. Enter, Space or a click ticks a line; on one that
 * is ticked it opens what was written.
 */
final class NextRunSheet {
    private static final String ROW = "[18!]10[0:0:,grow 54,fill]10[0:0:,grow 46,fill]";

    private final Sheet sheet = new Sheet("fillx, aligny top, hidemode 3", "[0::,grow,fill]", "");
    private final Texts texts;
    private final Consumer<NextRunLines.Tick> press;
    private final Consumer<String> planJob;
    private final JPanel cars = new JPanel();
    private final List<OpenRow> open = new ArrayList<>();
    private final Map<Countdown, JLabel> clocks = new LinkedHashMap<>();
    private int pressed = -1;

    /**
     * @param press told the line that is pressed
     * @param planJob told the run of which a job is planned, by the text of its identity
     */
    NextRunSheet(Texts texts, Consumer<NextRunLines.Tick> press, Consumer<String> planJob) {
        this.texts = texts;
        this.press = press;
        this.planJob = planJob;
        cars.setOpaque(false);
        sheet.add(Lettering.line(texts.get("beforewego.next"), Styles.SECTION), "wrap");
        sheet.add(cars, OpenRow.LIST + ", gaptop 4, wrap");
        sheet.setVisible(false);
    }

    Sheet component() {
        return sheet;
    }

    /** @param now what the clock shows */
    void show(List<NextRunLines> runs, Instant now) {
        cars.removeAll();
        open.clear();
        clocks.clear();
        cars.setLayout(new FormLayout(
                "insets 0, gap 8, fillx, aligny top", "[0:0:,grow,fill]".repeat(Math.max(1, runs.size()))));
        runs.forEach(run -> cars.add(car(run), "aligny top, growx"));
        tell(now);
        sheet.setVisible(!runs.isEmpty());
        sheet.revalidate();
        sheet.repaint();
    }

    /** Says how long until each run. */
    void tell(Instant now) {
        clocks.forEach((countdown, label) -> {
            String left = countdown.at(now);
            label.setText(left);
            label.setVisible(!left.isEmpty());
        });
    }

    /** The first line nobody has ticked; null when there is none. */
    @Nullable
    JComponent first() {
        return open.isEmpty() ? null : open.get(0);
    }

    /** After a tick, the line nobody has ticked that comes next; null when none was ticked, or none is left. */
    @Nullable
    JComponent afterTick() {
        int at = pressed;
        pressed = -1;
        return at < 0 || open.isEmpty() ? null : open.get(Math.min(at, open.size() - 1));
    }

    private void press(NextRunLines.Tick tick, int place) {
        pressed = tick.isDone() ? -1 : place;
        press.accept(tick);
    }

    private JPanel car(NextRunLines run) {
        JPanel car = new JPanel(new FormLayout("insets 0, gap 0, fillx, wrap, hidemode 3", "[0:0:,grow,fill]"));
        car.setOpaque(false);
        car.add(Lettering.cutLine(run.title(), Styles.ROW_TITLE), OpenRow.BETWEEN + ", w 0:0:");
        JLabel left = Lettering.cutLine("", Styles.ECHO);
        clocks.put(run.countdown(), left);
        car.add(left, OpenRow.BETWEEN + ", w 0:0:");
        car.add(Lettering.cutLine(run.run(), Styles.NOTE), OpenRow.BETWEEN + ", w 0:0:, gapbottom 4");
        for (NextRunLines.Tick tick : run.ticks()) {
            car.add(new Hairline(), OpenRow.BETWEEN);
            car.add(row(tick), "growx");
        }
        return car;
    }

    private OpenRow row(NextRunLines.Tick tick) {
        String about = texts.get("beforewego.comma", tick.said(), tick.note());
        int place = open.size();
        OpenRow row = new OpenRow(ROW, about, () -> press(tick, place));
        if (!tick.isDone()) {
            open.add(row);
        }
        row.add(new JLabel(new TickIcon(tick.isDone())));
        row.say(tick.said(), tick.isDone() ? Styles.NOTE : Styles.ECHO, "");
        row.say(tick.note(), Styles.NOTE, "");
        row.setToolTipText(about);
        if (!tick.run().isEmpty()) {
            row.bind(KeyEvent.VK_J, "job", () -> planJob.accept(tick.run()));
            String tip = texts.get("beforewego.job.key", about);
            row.setToolTipText(tip);
            row.getAccessibleContext().setAccessibleDescription(tip);
        }
        return row;
    }
}
