package witnessmark.desktop.keeping;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
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
import witnessmark.desktop.task.Latest;
import witnessmark.outcome.Outcome;
import witnessmark.wording.Texts;

/** The copies of a logbook, each checked while one looks, and the ways to get one back. Nothing is done before. */
final class RestorePage implements Aside {
    private final KeepingContext context;
    private final Texts texts;
    private final RestoreModel model;
    private final Latest reading;
    private final Latest checking;
    private final JPanel page = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));
    private final SheetTable<CopyLine> table;
    private final JTextArea said = Lettering.paragraph(" ", Styles.FIELD_LABEL);
    private final JTextArea where = Lettering.paragraph(" ", Styles.NOTE);
    private final JButton asNew;
    private final @Nullable JButton inPlace;
    private List<CopyLine> lines = new ArrayList<>();

    /** What the buttons do with the copy in hand. */
    interface Restores {
        void asNew(Path copy);

        void inPlace(Path copy);
    }

    /** @param mayReplace whether a copy may be put in the place of the logbook */
    RestorePage(KeepingContext context, RestoreModel model, boolean mayReplace, Restores restores) {
        this.context = context;
        this.texts = context.tools().texts();
        this.model = model;
        this.reading = new Latest(context.tools().tasks());
        this.checking = new Latest(context.tools().tasks());
        this.asNew = button("keeping.restore.asNew", () -> with(restores::asNew));
        this.inPlace = mayReplace
                ? Styles.as(Styles.MAIN, button("keeping.restore.inPlace", () -> with(restores::inPlace)))
                : null;
        this.table = new SheetTable<>(texts.get("keeping.copies"), columns(), CopyLine::file);
        table.with(context.tools(), "keeping.copies");
        table.onSelect(line -> inHand());
        table.onOpen(line -> restores.asNew(line.file()));
        page.setOpaque(false);
        page.add(sheet(), "grow");
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "close", context.tell()::dismiss);
        inHand();
    }

    /** Lists what is kept here and in the second place. */
    void begin() {
        said.setText(texts.get("keeping.restore.looking"));
        reading.run(texts.get("keeping.restore.looking"), model::kept, this::showKept, context.tell()::failed);
    }

    @Override
    public String heading() {
        return texts.get("keeping.restore");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public List<String> help() {
        return List.of("help.restore");
    }

    @Override
    public JComponent firstFocus() {
        return table.table();
    }

    SheetTable<CopyLine> table() {
        return table;
    }

    private List<Column<CopyLine>> columns() {
        return List.of(
                Column.<CopyLine, java.time.Instant>text(
                                texts.get("keeping.copies.made"), CopyLine::made, CopyLine::when)
                        .strong()
                        .wide(170),
                Column.<CopyLine, java.time.Instant>text(
                                texts.get("keeping.copies.saved"), CopyLine::saved, CopyLine::upTo)
                        .wide(170),
                Column.<CopyLine>text(texts.get("keeping.copies.name"), CopyLine::name)
                        .wide(130),
                Column.<CopyLine, Long>figure(texts.get("keeping.copies.records"), CopyLine::records, CopyLine::count)
                        .wide(80),
                Column.<CopyLine>text(texts.get("keeping.copies.lastRun"), CopyLine::lastRun)
                        .wide(170),
                Column.<CopyLine>text(texts.get("keeping.copies.check"), CopyLine::good)
                        .wide(150),
                Column.<CopyLine>text(texts.get("keeping.copies.where"), CopyLine::where)
                        .wide(120)
                        .grow());
    }

    private Sheet sheet() {
        Sheet sheet = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "");
        sheet.add(Lettering.cutLine(texts.get("keeping.restore"), Styles.SECTION), "wmin 0, wrap");
        String about = inPlace == null ? "keeping.restore.about.new" : "keeping.restore.about";
        sheet.add(Lettering.paragraph(texts.get(about, model.target()), Styles.FIELD_LABEL), "growx, wmin 0, wrap 4");
        sheet.add(said, "growx, wmin 0, wrap 4");
        sheet.add(table, "grow, pushy, hmin 160, wrap");
        sheet.add(where, "growx, wmin 0, wrap");
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 8, alignx right"));
        foot.setOpaque(false);
        foot.add(button(
                "keeping.restore.file", () -> context.choose().logbook().get().ifPresent(this::lookIn)));
        foot.add(button(
                "keeping.restore.folder", () -> context.choose().folder().get().ifPresent(this::lookIn)));
        foot.add(button("keeping.close", context.tell()::dismiss));
        foot.add(asNew);
        if (inPlace != null) {
            foot.add(inPlace);
        }
        sheet.add(foot, "growx");
        return sheet;
    }

    private JButton button(String key, Runnable work) {
        return Buttons.plain(Caption.of(texts.get(key)), work);
    }

    private void lookIn(Path place) {
        said.setText(texts.get("keeping.restore.looking"));
        reading.run(
                texts.get("keeping.restore.looking"),
                () -> model.in(place),
                found -> lookedIn(place, found),
                context.tell()::failed);
    }

    private void lookedIn(Path place, Outcome<RestoreModel.Listed> found) {
        if (!found.didWork()) {
            said.setText(context.problems().sentence(found.problems().get(0)));
            return;
        }
        RestoreModel.Listed there = found.orThrow();
        said.setText(texts.get("keeping.restore.there", there.lines().size(), place));
        show(there.lines(), () -> {});
    }

    private void showKept(RestoreModel.Listed kept) {
        int many = kept.lines().size();
        said.setText(
                many == 0
                        ? texts.get("keeping.restore.none")
                        : texts.get("keeping.restore.found", many, kept.others()));
        show(kept.lines(), () -> said.setText(texts.get("keeping.restore.checked", many, notGood(), kept.others())));
    }

    private long notGood() {
        String good = texts.get("keeping.copies.good");
        return lines.stream().filter(line -> !line.good().equals(good)).count();
    }

    /** @param checked called when every one of them was checked */
    private void show(List<CopyLine> copies, Runnable checked) {
        lines = new ArrayList<>(copies);
        table.show(lines);
        if (!lines.isEmpty()) {
            table.select(lines.get(0).file());
        }
        inHand();
        checkFrom(0, checked);
    }

    /** One after the other, so that the newest is known first and the disk is not torn between them. */
    private void checkFrom(int at, Runnable checked) {
        if (at == lines.size() && at > 0) {
            goodInHand();
            checked.run();
        } else if (at < lines.size()) {
            Path copy = lines.get(at).file();
            checking.run(
                    texts.get("keeping.copies.checking"),
                    () -> model.check(copy),
                    found -> {
                        lines.set(at, lines.get(at).checked(found));
                        table.show(lines);
                        checkFrom(at + 1, checked);
                    },
                    failure -> {
                        context.tell().failed(failure);
                        checkFrom(at + 1, checked);
                    });
        }
    }

    /** The first is in hand until somebody picks another; where that is not good, the first that is. */
    private void goodInHand() {
        CopyLine inHand = table.selected();
        String good = texts.get("keeping.copies.good");
        if (inHand != null
                && inHand.file().equals(lines.get(0).file())
                && !inHand.good().equals(good)) {
            lines.stream()
                    .filter(line -> line.good().equals(good))
                    .findFirst()
                    .ifPresent(line -> table.select(line.file()));
        }
    }

    private void with(java.util.function.Consumer<Path> work) {
        CopyLine line = table.selected();
        if (line != null) {
            work.accept(line.file());
        }
    }

    private void inHand() {
        CopyLine line = table.selected();
        asNew.setEnabled(line != null);
        if (inPlace != null) {
            inPlace.setEnabled(line != null);
        }
        where.setText(line == null ? " " : line.file().toString());
    }
}
