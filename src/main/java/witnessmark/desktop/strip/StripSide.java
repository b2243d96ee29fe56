package witnessmark.desktop.strip;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.photos.PhotoStrip;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.Id;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.logbook.strip.WriteStrip;
import witnessmark.study.result.FailureMode;
import witnessmark.study.result.Outline;
import witnessmark.wording.PartPlaceWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Beside the table: what is known of the position in hand, and what can be said of it. A field that is left is written. */
final class StripSide extends JPanel {
    /** The position its fields are of: what is written is of that one, whichever is in hand by then. */
    record At(WriteStrip.Where where, StripLines.Cell cell) {}

    /** What is asked of it. */
    interface Told {
        void mark(At at, FindingMark mark);

        void another(At at, FindingMark mark);

        void words(At at, String spot, String words);

        void incident(At at, StripChoice.Of incident);

        /** @param place where on its part, or null for nowhere in particular */
        void place(At at, PartSpots.@Nullable Place place);

        void correct();

        void takeAway();

        /** Back to the table. */
        void back();
    }

    private final transient Texts texts;
    private final transient RecordWords records;
    private final transient Told told;
    private final JTextArea title = Lettering.paragraph(" ", Styles.SECTION);
    private final JPanel said = new JPanel(new FormLayout("insets 0, gap 0 2, fillx, wrap", "[0::,grow,fill]"));
    private final ChoiceBox<StripChoice.Mark> mark;
    private final FieldBox spot;
    private final FieldBox words;
    private final PartDrawing drawing;
    private final JTextArea where = Lettering.paragraph(" ", Styles.NOTE);
    private final ChoiceBox<StripChoice.Of> incident;
    private final JButton another;
    private final JButton correct;
    private final JButton away;
    /** What was typed and is not in the logbook yet: it stands in its fields again when its finding does. */
    private final transient Map<Id<Finding>, Typed> notWritten = new HashMap<>();

    private final Sheet sheet = new Sheet("fillx, wrap, hidemode 3", "[0::,grow,fill]", "");
    private @Nullable PhotoStrip photos;
    private transient @Nullable At shown;
    private boolean adding;
    /** Where the mark is that is being written at the position shown. */
    private transient PartSpots.@Nullable Place waiting;

    private record Typed(String spot, String words) {}

