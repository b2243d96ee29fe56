package witnessmark.desktop.traces;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import witnessmark.chart.Chart;
import witnessmark.desktop.form.ChartView;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.traces.DidModel.Event;
import witnessmark.desktop.traces.DidModel.Figure;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.wording.Texts;

/** What the engine did: its figures, engine speed over the run, and what stands out. */
final class DidPane {
    private final DidModel model;
    private final JPanel page = new JPanel(new FormLayout(
            "insets 10 0 0 0, gap 0, fill, hidemode 3",
            "[0::,grow,fill]",
            "[]6[170:210:,grow,fill]0[]4[0::,grow,fill]"));
    private final JPanel figures =
            new JPanel(new FormLayout("insets 0, gap 14 8, fillx, wrap 5", "[0::,grow,fill,sg]", ""));
    private final ChartView chart;
    private final JLabel readout = Lettering.cutLine(" ", Styles.ECHO);
    private final SheetTable<Event> events;
    private final Texts texts;
    private final JLabel none = Lettering.cutLine(" ", Styles.QUIET_INK);

    DidPane(SheetTools tools, DidModel model) {
        this.model = model;
        texts = tools.texts();
        chart = new ChartView(words -> readout.setText(words.isEmpty() ? " " : words), dot -> {});
        events = new SheetTable<>(
                texts.get("traces.events"),
                List.of(
                        Column.<Event, Long>text(
                                        texts.get("traces.events.at"),
                                        Event::when,
                                        event -> event.at() < 0 ? null : event.at())
                                .wide(70),
                        Column.<Event>text(texts.get("traces.events.what"), Event::what)
                                .strong()
                                .wide(195),
                        Column.<Event>text(texts.get("traces.events.figures"), Event::figures)
                                .wide(300)
                                .grow()),
                event -> event);
        events.with(tools, "traces.events");
        events.whenEmpty(none);
        figures.setOpaque(false);
        page.setOpaque(false);
        page.add(figures, "growx, wmin 0, wrap");
        page.add(chart, "grow, wmin 0, wrap");
        page.add(readout, "growx, wmin 0, wrap");
        page.add(events, "grow, wmin 0, hmin 80");
    }

    JComponent component() {
        return page;
    }

    ChartView chart() {
        return chart;
    }

    SheetTable<Event> events() {
        return events;
    }

    /** @param timed whether its time can be that of its run, as far as that is known */
    void show(BroughtTrace trace, int part, boolean timed) {
        none.setText(texts.get(timed ? "traces.events.none" : "traces.events.time"));
        figures.removeAll();
        for (Figure figure : model.figures(trace.parts().get(part))) {
            figures.add(shown(figure), "wmin 0");
        }
        Optional<Chart> drawn = model.chart(trace, part);
        chart.setVisible(drawn.isPresent());
        readout.setVisible(drawn.isPresent());
        drawn.ifPresentOrElse(chart::show, chart::clear);
        events.show(model.events(trace.parts().get(part), trace.found().defects()));
        page.revalidate();
        page.repaint();
    }

    private static JPanel shown(Figure figure) {
        JPanel box = new JPanel(new FormLayout("insets 0, gap 0, fillx, wrap", "[0::,grow,fill]"));
        box.setOpaque(false);
        box.add(Lettering.cutLine(figure.name(), Styles.FIELD_LABEL), "wmin 0");
        box.add(Lettering.cutLine(figure.value(), Styles.STRONG), "wmin 0");
        box.add(Lettering.cutLine(figure.more().isEmpty() ? " " : figure.more(), Styles.NOTE), "wmin 0");
        return box;
    }
}
