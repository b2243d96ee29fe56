package witnessmark.desktop.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FocusStays;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** What loggers wrote of a run: a row for each trace, with its file and what it measured, and a way to bring one in. */
final class TraceRows extends JPanel {
    private final transient Texts texts;
    private final transient Measures measures;
    private final transient Supplier<Facts> facts;
    private final Id<Run> run;
    private final transient @Nullable Consumer<Id<Trace>> show;
    private final JButton bring;
    private transient @Nullable List<Entry<Trace>> shown;

    /**
     * @param facts the logbook as of the day looked at
     * @param show shows the curves of a trace, or null where nothing does
     */
    TraceRows(
            RunWords words, Supplier<Facts> facts, Id<Run> run, Runnable bringIn, @Nullable Consumer<Id<Trace>> show) {
        super(new FormLayout("insets 0, gap 12 2, fillx, hidemode 3", "[0::,grow,fill][]", "[center]"));
        setOpaque(false);
        this.texts = words.texts();
        this.measures = words.measures();
        this.facts = facts;
        this.run = run;
        this.show = show;
        this.bring = Buttons.plain(Caption.of(texts.get("runsheet.written.trace")), bringIn);
    }

    JButton bring() {
        return bring;
    }

    /** @param can whether the run may be changed */
    void refresh(boolean can) {
        List<Entry<Trace>> now = facts
                .get()
                .of(Trace.class)
                .where(trace -> trace.run().equals(run))
                .stream()
                .toList();
        bring.setVisible(can);
        if (!now.equals(shown)) {
            shown = now;
            FocusStays.on(this, this::layOut, () -> bring);
        }
        setVisible(can || !now.isEmpty());
    }

    private void layOut() {
        removeAll();
        List<Entry<Trace>> all = shown == null ? List.of() : shown;
        if (all.isEmpty()) {
            add(Lettering.cutLine(texts.get("runsheet.written.trace.none"), Styles.NOTE), "wmin 0");
            add(bring, "wrap");
        }
        for (int i = 0; i < all.size(); i++) {
            Entry<Trace> trace = all.get(i);
            add(Lettering.cutLine(said(trace.fact()), Styles.FIELD_LABEL), "wmin 0");
            JPanel ways = new JPanel(new FormLayout("insets 0, gap 8"));
            ways.setOpaque(false);
            Consumer<Id<Trace>> seen = show;
            if (seen != null) {
                ways.add(Buttons.plain(
                        Caption.of(texts.get("runsheet.written.trace.show")), () -> seen.accept(trace.id())));
            }
            if (i == 0) {
                ways.add(bring);
            }
            add(ways, "wrap, alignx right");
        }
        revalidate();
        repaint();
    }

    private String said(Trace trace) {
        List<String> measured = new ArrayList<>();
        measured.add(texts.get("runsheet.written.trace.ran", measures.running(trace.running())));
        if (trace.highest() != null) {
            measured.add(texts.get("runsheet.written.trace.highest", measures.speed(trace.highest())));
        }
        if (trace.waterHighest() != null) {
            measured.add(texts.get("runsheet.written.trace.water", measures.temperature(trace.waterHighest())));
        }
        if (trace.oilPressure() != null) {
            measured.add(texts.get("runsheet.written.trace.oil", measures.pressure(trace.oilPressure())));
        }
        return texts.get("runsheet.written.trace.said", trace.name(), measures.all(measured));
    }
}