    StripSide(Texts texts, Told told) {
        super(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[top]"));
        this.texts = texts;
        this.records = new RecordWords(texts);
        this.told = told;
        setOpaque(false);
        said.setOpaque(false);
        mark = new ChoiceBox<>(texts, Caption.of(texts.get("strip.page.mark")), StripChoice.Mark::words);
        spot = new FieldBox(Caption.of(texts.get("strip.page.spot")));
        drawing = new PartDrawing(texts.get("strip.page.drawing"), new PartPlaceWords(texts), new Drawing());
        words = new FieldBox(Caption.of(texts.get("strip.page.seen")));
        incident = new ChoiceBox<>(texts, Caption.of(texts.get("strip.page.evidence")), StripChoice.Of::words);
        another = Buttons.plain(Caption.of(texts.get("strip.page.another")), this::addAnother);
        correct = Buttons.link(Caption.of(texts.get("strip.page.correct")), told::correct);
        away = Buttons.link(Caption.of(texts.get("strip.page.away")), told::takeAway);
        hear();
        sheet.add(title, "growx, wmin 0");
        sheet.add(said, "growx, wmin 0");
        sheet.add(mark, "growx, wmin 0, gaptop 6");
        sheet.add(spot, "growx, wmin 0");
        sheet.add(drawing, "growx, wmin 0");
        sheet.add(where, "growx, wmin 0");
        sheet.add(words, "growx, wmin 0");
        sheet.add(incident, "growx, wmin 0");
        sheet.add(another, "growx 0, gaptop 4");
        sheet.add(correct, "split 2, growx 0");
        sheet.add(away, "growx 0");
        add(sheet, "growx, wmin 0");
    }

    /** Puts the photos of what was found under its fields. */
    void with(PhotoStrip strip) {
        photos = strip;
        strip.setVisible(false);
        sheet.add(strip, "growx, wmin 0, gaptop 6");
    }

    private void hear() {
        leaves(mark.combo(), this::markLeft);
        leaves(incident.combo(), this::incidentLeft);
        spot.onLeave(this::wordsLeft);
        words.onLeave(this::wordsLeft);
        spot.onEnter(words::takeFocus);
        words.onEnter(told::back);
        for (var field : List.of(mark.combo(), incident.combo(), spot.field(), words.field())) {
            FormKeys.bind(field, Keys.plain(KeyEvent.VK_ESCAPE), "wm-back", this::leaves);
        }
    }

    /** Enter and leaving write what is chosen; going through the choices does not. */
    private void leaves(JComboBox<?> combo, Runnable write) {
        combo.putClientProperty("JComboBox.isTableCellEditor", Boolean.TRUE);
        FormKeys.bind(combo, Keys.plain(KeyEvent.VK_ENTER), "wm-enter", () -> {
            combo.setPopupVisible(false);
            told.back();
        });
        combo.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    write.run();
                }
            }
        });
    }

    /** What was begun in a field and not left is as it was. */
    private void leaves() {
        At at = shown;
        if (at != null) {
            notWritten.remove(at.cell().finding());
            fill(at);
        }
        told.back();
    }

    void addAnother() {
        adding = true;
        List<StripChoice.Mark> all = choices();
        mark.load(all, all.get(0));
        mark.combo().requestFocusInWindow();
    }

    private List<StripChoice.Mark> choices() {
        At at = shown;
        List<StripChoice.Mark> all = new ArrayList<>();
        all.add(new StripChoice.Mark(null, texts.get("strip.page.mark.none")));
        if (at != null) {
            FailureMode.marksAt(at.where().line().place())
                    .forEach(each -> all.add(new StripChoice.Mark(each, records.word(each))));
        }
        return all;
    }

    private void markLeft() {
        StripChoice.Mark chosen = mark.chosen();
        At at = shown;
        boolean more = adding;
        adding = false;
        if (at == null || chosen == null || chosen.mark() == null) {
            return;
        }
        if (more) {
            told.another(at, chosen.mark());
        } else if (chosen.mark() != at.cell().mark()) {
            told.mark(at, chosen.mark());
        }
    }

    private void wordsLeft() {
        At at = shown;
        Id<Finding> finding = at == null ? null : at.cell().finding();
        if (at == null || finding == null) {
            return;
        }
        Typed typed = new Typed(spot.text().strip(), words.text().strip());
        if (!typed.equals(new Typed(at.cell().spot(), at.cell().words()))) {
            notWritten.put(finding, typed);
            told.words(at, typed.spot(), typed.words());
        }
    }

    private void incidentLeft() {
        StripChoice.Of chosen = incident.chosen();
        At at = shown;
        if (at != null
                && at.cell().finding() != null
                && chosen != null
                && !chosen.key().equals(at.cell().incident())) {
            told.incident(at, chosen);
        }
    }

    /**
     * Shows a position. What stands in the fields of another is written first: a click on the table comes before the focus has left
     * them. What is being typed or chosen of the same stays.
     *
     * @param incidents of which it may be evidence, none first
     */
    void show(At next, List<StripChoice.Of> incidents, boolean readOnly) {
        At was = shown;
        boolean same = was != null && was.where().equals(next.where());
        if (!same && !readOnly) {
            markLeft();
            wordsLeft();
            incidentLeft();
        }
        boolean typing = was != null
                && same
                && (spot.field().isFocusOwner() || words.field().isFocusOwner())
                && Objects.equals(was.cell().finding(), next.cell().finding());
        Id<Finding> finding = next.cell().finding();
        if (typing && finding != null) {
            notWritten.put(finding, new Typed(spot.text().strip(), words.text().strip()));
        }
        shown = next;
        StripLines.Cell cell = next.cell();
        PartSpots.Place put = same && cell.finding() != null ? waiting : null;
        waiting = same && cell.finding() == null ? waiting : null;
        if (put != null) {
            told.place(next, put);
        }
        title.setText(cell.said().get(0));
        said.removeAll();
        cell.said().stream().skip(1).forEach(each -> said.add(Lettering.paragraph(each, Styles.NOTE), "growx, wmin 0"));
        if (!(same && (mark.combo().isFocusOwner() || incident.combo().isFocusOwner()))) {
            incident.load(incidents, incidents.get(0));
            fill(next);
        }
        drawing.show(
                next.where().line().outline(),
                cell.spots(),
                was == null || !same || !Objects.equals(was.cell().finding(), cell.finding()));
        where.setText(cell.spots().said());
        where.setVisible(drawing.isVisible());
        boolean there = cell.finding() != null;
        mark.combo().setEnabled(!readOnly);
        spot.field().setEnabled(there && !readOnly);
        words.field().setEnabled(there && !readOnly);
        drawing.setEnabled(!readOnly);
        incident.combo().setEnabled(there && !readOnly);
        another.setEnabled(there && !readOnly);
        correct.setEnabled(there && !readOnly);
        away.setEnabled(there && !readOnly);
        if (photos != null) {
            photos.setVisible(there);
            photos.show(cell.finding() == null ? null : PhotosOf.finding(cell.finding()));
        }
        revalidate();
        repaint();
    }

    private void fill(At at) {
        StripLines.Cell cell = at.cell();
        adding = false;
        List<StripChoice.Mark> all = choices();
        mark.load(
                all,
                all.stream()
                        .filter(each -> each.mark() == cell.mark())
                        .findFirst()
                        .orElse(all.get(0)));
        Typed written = new Typed(cell.spot(), cell.words());
        Typed typed = cell.finding() == null ? written : notWritten.getOrDefault(cell.finding(), written);
        if (typed.equals(written)) {
            notWritten.remove(cell.finding());
        }
        spot.load(typed.spot());
        words.load(typed.words());
        for (int i = 0; i < incident.combo().getItemCount(); i++) {
            StripChoice.Of each = incident.combo().getItemAt(i);
            if (each.key().equals(cell.incident())) {
                incident.choose(each);
            }
        }
    }

    /** What the drawing asks for: of the position in hand. */
    private final class Drawing implements PartDrawing.Asked {
        @Override
        public void place(PartSpots.@Nullable Place place) {
            At at = shown;
            if (at == null) {
                return;
            }
            StripChoice.Mark chosen = mark.chosen();
            boolean picked = chosen != null
                    && chosen.mark() != null
                    && chosen.mark() != at.cell().mark();
            if (adding || picked) {
                boolean first = !adding && at.cell().finding() == null;
                waiting = first ? place : null; // the place of another mark is not that of the one in hand
                markLeft();
            } else if (!Objects.equals(place, at.cell().spots().inHand())) {
                told.place(at, place);
            }
        }

        @Override
        public void back() {
            told.back();
        }
    }

    /** @param letter with which the mark begins, or null */
    void ask(@Nullable Character letter) {
        mark.combo().requestFocusInWindow();
        if (letter != null) {
            mark.combo().selectWithKeyChar(letter);
        }
    }

    /** Where a position is not there. */
    void showNone() {
        shown = null;
        title.setText(" ");
        said.removeAll();
        drawing.show(Outline.NONE, PartSpots.NONE, true);
        where.setVisible(false);
        List.of(mark.combo(), incident.combo(), spot.field(), words.field(), another, correct, away)
                .forEach(each -> each.setEnabled(false));
        if (photos != null) {
            photos.setVisible(false);
            photos.show(null);
        }
        revalidate();
    }

    ChoiceBox<StripChoice.Mark> mark() {
        return mark;
    }

    PartDrawing drawing() {
        return drawing;
    }

    FieldBox spot() {
        return spot;
    }

    FieldBox words() {
        return words;
    }
}
