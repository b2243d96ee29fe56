package witnessmark.desktop.speed;

import java.awt.Component;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.ChartOrTable;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Tasks;
import witnessmark.domain.Build;
import witnessmark.domain.Id;
import witnessmark.fit.result.WhatIf;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeAtSpeed;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** The fit at speed of the build in hand: read off the event thread, with what is tried. */
public final class SpeedSide {
    private final Texts texts;
    private final Supplier<View> logbook;
    private final SpeedLinesOf words;
    private final Latest reading;
    private final Consumer<Throwable> failed;
    private final SpeedView view;
    private final ChartOrTable chart;
    private final TriedFields tried;
    private final JPanel component;
    private final ScrollPage said;
    private final ScrollPage beside;
    private @Nullable Id<Build> build;

    /**
     * @param logbook what is known, as of the day looked at
     * @param say told what was done
     * @param failed told what went wrong where it cannot be read
     */
    public SpeedSide(
            Texts texts,
            Measures measures,
            Tasks tasks,
            Supplier<View> logbook,
            Consumer<String> say,
            Consumer<Throwable> failed) {
        this.texts = texts;
        this.logbook = logbook;
        this.failed = failed;
        this.words = new SpeedLinesOf(texts, measures);
        this.reading = new Latest(tasks);
        this.view = new SpeedView(texts);
        this.chart = new ChartOrTable(texts, texts.get("speed.chart.nothing"), table -> table, dot -> {}, say);
        this.tried = new TriedFields(texts, this::refresh);
        this.component = new JPanel(
                new FormLayout("insets 0, gap 16 0, fill", "[0::,grow 55,fill][0::,grow 45,fill]", "[fill,grow]"));
        component.setOpaque(false);
        said = new ScrollPage(view.component());
        beside = new ScrollPage(beside());
        component.add(said, "grow, w 0:0:, h 0:0:, growprio 100");
        component.add(beside, "grow, w 0:0:, h 0:0:");
    }

    private JPanel beside() {
        Sheet curve = new Sheet("fillx, wrap", "[0::,grow,fill]", "");
        JPanel controls = new JPanel(new FormLayout("insets 0, gap 8", "push[][]"));
        controls.setOpaque(false);
        controls.add(chart.toggleButton());
        controls.add(chart.copyButton());
        curve.add(controls, "growx, wmin 0");
        curve.add(chart, "growx, h 320!, wmin 0");
        Sheet trying = new Sheet("fillx, wrap", "[0::,grow,fill]", "");
        trying.add(Lettering.line(texts.get("speed.try"), Styles.SECTION));
        trying.add(Lettering.paragraph(texts.get("speed.try.about"), Styles.NOTE), "growx, wmin 0");
        trying.add(tried, "growx, wmin 0");
        JPanel beside = new JPanel(new FormLayout("insets 0, gap 0 10, fillx, wrap", "[0::,grow,fill]"));
        beside.setOpaque(false);
        beside.add(curve, "growx, wmin 0");
        beside.add(trying, "growx, wmin 0");
        return beside;
    }

    public JComponent component() {
        return component;
    }

    /** Shows a build as it is known now; what was tried on another is put away. */
    public void show(Id<Build> shown) {
        if (!shown.equals(build)) {
            build = shown;
            tried.clear();
            said.fromTop();
            beside.fromTop();
        } else {
            refresh();
        }
    }

    /** Comes into sight or goes out of it; out of sight nothing is worked out. */
    public void visible(boolean seen) {
        component.setVisible(seen);
        refresh();
    }

    private void refresh() {
        Id<Build> asked = build;
        Optional<WhatIf> whatIf = tried.whatIf();
        if (asked != null && whatIf.isPresent() && component.isVisible()) {
            reading.run(
                    texts.get("speed.reading"),
                    () -> SeeAtSpeed.of(logbook.get(), asked, whatIf.get()).map(words::of),
                    found -> found.ifPresent(this::put),
                    failed);
        }
    }

    private void put(SpeedLines lines) {
        view.show(lines);
        chart.show(lines.chart());
    }

    /** Where the keyboard goes on arrival. */
    public Component firstFocus() {
        return tried.fields().get(0).field();
    }
}
