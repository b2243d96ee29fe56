package witnessmark.desktop.season;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.cost.result.BarsBy;
import witnessmark.cost.result.Switches;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.logbook.View;
import witnessmark.logbook.money.SeasonAsked;
import witnessmark.logbook.port.Settings;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Season ledger: reads the season in money off the event thread and shows it. */
public final class SeasonPlace implements Place {
    private static final Logger LOG = LoggerFactory.getLogger(SeasonPlace.class);
    private static final String SWITCHES = "season.switches";
    private static final String BY = "season.by";

    private final Texts texts;
    private final Desk window;
    private final Supplier<View> view;
    private final Settings settings;
    private final SeasonModel model;
    private final Latest reading;
    private final SeasonPanel panel;
    private final JButton again;
    private SeasonAsked asked;
    private @Nullable String wanted;
    private @Nullable SeasonLines shown;
    private String open = "";
    private @Nullable Part begin;

    /**
     * @param window the window's desk
     * @param view the logbook as of the day looked at; asked off the event thread
     * @param leads what the page leads to
     */
    public SeasonPlace(SheetTools tools, Measures measures, Desk window, Supplier<View> view, SeasonLeads leads) {
        this.texts = tools.texts();
        this.window = window;
        this.view = view;
        this.settings = tools.settings();
        this.model = new SeasonModel(texts, measures);
        this.reading = new Latest(tools.tasks());
        this.asked = new SeasonAsked(
                "",
                SwitchBoxes.restored(settings.get(SWITCHES).orElse("")),
                by(settings.get(BY).orElse("")));
        SeasonPageView page = new SeasonPageView(tools, measures, leads, new Told(leads));
        LinesPane lines = new LinesPane(
                texts,
                new SeasonTables(tools, new witnessmark.wording.MoneyWords(texts, measures), this::sum).lines(),
                leads.correct(),
                this::closeLines);
        this.panel = new SeasonPanel(
                texts,
                page,
                lines,
                () -> leads.write().accept(Prefilled.empty("write_cost")),
                () -> leads.write().accept(Prefilled.empty("weekend_costs")));
        FormKeys.bindInWindow(
                panel, Keys.menu(KeyEvent.VK_P), "wm-print", leads.print()); // where it shows, before the menus
        this.again = Buttons.plain(Caption.of(texts.get("season.again")), this::refresh);
    }

    /** What is asked about: what the window shows is what is printed and written out. */
    public SeasonAsked asked() {
        return asked;
    }

    @Override
    public PlaceId id() {
        return PlaceId.SEASON_LEDGER;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        SheetTable<?> part = begin == null ? null : begin.table(panel.page());
        return part == null || part.shown().isEmpty() ? panel.firstFocus() : part.table();
    }

    @Override
    public List<Command> commands() {
        return Stream.of(Part.values())
                .map(part -> new Command(
                        texts,
                        "season.command." + part.key,
                        CommandMenu.GO,
                        4,
                        null,
                        () -> window.go(PlaceId.SEASON_LEDGER, part.key)))
                .toList();
    }

    @Override
    public void refresh() {
        SeasonAsked now = asked;
        reading.run(texts.get("season.reading"), () -> model.lines(view.get(), now), this::show, failure -> {
            LOG.error("the season could not be worked out", failure);
            panel.failed(texts.get("season.failed"), again);
        });
    }

    /** Who asks for the place itself wants the page from its top, not the lines of a figure. */
    @Override
    public boolean anew() {
        panel.fromTop();
        return true;
    }

    @Override
    public void open() {
        begin = null;
    }

    /** Opens the lines of an incident, or goes to a part of the page. */
    @Override
    public void open(String record) {
        begin = Part.called(record);
        wanted = record;
        openWanted();
    }

    private void show(SeasonLines lines) {
        shown = lines;
        panel.show(lines);
        window.heading(PlaceId.SEASON_LEDGER, lines.heading());
        if (panel.isBehind()) {
            reopen(lines);
        }
        openWanted();
    }

    /** The lines in sight may be others now. */
    private void reopen(SeasonLines lines) {
        lines.behind(open).ifPresent(figure -> panel.lines().show(heading(figure), figure.lines()));
    }

    private void openWanted() {
        String record = wanted;
        SeasonLines now = shown;
        Part part = begin;
        if (record != null && now != null && part != null) {
            wanted = null;
            show(part);
        } else if (record != null && now != null) {
            now.failures().stream()
                    .filter(row -> row.id().equals(record))
                    .findFirst()
                    .ifPresent(row -> {
                        wanted = null;
                        openLines(row.behind(), panel.page().failures().table());
                    });
        }
    }

    private void show(Part part) {
        closeLines();
        SheetTable<?> table = part.table(panel.page());
        if (table.shown().isEmpty()) {
            window.say(texts.get("season." + part.key + ".none"));
        } else {
            SeasonPageView.bringIntoView(table);
            table.table().requestFocusInWindow();
        }
    }

    private void openLines(Behind figure, JComponent from) {
        open = figure.name();
        panel.openLines(heading(figure), figure.lines(), from);
    }

    private String heading(Behind figure) {
        SeasonLines now = shown;
        return texts.get(
                "season.lines.heading", figure.name(), figure.amount().text(), now == null ? "" : now.currency());
    }

    private void closeLines() {
        panel.closeLines();
    }

    private SeasonLines.Totals sum() {
        SeasonLines now = shown;
        return now == null ? String::valueOf : now.totals();
    }

    private void ask(SeasonAsked next) {
        asked = next;
        settings.put(SWITCHES, SwitchBoxes.state(next.switches()));
        settings.put(BY, next.by().name().toLowerCase(Locale.ROOT));
        refresh();
    }

    private static BarsBy by(String remembered) {
        for (BarsBy each : BarsBy.values()) {
            if (each.name().toLowerCase(Locale.ROOT).equals(remembered)) {
                return each;
            }
        }
        return BarsBy.INCIDENT;
    }

    SeasonPanel panel() {
        return panel;
    }

    /** What is chosen and opened on the page. */
    private final class Told implements SeasonPageView.Told {
        private final SeasonLeads leads;

        Told(SeasonLeads leads) {
            this.leads = leads;
        }

        @Override
        public void season(String name) {
            ask(new SeasonAsked(name, asked.switches(), asked.by()));
        }

        @Override
        public void switches(Switches switches) {
            ask(new SeasonAsked(asked.season(), switches, asked.by()));
        }

        @Override
        public void by(BarsBy by) {
            ask(new SeasonAsked(asked.season(), asked.switches(), by));
        }

        @Override
        public void behind(Behind figure, JComponent from) {
            openLines(figure, from);
        }

        @Override
        public void settled(String record) {
            leads.correct().accept(record);
        }

        @Override
        public void decision(DecisionLine decision) {
            Prefilled sheet = decision.sheet();
            if (sheet == null) {
                leads.correct().accept(decision.id());
            } else {
                leads.write().accept(sheet);
            }
        }
    }

    /** Parts of the page that can be gone to; each is opened of the place by its key. */
    private enum Part {
        KINDS("kinds"),
        SETTLE("settle");

        private final String key;

        Part(String key) {
            this.key = key;
        }

        static @Nullable Part called(String key) {
            return Stream.of(values())
                    .filter(part -> part.key.equals(key))
                    .findFirst()
                    .orElse(null);
        }

        SheetTable<?> table(SeasonPageView page) {
            return this == KINDS ? page.kinds() : page.settle();
        }
    }
}
