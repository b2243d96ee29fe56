package witnessmark.desktop.start;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** Begins the team's own logbook: three answers, and the cautions once. */
final class StartPage implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(StartPage.class);

    private final StartContext context;
    private final Texts texts;
    private final StartLogbookModel model;
    private final Runnable close;
    private final FieldBox team;
    private final FieldBox file;
    private final ChoiceBox<Units> units;
    private final NoticeStrip refusal = new NoticeStrip();
    private final Asking page;
    private boolean working;
    private boolean suggesting;

    /** @param close takes this page away */
    StartPage(StartContext context, Runnable close) {
        this.context = context;
        this.texts = context.texts();
        this.close = close;
        this.model =
                new StartLogbookModel(texts, context.problems(), context.here().folder());
        team = new FieldBox(Caption.of(texts.get("beforewego.start.team")));
        file = new FieldBox(Caption.of(texts.get("beforewego.start.file")));
        units = new ChoiceBox<>(texts, Caption.of(texts.get("beforewego.start.units")), model::words);
        units.load(List.of(Units.METRIC, Units.IMPERIAL), StartLogbookModel.usual(java.util.Locale.getDefault()));
        team.note(texts.get("beforewego.start.team.note"));
        file.note(texts.get("beforewego.start.file.note"));
        units.note(texts.get("beforewego.start.units.note"));
        team.onChange(this::suggest);
        file.onChange(() -> {
            if (!suggesting) {
                model.pathChosen();
            }
        });
        suggest();
        page = new Asking(context, sheet(), texts.get("beforewego.start.begin"), this::start, close);
    }

    @Override
    public String heading() {
        return texts.get("beforewego.start");
    }

    @Override
    public JComponent component() {
        return page.component();
    }

    @Override
    public List<String> help() {
        return List.of("help.start");
    }

    @Override
    public JComponent firstFocus() {
        return team.field();
    }

    private Sheet sheet() {
        Sheet sheet = new Sheet("fillx, aligny top", "[0::560,grow,fill][]", "");
        sheet.add(Lettering.line(texts.get("beforewego.start"), Styles.SECTION), "span, wrap");
        sheet.add(Lettering.paragraph(texts.get("beforewego.start.note"), Styles.NOTE), "span, growx, wmin 0, wrap 8");
        sheet.add(team, "growx, wrap");
        JButton choose = Buttons.plain(Caption.of(texts.get("beforewego.start.choose")), this::choose);
        sheet.add(file, "growx");
        sheet.add(choose, "aligny top, gaptop 20, wrap");
        sheet.add(units, "growx, wrap 14");
        sheet.add(Lettering.line(texts.get("beforewego.start.cautions"), Styles.STRONG), "span, wrap");
        for (String caution : model.cautions()) {
            sheet.add(Lettering.paragraph(caution, Styles.FIELD_LABEL), "span, growx, wmin 0, wrap 4");
        }
        sheet.add(refusal, "span, growx, wmin 0, hidemode 3, wrap");
        return sheet;
    }

    private void suggest() {
        suggesting = true;
        model.suggestion(team.text()).ifPresent(file::load);
        suggesting = false;
    }

    private void choose() {
        Path suggested = model.path(file.text()).orElse(context.here().folder());
        context.choosing().newLogbook(suggested).ifPresent(path -> {
            model.pathChosen();
            file.load(LogbookNames.ended(path).toString());
            file.note(texts.get("beforewego.start.file.note"));
        });
    }

    private void start() {
        team.note(texts.get("beforewego.start.team.note"));
        file.note(texts.get("beforewego.start.file.note"));
        refusal.dismiss();
        List<StartLogbookModel.Stop> stops = model.check(team.text(), file.text());
        stops.forEach(this::stop);
        if (!stops.isEmpty()) {
            box(stops.get(0)).takeFocus();
            return;
        }
        if (!working) {
            working = true;
            Path path = model.path(file.text()).orElseThrow();
            String name = team.text();
            StartContext.Here here = context.here();
            context.tasks()
                    .write(
                            texts.get("beforewego.start.working"),
                            () -> context.uses()
                                    .start()
                                    .start(
                                            path,
                                            name,
                                            here.zone(),
                                            here.currency(),
                                            here.who(),
                                            texts.get("beforewego.start.why")),
                            this::started,
                            this::failed);
        }
    }

    private void started(Outcome<Logbook> outcome) {
        working = false;
        if (!outcome.didWork()) {
            Problem problem = outcome.problems().get(0);
            StartLogbookModel.Stop stop = model.refused(problem);
            stop(stop);
            refusal.show(context.problems().typed(problem), List.of());
            box(stop).takeFocus();
            return;
        }
        Units chosen = units.chosen();
        context.settings().put(StartLogbookModel.UNITS, (chosen == null ? Units.METRIC : chosen).text());
        close.run();
        context.opening().take(outcome.orThrow());
    }

    private void failed(Throwable failure) {
        working = false;
        LOG.error("no logbook could be made", failure);
        file.stop(texts.get("beforewego.start.failed"));
    }

    private void stop(StartLogbookModel.Stop stop) {
        box(stop).stop(stop.words());
    }

    private FieldBox box(StartLogbookModel.Stop stop) {
        return stop.field() == StartLogbookModel.Field.TEAM ? team : file;
    }
}
