package witnessmark.desktop.sheets;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FootGivesWay;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.logbook.sheets.FieldKind;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.SheetGroup;
import witnessmark.logbook.sheets.SheetReading;
import witnessmark.wording.Texts;

/** One sheet as a page: headings, rows of four columns at most, a foot with what needs a look and the buttons. */
final class SheetPage implements Aside {
    private static final String COLUMNS =
            "[0:110:,grow,fill,sg s]16[0:110:,grow,fill,sg s]16" + "[0:110:,grow,fill,sg s]16[0:110:,grow,fill,sg s]";

    private final SheetModel model;
    private final SheetActions actions;
    private final SheetWords words;
    private final Texts texts;
    private final Runnable leave;
    private final Consumer<SheetReading> afterwards;
    private final SheetFields fields;
    private final JPanel page = new Page();
    private final NoticeStrip strip = new NoticeStrip();
    private final ScrollPage scroll;
    private final FormFoot foot;
    private final FootGivesWay way;
    private final List<Row> rows = new ArrayList<>();
    private final @Nullable WrittenChanges written;
    private final List<String> help;

    /** Sheet, strip and foot under each other. */
    final class Page extends JPanel {
        Page() {
            super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[0::,grow,fill]8[]8[]"));
        }

        @Override
        public void doLayout() {
            way.fit();
            super.doLayout();
        }
    }

    /** A line of the sheet that is shown while one of its fields is asked for. */
    private record Row(JComponent line, List<SheetField> of) {}

    /** Beside each field of several lines, what was understood of it. */
    private final Map<SheetField, JTextArea> readBack = new LinkedHashMap<>();

    /**
     * @param help the stems of its help
     * @param leave takes the page away
     * @param afterwards told what was saved, once the page is away
     */
    SheetPage(
            SheetModel model,
            SheetActions actions,
            SheetWords words,
            List<String> help,
            Runnable leave,
            Consumer<SheetReading> afterwards) {
        this(model, actions, words, help, leave, afterwards, null);
    }

    /** @param written what else can be done to what is written, which is left for where one was */
    SheetPage(
            SheetModel model,
            SheetActions actions,
            SheetWords words,
            List<String> help,
            Runnable leave,
            WrittenChanges written) {
        this(model, actions, words, help, leave, saved -> {}, written);
    }

    private SheetPage(
            SheetModel model,
            SheetActions actions,
            SheetWords words,
            List<String> help,
            Runnable leave,
            Consumer<SheetReading> afterwards,
            @Nullable WrittenChanges written) {
        this.model = model;
        this.actions = actions;
        this.words = words;
        this.texts = words.texts();
        this.help = List.copyOf(help);
        this.leave = leave;
        this.afterwards = afterwards;
        this.written = written;
        this.fields = new SheetFields(model, words);
        this.foot = new FormFoot(written == null ? buttons() : buttons(written));
        page.setOpaque(false);
        this.scroll = new ScrollPage(sheet());
        page.add(scroll, "grow, wrap");
        page.add(strip, "growx, wrap");
        page.add(foot, "growx");
        this.way = new FootGivesWay(page, scroll::end, foot, "growx");
        boolean goesOn = model.sheet().oneAfterTheOther();
        FormKeys.bindWithin(page, Keys.menu(KeyEvent.VK_ENTER), "wm-save", goesOn ? this::saveNext : this::save);
        if (written == null) {
            FormKeys.bindWithin(
                    page, Keys.menuShift(KeyEvent.VK_ENTER), "wm-save-next", goesOn ? this::save : this::saveNext);
        } else {
            written.onChange(this::show);
        }
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", leave);
        FormKeys.bindWithin(
                page,
                Keys.menu(KeyEvent.VK_Z),
                "wm-put-back",
                model::canPutBack,
                () -> actions.putBack(this::lookAtFirst));
        model.onChange(this::show);
        actions.onChange(this::show);
        actions.onRestored(() -> model.firstAtFault().ifPresent(this::look));
        show();
    }

    @Override
    public String heading() {
        return words.title();
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return fields.input(model.firstEmpty());
    }

    @Override
    public List<String> help() {
        return help;
    }

    /** What it asks of the logbook may be another by now; what is typed stays. */
    @Override
    public void changed() {
        actions.look(model::reread);
    }

    /** It is on screen now: what stands at its top is to be read first. */
    void shown() {
        scroll.fromTop();
    }

    /** Somebody wants to write on it about something chosen already. */
    void open(Map<SheetField, String> chosen) {
        open();
        model.mean(chosen);
    }

    /** What is picked in it at first, besides what always stands there. */
    void picks(Map<SheetField, String> first) {
        model.picks(first);
    }

    /** Somebody wants to write on it. */
    void open() {
        actions.open();
        if (written != null) {
            written.look();
        }
    }

