package witnessmark.desktop.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.MeasurePlace;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.wording.Texts;

/** The measuring bench: reads the builds and the sheet in hand off the event thread and shows them. */
public final class BenchPlace implements Place {
    private static final Logger LOG = LoggerFactory.getLogger(BenchPlace.class);

    private final BenchContext context;
    private final Texts texts;
    private final BenchWords words;
    private final FigureWords figures;
    private final Latest reading;
    private final BenchPanel panel;
    private final JButton again;
    private final Map<String, BenchModel> models = new HashMap<>();
    private @Nullable BenchModel model;
    private @Nullable BenchLines shown;
    private @Nullable String wanted;

    public BenchPlace(BenchContext context) {
        this.context = context;
        this.texts = context.texts();
        this.words = new BenchWords(texts, context.measures());
        this.figures = new FigureWords(texts, context.measures());
        this.reading = new Latest(context.tasks());
        this.panel = new BenchPanel(texts, new Fields(), this::open);
        this.again = Buttons.plain(Caption.of(texts.get("bench.again")), this::refresh);
        panel.grids().editable(false);
    }

    @Override
    public PlaceId id() {
        return PlaceId.MEASURING_BENCH;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        return panel.firstFocus();
    }

    @Override
    public void refresh() {
        String asked = wanted;
        reading.run(texts.get("bench.reading"), () -> read(asked), this::show, this::failed);
    }

    /** Shows a build, or the build of an engine that was measured last, by the text form of its identity. */
    @Override
    public void open(String record) {
        wanted = record;
        refresh();
    }

    /** What is read. */
    private record Read(
            View view,
            List<BenchLines.Choice> choices,
            @Nullable SheetPage page,
            @Nullable BenchLines lines) {}

    private Read read(@Nullable String asked) {
        View view = context.book().view();
        List<Entry<Build>> all = SeeBuildSheet.all(view);
        List<BenchLines.Choice> choices =
                all.stream().map(build -> words.choice(view, build)).toList();
        Optional<SheetPage> page = Optional.ofNullable(asked)
                .flatMap(record -> asked(view, record))
                .or(() -> all.stream().findFirst())
                .flatMap(build -> SeeBuildSheet.of(view, build.id()));
        return new Read(
                view, choices, page.orElse(null), page.map(words::lines).orElse(null));
    }

    private static Optional<Entry<Build>> asked(View view, String record) {
        return view.facts()
                .of(Build.class)
                .find(Id.<Build>parse(record))
                .or(() -> view.facts()
                        .of(Engine.class)
                        .find(Id.<Engine>parse(record))
                        .flatMap(engine -> SeeBuildSheet.build(view, engine.id(), null)));
    }

    private void show(Read read) {
        context.window()
                .heading(PlaceId.MEASURING_BENCH, context.measures().date(read.view().day()));
        SheetPage page = read.page();
        BenchLines lines = read.lines();
        if (page == null || lines == null) {
            model = null;
            panel.none();
            return;
        }
        wanted = lines.build();
        BenchModel before = models.get(lines.build());
        BenchModel now =
                before != null ? before : new BenchModel(page, How.by(context.book().who()));
        now.become(page);
        models.put(lines.build(), now);
        model = now;
        shown = lines;
        panel.show(read.choices(), lines);
        fill();
    }

    private void fill() {
        BenchModel now = model;
        if (now != null) {
            panel.grids().fill(field -> {
                MeasurePlace place = field.cell().place();
                field.load(now.text(place));
                field.stand(figures.stand(now, place), figures.say(now, place));
            });
        }
    }

    void failed(Throwable failure) {
        LOG.error("the build sheet could not be put together", failure);
        panel.failed(texts.get("bench.failed"), again);
    }

    @Nullable
    BenchLines lines() {
        return shown;
    }

    BenchPanel panel() {
        return panel;
    }

    /** What the fields tell. */
    private final class Fields implements GridsView.Told {
        @Override
        public void arrived(MeasurePlace place) {
            // the figure in hand is not shown yet
        }

        @Override
        public void left(MeasurePlace place) {
            // nothing is typed yet
        }

        @Override
        public void typed(MeasurePlace place, String text) {
            // nothing is typed yet
        }
    }
}
