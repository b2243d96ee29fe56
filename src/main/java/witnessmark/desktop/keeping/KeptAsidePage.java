package witnessmark.desktop.keeping;

import java.awt.event.KeyEvent;
import java.time.Instant;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.logbook.EnterKeptAside;
import witnessmark.logbook.port.KeptAside;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Moment;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** What the logbook could not take, to be entered now or put aside. Nothing is done before somebody says which. */
final class KeptAsidePage implements Aside {
    private final KeepingContext context;
    private final Texts texts;
    private final RecordWords words;
    private final JPanel page = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));
    private final SheetTable<Line> table;
    private final JTextArea said = Lettering.paragraph(" ", Styles.FIELD_LABEL);
    private final JButton close;
    private final JButton putAside;
    private final JButton enter;
    private List<KeptAside.Aside> waiting = List.of();

    /** An entry as a row. */
    private record Line(String id, String kind, String name, String who, String when, Instant at, String why) {}

    KeptAsidePage(KeepingContext context) {
        this.context = context;
        this.texts = context.tools().texts();
        this.words = new RecordWords(texts);
        this.close = button("keeping.close", context.tell()::dismiss);
        this.putAside = button("keeping.aside.put", this::putAside);
        this.enter = Styles.as(Styles.MAIN, button("keeping.aside.enter", this::enter));
        this.table = new SheetTable<>(texts.get("keeping.aside.table"), columns(), Line::id);
        table.with(context.tools(), "keeping.aside");
        page.setOpaque(false);
        page.add(sheet(), "grow");
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "close", context.tell()::dismiss);
        enter.setEnabled(false);
        putAside.setEnabled(false);
    }

    /** Reads what waits. */
    void begin() {
        context.tools()
                .tasks()
                .run(
                        texts.get("keeping.aside.reading"),
                        () -> context.aside().waiting(context.logbook().logbook()),
                        all -> show(all, List.of()),
                        context.tell()::failed);
    }

    @Override
    public String heading() {
        return texts.get("keeping.aside");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return table.table();
    }

    @Override
    public List<String> help() {
        return List.of("help.aside");
    }

    private List<Column<Line>> columns() {
        return List.of(
                Column.<Line>text(texts.get("keeping.aside.what"), Line::kind).wide(150),
                Column.<Line>text(texts.get("keeping.aside.name"), Line::name)
                        .strong()
                        .wide(260)
                        .grow(),
                Column.<Line, Instant>text(texts.get("keeping.aside.when"), Line::when, Line::at)
                        .wide(180),
                Column.<Line>text(texts.get("keeping.aside.who"), Line::who).wide(140),
                Column.<Line>text(texts.get("keeping.aside.why"), Line::why)
                        .wide(220)
                        .grow());
    }

    private Sheet sheet() {
        Sheet sheet = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "");
        sheet.add(Lettering.cutLine(heading(), Styles.SECTION), "wmin 0, wrap");
        sheet.add(
                Lettering.paragraph(
                        texts.get("keeping.aside.about", context.aside().file()), Styles.FIELD_LABEL),
                "growx, wmin 0, wrap 4");
        sheet.add(said, "growx, wmin 0, wrap 4");
        sheet.add(table, "grow, pushy, hmin 160, wrap");
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 8, alignx right"));
        foot.setOpaque(false);
        List.of(putAside, close, enter).forEach(foot::add);
        sheet.add(foot, "growx");
        return sheet;
    }

    /** @param problems why some of them did not go in */
    private void show(List<KeptAside.Aside> all, List<Problem> problems) {
        waiting = all;
        table.show(all.stream().map(this::line).toList());
        boolean readOnly = context.logbook().logbook().readOnly().isPresent();
        enter.setEnabled(!all.isEmpty() && !readOnly);
        putAside.setEnabled(!all.isEmpty());
        said.setText(
                problems.isEmpty()
                        ? texts.get(readOnly ? "keeping.aside.readOnly" : "keeping.aside.many", all.size())
                        : context.problems().sentence(problems.get(0)));
    }

    private Line line(KeptAside.Aside aside) {
        Moment at = Moment.of(aside.at(), context.zone());
        return new Line(
                aside.entry().id().text(),
                words.one(aside.entry().fact().getClass()),
                aside.name(),
                aside.who(),
                context.measures().fullMoment(at),
                aside.at(),
                aside.why());
    }

    private void enter() {
        List<KeptAside.Aside> wanted = waiting;
        context.tools()
                .tasks()
                .write(
                        texts.get("keeping.aside.entering"),
                        () -> entered(wanted),
                        this::entered,
                        context.tell()::failed);
    }

    /** What went in, and what still waits then. */
    private record Entered(Outcome<Integer> outcome, List<KeptAside.Aside> left) {}

    private Entered entered(List<KeptAside.Aside> wanted) {
        Outcome<Integer> outcome = new EnterKeptAside(context.logbook()).enter(wanted, this::because);
        return new Entered(outcome, context.aside().waiting(context.logbook().logbook()));
    }

    private String because(KeptAside.Aside aside) {
        Moment at = Moment.of(aside.at(), context.zone());
        return texts.get(
                "keeping.aside.because",
                aside.why(),
                aside.who(),
                context.measures().fullMoment(at));
    }

    private void entered(Entered entered) {
        context.window().changed();
        if (entered.outcome().didWork()) {
            context.window()
                    .say(texts.get("keeping.aside.entered", entered.outcome().orThrow()));
        }
        if (entered.left().isEmpty()) {
            leave();
        } else {
            show(entered.left(), entered.outcome().problems());
        }
    }

    private void putAside() {
        List<KeptAside.Aside> wanted = waiting;
        context.tools()
                .tasks()
                .write(
                        texts.get("keeping.aside.noting"),
                        () -> context.aside().putAside(wanted),
                        noted -> {
                            if (noted) {
                                context.window()
                                        .say(texts.get(
                                                "keeping.aside.done",
                                                context.aside().file()));
                                leave();
                            } else {
                                context.window()
                                        .say(texts.get(
                                                "keeping.aside.notNoted",
                                                context.aside().file()));
                            }
                        },
                        context.tell()::failed);
    }

    private void leave() {
        context.window().dismissNotice();
        context.tell().dismiss();
    }

    private JButton button(String key, Runnable work) {
        return Buttons.plain(Caption.of(texts.get(key)), work);
    }
}
