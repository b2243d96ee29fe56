package witnessmark.desktop.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Kept;
import witnessmark.desktop.form.SheetMenu;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.quantity.Moment;
import witnessmark.wording.Texts;

/** Every part, chosen by where it is and by what is typed. */
final class PartsTable {
    private static final int COUNTED = 8;

    private final Texts texts;
    private final ShelfAsked asked;
    private final SheetTable<ShelfLine> sheet;
    private final ChoiceBox<Whereabout> where;
    private final SheetMenu<ShelfLine> menu;
    private final JButton write;
    private final Empty empty;
    private Consumer<String> trial = part -> {};
    private ShelfLines lines = ShelfLines.NONE;

    PartsTable(SheetTools tools, ShelfAsked asked) {
        this.texts = tools.texts();
        this.asked = asked;
        this.sheet =
                new SheetTable<>(texts.get("shelf.parts"), columns(texts), ShelfLine::id).with(tools, "shelf.parts");
        this.where = new ChoiceBox<>(texts, Caption.of(texts.get("shelf.show")), this::words);
        this.menu = sheet.menu(this::ways);
        this.write = Buttons.plain(Caption.of(texts.get("shelf.write")), this::showMenu);
        this.empty =
                new Empty(texts.get("shelf.empty.parts"), Caption.of(texts.get("shelf.empty.fit")), asked.fitPart());
        Kept.leaves(empty);
        where.load(List.of(Whereabout.values()), Whereabout.EVERYWHERE);
        where.onChange(this::showChosen);
        JPanel choice = new JPanel(new FormLayout("insets 0, gap 6", "[][]", "[center]"));
        choice.setOpaque(false);
        choice.add(where.label());
        choice.add(where.combo(), "w 0:200:");
        write.setToolTipText(texts.get("shelf.write.tip"));
        sheet.filterStays(choice, write);
        sheet.table().setToolTipText(texts.get("shelf.parts.tip"));
        sheet.onOpen(line -> asked.page().accept(line.id()));
        sheet.onSelect(line -> write.setEnabled(line != null));
        write.setEnabled(false);
    }

    /** Says what opens the trial of the design of a part, by the text form of the part's identity. */
    void onTrial(Consumer<String> opens) {
        trial = opens;
    }

    SheetTable<ShelfLine> sheet() {
        return sheet;
    }

    ChoiceBox<Whereabout> where() {
        return where;
    }

    JButton write() {
        return write;
    }

    void show(ShelfLines now) {
        boolean first = lines == ShelfLines.NONE;
        lines = now;
        where.load(List.of(Whereabout.values()), chosen());
        sheet.offer(COUNTED, now.counted());
        showChosen();
        if (first) {
            Kept.returns(empty);
            sheet.whenEmpty(empty); // not before rows are there: they take the focus on arrival, and keep it
        }
    }

    /** Chooses a part and brings it into view, out of whatever hides it. */
    boolean choose(String part) {
        if (sheet.select(part)) {
            return true;
        }
        if (lines.parts().stream().noneMatch(line -> line.id().equals(part))) {
            return false;
        }
        where.choose(Whereabout.EVERYWHERE);
        showChosen();
        return sheet.select(part);
    }

    /** What can be done with a part, in the menu's order. */
    List<SheetMenu.Way> ways(ShelfLine line) {
        List<SheetMenu.Way> ways = new ArrayList<>();
        ways.add(way("shelf.do.page", () -> asked.page().accept(line.id())));
        if (line.onTrial()) {
            ways.add(way("shelf.do.trials", () -> trial.accept(line.id())));
        }
        for (Prefilled sheet : line.sheets()) {
            ways.add(way("shelf.do." + sheet.sheet(), () -> asked.write().accept(sheet)));
        }
        ways.add(way("shelf.do.correct", () -> asked.correct().accept(line.id())));
        return ways;
    }

    private SheetMenu.Way way(String key, Runnable work) {
        return new SheetMenu.Way(Caption.of(texts.get(key)), work);
    }

    private void showMenu() {
        menu.under(write);
    }

    private Whereabout chosen() {
        @Nullable Whereabout chosen = where.chosen();
        return chosen == null ? Whereabout.EVERYWHERE : chosen;
    }

    private void showChosen() {
        Whereabout chosen = chosen();
        if (lines.parts().isEmpty()) {
            empty.nothingYet();
        } else {
            empty.say(texts.get(chosen.noneKey()));
        }
        sheet.show(lines.under(chosen));
        write.setEnabled(sheet.selected() != null);
    }

    private String words(Whereabout choice) {
        return texts.get(choice.key(), lines.under(choice).size());
    }

    private static List<Column<ShelfLine>> columns(Texts texts) {
        StateWords states = new StateWords(texts);
        return List.of(
                Column.<ShelfLine>mark(texts.get("shelf.column.mark"), ShelfLine::state, states::of)
                        .wide(50),
                Column.<ShelfLine>text(texts.get("shelf.column.part"), ShelfLine::mark)
                        .strong()
                        .wide(76),
                Column.<ShelfLine>text(texts.get("shelf.column.kind"), ShelfLine::kind)
                        .wide(104),
                Column.<ShelfLine>text(texts.get("shelf.column.design"), ShelfLine::design)
                        .wide(110)
                        .grow(),
                Column.<ShelfLine>text(texts.get("shelf.column.where"), ShelfLine::where)
                        .strong()
                        .wide(126),
                Column.<ShelfLine, Moment>text(texts.get("shelf.column.since"), ShelfLine::since, ShelfLine::from)
                        .wide(124)
                        .onAsking(),
                Column.<ShelfLine, Long>figure(texts.get("shelf.column.ran"), ShelfLine::ran, ShelfLine::amount)
                        .wide(84),
                Column.<ShelfLine, Long>text(
                                texts.get("shelf.column.sinceWork"), ShelfLine::sinceWork, ShelfLine::amountSince)
                        .wide(132),
                Column.<ShelfLine>text(texts.get("shelf.column.counted"), ShelfLine::counted)
                        .wide(96)
                        .onAsking(),
                Column.<ShelfLine>text(texts.get("shelf.column.worst"), ShelfLine::worst)
                        .inked(ShelfLine::state)
                        .wide(290)
                        .grow(),
                Column.<ShelfLine>text(texts.get("shelf.column.note"), ShelfLine::note)
                        .wide(200)
                        .grow());
    }
}