    private List<JButton> buttons() {
        Caption save = Caption.of(texts.get("sheets.save"));
        Caption another = Caption.of(texts.get("sheets.save_next"));
        KeyStroke main = Keys.menu(KeyEvent.VK_ENTER);
        boolean goesOn = model.sheet().oneAfterTheOther();
        return List.of(
                Buttons.plain(Caption.of(texts.get("sheets.back")), leave),
                Buttons.plain(Caption.of(texts.get("sheets.clear")), this::clear),
                goesOn ? Buttons.plain(save, this::save) : Buttons.plain(another, this::saveNext),
                goesOn ? Buttons.main(another, main, this::saveNext) : Buttons.main(save, main, this::save));
    }

    /** What is struck out is restored before it is corrected. */
    private List<JButton> buttons(WrittenChanges written) {
        JButton back = Buttons.plain(Caption.of(texts.get("sheets.back")), leave);
        if (written.isStruckOut()) {
            return List.of(back, Buttons.plain(Caption.of(texts.get("sheets.restore")), () -> written.restore(leave)));
        }
        return List.of(
                back,
                Buttons.plain(Caption.of(texts.get("sheets.put_back")), this::clear),
                Buttons.plain(Caption.of(texts.get("sheets.strike")), () -> written.strikeOut(this::look, leave)),
                Buttons.main(Caption.of(texts.get("sheets.save_changes")), Keys.menu(KeyEvent.VK_ENTER), this::save));
    }

    private Sheet sheet() {
        Sheet sheet = new Sheet("fillx, aligny top, wrap, hidemode 3", "[0::,grow,fill]", "");
        sheet.add(Lettering.paragraph(words.intro(), Styles.NOTE), "growx, wmin 0");
        for (SheetGroup group : model.sheet().groups()) {
            List<SheetField> all = group.rows().stream().flatMap(List::stream).toList();
            JComponent heading = Lettering.line(words.group(group.key()), Styles.SECTION);
            rows.add(new Row(heading, all));
            sheet.add(heading, "gaptop 6");
            for (List<SheetField> row : group.rows()) {
                JComponent line = line(row);
                rows.add(new Row(line, row));
                sheet.add(line, "growx, wmin 0");
            }
        }
        return sheet;
    }

    /** A field that is not asked for leaves its columns empty, so that nothing jumps sideways. */
    private JComponent line(List<SheetField> row) {
        JPanel line = new JPanel(new FormLayout("insets 0, gap 0, fillx", COLUMNS, "[top]"));
        line.setOpaque(false);
        int column = 0;
        for (SheetField field : row) {
            if (field.kind() == FieldKind.LINES) {
                line.add(fields.box(field), "cell 0 0 2 1, growx, wmin 0");
                JTextArea back = Lettering.paragraph(" ", Styles.ECHO);
                readBack.put(field, back);
                line.add(back, "cell 2 0 2 1, growx, wmin 0, aligny top, gaptop 24");
            } else {
                line.add(fields.box(field), "cell " + column + " 0 " + field.span() + " 1, growx, wmin 0");
            }
            column += field.span();
        }
        return line;
    }

    private void clear() {
        actions.clear(this::lookAtFirst);
        lookAtFirst();
    }

    private void lookAtFirst() {
        look(model.firstEmpty());
    }

    private void save() {
        if (written != null && written.isStruckOut()) {
            return; // its strip says what to do first
        }
        actions.save(this::look, saved -> {
            model.saved();
            leave.run();
            afterwards.accept(saved);
        });
    }

    private void saveNext() {
        actions.save(this::look, saved -> {
            model.next();
            fields.box(model.firstEmpty()).takeFocus();
        });
    }

    private void look(SheetField field) {
        fields.box(field).takeFocus();
    }

    private void show() {
        fields.show();
        rows.forEach(row -> row.line().setVisible(row.of().stream().anyMatch(model::asks)));
        showReadBack();
        foot.draft(actions.draftLine());
        List<SheetField> stopped = model.stopped();
        foot.look(
                texts.get("sheets.look", stopped.size()),
                rest -> texts.get("sheets.look.rest", rest),
                stopped,
                words::label,
                this::look);
        WrittenChanges changes = written;
        foot.about(changes == null ? "" : changes.by());
        strip.say(List.of(actions.failure(), changes == null ? "" : changes.strip()), List::of);
    }

    private void showReadBack() {
        readBack.forEach((field, back) -> {
            String said = String.join(
                    "\n",
                    model.reading().of(field).readBack().stream()
                            .map(note -> words.note(field, note))
                            .toList());
            if (!back.getText().strip().equals(said)) {
                back.setText(said.isEmpty() ? " " : said);
                back.getAccessibleContext().setAccessibleName(said);
            }
        });
    }
}
