package witnessmark.desktop.traceview;

import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JPopupMenu;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.chart.ChartTable;
import witnessmark.chart.DrawnTraceRows;
import witnessmark.chart.Stretch;
import witnessmark.chart.TraceRows;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChartCopy;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.logbook.tracing.KeptTrace;
import witnessmark.logbook.tracing.SeeTrace;
import witnessmark.logbook.tracing.SeenTrace;
import witnessmark.wording.Texts;

/** The page of a trace, in the place it was asked for from: reads it off the event thread and shows it. */
public final class TraceAside implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(TraceAside.class);
    private static final Duration PAUSE = Duration.ofMillis(150);

    private final TraceViewContext context;
    private final Texts texts;
    private final TraceModel model;
    private final ShownChannels channels;
    private final ReadTrace reader;
    private final Latest reading;
    private final Latest readingCloser;
    private final Latest readingFigures;
    private final PrintTrace printing;
    private final Later settled;
    private final TracePanel panel;
    private TraceViewContext.@Nullable Host host;
    private @Nullable Id<Trace> wanted;
    private @Nullable Id<Trace> over;
    private @Nullable Shown shown;
    private @Nullable TraceRows chart;
    private long shift;
    private boolean asTable;
    private boolean filling;

    public TraceAside(TraceViewContext context) {
        this.context = context;
        this.texts = context.texts();
        this.model = new TraceModel(texts, context.measures());
        this.channels = new ShownChannels(context.tools().settings());
        this.reader = new ReadTrace(context.book(), channels);
        this.reading = new Latest(context.tasks());
        this.readingCloser = new Latest(context.tasks());
        this.readingFigures = new Latest(context.tasks());
        this.printing = new PrintTrace(context, reader, model, this::failed);
        this.panel = new TracePanel(context.tools(), new Done());
        this.settled = context.tasks().later(PAUSE, this::readStretch);
        panel.side().onMark(line -> choose(line, false), line -> choose(line, true));
        panel.onTab(settled::poke);
        FormKeys.bindWithin(panel, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", this::escape);
        FormKeys.bindWithin(
                panel, Keys.menu(KeyEvent.VK_P), "wm-print", this::print); // where it shows, before the menus
    }

    @Override
    public String heading() {
        return texts.get("traceview.heading");
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        return panel.view();
    }

    @Override
    public List<String> help() {
        return List.of("help.traceview");
    }

    @Override
    public void changed() {
        read(true);
    }

    /** Shows a trace in a place. */
    public void open(Id<Trace> trace, TraceViewContext.Host in) {
        TraceViewContext.Host before = host;
        if (before != null && before != in && panel.isShowing()) {
            before.dismiss().run();
        }
        host = in;
        boolean same = trace.equals(wanted);
        wanted = trace;
        if (!same) {
            over = null;
            shift = 0;
        }
        in.show().accept(this);
        read(same);
    }

    /** Shows the trace of a run; says so when there is none. */
    public void openRun(Id<Run> run, TraceViewContext.Host in) {
        open(SeeTrace.ofRun(context.book().view(), run), in);
    }

    /** Shows the newest trace of an engine; says so when there is none. */
    public void openEngine(Id<Engine> engine, TraceViewContext.Host in) {
        open(SeeTrace.ofEngine(context.book().view(), engine), in);
    }

    /** Shows the trace that was looked at last, or the newest there is. */
    public void openNewest(TraceViewContext.Host in) {
        Id<Trace> before = wanted;
        if (before != null && SeeTrace.of(context.book().view(), before).isPresent()) {
            open(before, in);
        } else {
            SeeTrace.newest(context.book().view())
                    .ifPresentOrElse(
                            trace -> open(trace, in), () -> context.window().say(texts.get("traceview.none")));
        }
    }

    private void open(List<SeenTrace> found, TraceViewContext.Host in) {
        if (found.isEmpty()) {
            context.window().say(texts.get("traceview.none"));
        } else {
            open(found.get(0).trace().id(), in);
        }
    }

    /** Looked at more closely it is whole again first. */
    private void escape() {
        if (!panel.view().showWhole()) {
            leave();
        }
    }

    private void leave() {
        TraceViewContext.Host in = host;
        if (in != null) {
            in.dismiss().run();
        }
    }

    // Reading

    private void read(boolean same) {
        Id<Trace> asked = wanted;
        Id<Trace> laid = over;
        if (asked == null) {
            return;
        }
        readingCloser.drop();
        reading.run(
                texts.get("traceview.reading"), () -> reader.read(asked, laid), page -> show(page, same), this::failed);
    }

    private void show(ReadTrace.Page page, boolean same) {
        panel.fine();
        Shown next = page.shown();
        if (next == null) {
            context.window().say(texts.get("traceview.gone"));
            wanted = null;
            leave();
            return;
        }
        shown = next;
        filling = true;
        choices(page.others(), next);
        panel.shift().load(shift / 1e6);
        panel.side().show(model, next);
        filling = false;
        if (next.kept() == null) {
            chart = null;
            panel.nothing(why(next));
            return;
        }
        draw(same);
        settled.poke();
    }

    private void choices(List<SeenTrace> all, Shown now) {
        List<TraceChoice> choices = all.stream().map(this::choice).toList();
        List<TraceChoice> others = new ArrayList<>();
        others.add(new TraceChoice(null, texts.get("traceview.over.nothing")));
        all.stream()
                .filter(each -> !each.trace().id().equals(now.seen().trace().id()))
                .map(this::choice)
                .forEach(others::add);
        panel.choices(
                choices,
                choice(now.seen()),
                others,
                now.over().map(laid -> choice(laid.seen())).orElse(null));
    }

    private TraceChoice choice(SeenTrace seen) {
        return new TraceChoice(seen.trace().id(), model.shortTitle(seen));
    }

    private String why(Shown of) {
        String said = of.problems().stream()
                .map(context.problems()::sentence)
                .findFirst()
                .orElseGet(model.words()::notKept);
        return said + "\n\n" + model.note(of, 0);
    }

    private void draw(boolean same) {
        Shown now = shown;
        if (now == null || now.kept() == null) {
            return;
        }
        TraceRows next = model.chart(now, shift);
        chart = next;
        panel.view().show(next, same);
        if (asTable) {
            showTable();
        } else {
            panel.rows();
        }
        if (!same) {
            panel.view().hair(model.first(now, next));
            panel.readout(
                    texts.get("traceview.hint"),
                    model.readout(next, panel.view().hair()));
        } else if (panel.view().hair() >= 0) {
            readout(next, now, panel.view().hair());
        }
    }

    private void readout(TraceRows rows, Shown now, double seconds) {
        panel.readout(model.here(now, seconds), model.readout(rows, seconds));
    }

    private void failed(Throwable failure) {
        LOG.error("a trace could not be read", failure);
        panel.failed(
                texts.get("traceview.failed"),
                Buttons.plain(Caption.of(texts.get("traceview.again")), () -> read(true)));
    }

    /** Once what is seen stands still: finer samples where they were thinned, and the figures of the stretch. */
    private void readStretch() {
        Shown now = shown;
        DrawnTraceRows drawn = panel.view().drawn();
        KeptTrace kept = now == null ? null : now.kept();
        if (now == null || drawn == null || kept == null) {
            return;
        }
        long from = Math.round(drawn.seen().from() * 1e6);
        long until = Math.round(drawn.seen().to() * 1e6);
        boolean coarse = now.isCoarse(from, until)
                || now.over()
                        .map(laid -> laid.isCoarse(from - shift, until - shift))
                        .orElse(false);
        if (coarse && !drawn.seen().isWhole()) {
            readingCloser.run(
                    texts.get("traceview.reading"),
                    () -> reader.closer(now, from, until, shift),
                    closer -> {
                        if (shown == now) {
                            shown = closer;
                            draw(true);
                        }
                    },
                    this::failed);
        }
        readingFigures.run(
                texts.get("traceview.reading"),
                () -> model.figures(reader.between(kept, from, until)),
                lines -> panel.side()
                        .figures(
                                lines,
                                texts.get(
                                        "traceview.figures.of",
                                        model.words().at(from),
                                        model.words().at(until))),
                this::failed);
    }

    /** Asks where to print the stretch in sight, or says that no trace is shown. */
    public void print() {
        printing.print(shown, chart, panel.view().drawn());
    }

    // What somebody does

    private void choose(@Nullable MarkLine line, boolean closer) {
        if (filling || shown == null) {
            return;
        }
        if (line != null && closer) {
            panel.view().closeTo(line.mark());
            panel.toRows();
        } else {
            panel.view().choose(line == null ? null : line.mark());
        }
    }

    private void showTable() {
        TraceRows rows = chart;
        DrawnTraceRows drawn = panel.view().drawn();
        if (rows != null && drawn != null) {
            panel.table(tableOf(rows, drawn), rows.finding());
        }
    }

    private ChartTable tableOf(TraceRows rows, DrawnTraceRows drawn) {
        return model.table(rows, drawn.seen().from(), drawn.seen().to());
    }

    /** Lays another trace over it, both from their first sample; null for none. */
    void layOver(@Nullable Id<Trace> other) {
        over = other;
        shift = 0;
        read(true);
    }

    /** Shows the figures of what is seen in place of the rows, or the rows again. */
    void toggle() {
        asTable = !asTable;
        draw(true);
    }

    private void channelMenu(JComponent from) {
        Shown now = shown;
        KeptTrace kept = now == null ? null : now.kept();
        if (kept == null) {
            return;
        }
        JPopupMenu menu = new JPopupMenu();
        for (KeptTrace.Channel channel : ShownChannels.all(kept)) {
            JCheckBoxMenuItem item = new JCheckBoxMenuItem(model.channel(channel), channels.isShown(channel));
            item.addActionListener(e -> {
                channels.show(channel, item.isSelected());
                read(true);
            });
            menu.add(Lettering.plain(item));
        }
        menu.show(from, 0, from.getHeight());
    }

    /** The engine whose trace is on screen; none while another page is. */
    public Optional<Id<Engine>> engineInView() {
        return panel.isShowing()
                ? Optional.ofNullable(shown).map(now -> now.seen().engine().id())
                : Optional.empty();
    }

    TracePanel panel() {
        return panel;
    }

    Optional<TraceRows> chart() {
        return Optional.ofNullable(chart);
    }

    /** What the widgets tell. */
    private final class Done implements TracePanel.Doing {
        @Override
        public void hair(double seconds) {
            TraceRows rows = chart;
            Shown now = shown;
            if (rows != null && now != null) {
                readout(rows, now, seconds);
            }
        }

        @Override
        public void seen(Stretch stretch) {
            settled.poke();
        }

        @Override
        public void mark(int by) {
            List<MarkLine> marks = shown == null ? List.of() : model.marks(shown.seen());
            if (marks.isEmpty()) {
                return;
            }
            double at = panel.view().hair();
            MarkLine next = by > 0
                    ? marks.stream()
                            .filter(line -> worst(line) > at + 1e-6)
                            .findFirst()
                            .orElse(marks.get(marks.size() - 1))
                    : marks.stream()
                            .filter(line -> worst(line) < at - 1e-6)
                            .reduce((one, other) -> other)
                            .orElse(marks.get(0));
            panel.side().markTable().select(next);
            panel.view().choose(next.mark());
        }

        private double worst(MarkLine line) {
            TraceRows rows = chart;
            return rows == null ? line.seconds() : rows.worst(line.mark());
        }

        @Override
        public void trace() {
            TraceChoice chosen = panel.chosen();
            Id<Trace> id = chosen == null ? null : chosen.id();
            if (!filling && id != null && !id.equals(wanted)) {
                wanted = id;
                over = Objects.equals(over, id) ? null : over;
                read(false);
            }
        }

        @Override
        public void over() {
            TraceChoice chosen = panel.laidOver();
            Id<Trace> id = chosen == null ? null : chosen.id();
            if (!filling && !Objects.equals(id, over)) {
                layOver(id);
            }
        }

        @Override
        public void shift(double seconds) {
            shift = Math.round(seconds * 1e6);
            draw(true);
            settled.poke();
        }

        @Override
        public void shiftBy(double seconds) {
            if (over != null) {
                shift += Math.round(seconds * 1e6);
                panel.shift().load(shift / 1e6);
                draw(true);
                settled.poke();
            }
        }

        @Override
        public void channels(JComponent from) {
            channelMenu(from);
        }

        @Override
        public void table() {
            toggle();
        }

        @Override
        public void copy() {
            TraceRows rows = chart;
            DrawnTraceRows drawn = panel.view().drawn();
            java.awt.image.BufferedImage picture = panel.view().picture();
            if (rows != null && drawn != null && picture != null) {
                Toolkit.getDefaultToolkit()
                        .getSystemClipboard()
                        .setContents(new ChartCopy(picture, tableOf(rows, drawn).tabbed()), null);
                context.window().say(texts.get("form.chart.copied"));
            }
        }

        @Override
        public void print() {
            TraceAside.this.print();
        }

        @Override
        public void leave() {
            TraceAside.this.leave();
        }

        @Override
        public void wears() {
            context.wears().run();
        }
    }
}
