package witnessmark.desktop.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.wording.Texts;

/** Everything that is written, kind by kind, each opened on its sheet. */
final class WrittenList implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(WrittenList.class);

    private final SheetsContext context;
    private final Texts texts;
    private final RecordTitle titles;
    private final Consumer<Entry<?>> open;
    private final Latest reading;
    private final JPanel page =
            new JPanel(new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[0::,grow,fill]8[]"));
    private final ChoiceBox<RecordType<?>> kind;
    private final SheetTable<Line> table;

    /** An entry as a row shows it. */
    private record Line(
            String id,
            Entry<?> entry,
            String what,
            String when,
            @Nullable LocalDate day,
            String standing) {}

    /**
     * @param open opens an entry on its sheet
     * @param leave takes the page away
     */
    WrittenList(SheetsContext context, RecordTitle titles, Consumer<Entry<?>> open, Runnable leave) {
        this.context = context;
        this.texts = context.texts();
        this.titles = titles;
        this.open = open;
        this.reading = new Latest(context.tasks());
        this.kind = new ChoiceBox<>(texts, Caption.of(texts.get("sheets.list.kind")), type -> titles.many(type.kind()));
        this.table = new SheetTable<>(
                        texts.get("sheets.list"),
                        List.of(
                                Column.<Line>text(texts.get("sheets.list.what"), Line::what)
                                        .wide(420)
                                        .grow(),
                                Column.<Line, LocalDate>text(texts.get("sheets.list.when"), Line::when, Line::day)
                                        .wide(150),
                                Column.<Line>text(texts.get("sheets.list.standing"), Line::standing)
                                        .wide(220)),
                        Line::id)
                .with(new SheetTools(texts, context.tasks(), context.settings()), "sheets.written");
        table.whenEmpty(Lettering.paragraph(texts.get("sheets.list.none"), Styles.QUIET_INK));
        page.setOpaque(false);
        Sheet sheet = new Sheet("fill", "[220::,fill][0::,grow]", "[]8[fill,grow]");
        sheet.add(kind, "wrap");
        sheet.add(table, "span, grow, hmin 120, w 0:0:");
        page.add(sheet, "grow, wrap");
        page.add(
                new FormFoot(List.of(
                        Buttons.plain(Caption.of(texts.get("sheets.back")), leave),
                        Buttons.plain(Caption.of(texts.get("sheets.list.open")), this::openSelected))),
                "growx");
        FormKeys.bindWithin(page, Keys.plain(java.awt.event.KeyEvent.VK_ESCAPE), "wm-leave", leave);
        FormKeys.enterMovesOn(kind.combo());
        kind.load(RecordTypes.all(), RecordTypes.of(Fitment.class));
        kind.onChange(this::read);
        table.onOpen(line -> open.accept(line.entry()));
    }

    @Override
    public String heading() {
        return texts.get("sheets.list");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public List<String> help() {
        return List.of("help.written");
    }

    @Override
    public JComponent firstFocus() {
        return kind.combo();
    }

    /** Reads the entries of the kind in hand. */
    void read() {
        RecordType<?> type = kind.chosen();
        if (type != null) {
            reading.run(
                    texts.get("sheets.list.reading"),
                    () -> lines(context.book().view().facts(), type.kind()),
                    table::show,
                    thrown -> LOG.error("what is written could not be listed", thrown));
        }
    }

    private <F extends Fact> List<Line> lines(Facts facts, Class<F> of) {
        List<Line> lines = new ArrayList<>();
        for (Entry<F> entry : facts.of(of).all()) {
            lines.add(new Line(
                    entry.id().text(),
                    entry,
                    titles.what(entry.fact(), facts),
                    titles.when(entry.fact()),
                    RecordTitle.day(entry.fact()),
                    titles.standing(entry)));
        }
        lines.sort(Comparator.comparing(Line::day, Comparator.nullsFirst(Comparator.naturalOrder()))
                .reversed()
                .thenComparing(Line::what));
        return lines;
    }

    private void openSelected() {
        Line line = table.selected();
        if (line != null) {
            open.accept(line.entry());
        }
    }
}
