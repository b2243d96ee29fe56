package witnessmark.desktop.strip;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
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
import witnessmark.domain.PartSpot;
import witnessmark.logbook.photos.PhotosOf;
import witnessmark.logbook.strip.WriteStrip;
import witnessmark.study.result.FailureMode;
import witnessmark.study.result.Outline;
import witnessmark.wording.PartPlaceWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Beside the table: what is known of the position in hand, and what can be said of it. A field that is left is written. */
final class StripSide extends JPanel {
    private final transient Texts texts;
    private final transient RecordWords records;
    private final transient StripTold told;
    private final JTextArea title = Lettering.paragraph(" ", Styles.SECTION);
    private final ChoiceBox<StripChoice.Found> which;
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
    private final transient Map<Id<Finding>, StripInHand.Typed> notWritten = new HashMap<>();

    private final Sheet sheet = new Sheet("fillx, wrap, hidemode 3", "[0::,grow,fill]", "");
    private @Nullable PhotoStrip photos;
    private transient @Nullable StripInHand shown;
    private transient List<StripChoice.Of> incidents = List.of();
    private boolean readOnly;
    private boolean adding;
    /** The mark that is being written of the position shown. */
    private transient @Nullable Asked asked;

    /** @param of the finding that it is the mark of from now on, or null for another one */
    private record Asked(FindingMark mark, @Nullable Id<Finding> of) {}

    StripSide(Texts texts, StripTold told) {
        super(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[top]"));
        this.texts = texts;
        this.records = new RecordWords(texts);
        this.told = told;
        setOpaque(false);
        said.setOpaque(false);
        which = new ChoiceBox<>(texts, Caption.of(texts.get("strip.page.in_hand")), StripChoice.Found::words);
        which.onChange(this::whichChosen);
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
        sheet.add(which, "growx, wmin 0, gaptop 6");
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
        goesBack(which.combo());
        for (var field : List.of(which.combo(), mark.combo(), incident.combo(), spot.field(), words.field())) {
            FormKeys.bind(field, Keys.plain(KeyEvent.VK_ESCAPE), "wm-back", this::leaves);
        }
    }

    /** Enter and leaving write what is chosen; going through the choices does not. */
    private void leaves(JComboBox<?> combo, Runnable write) {
        combo.putClientProperty("JComboBox.isTableCellEditor", Boolean.TRUE);
        goesBack(combo);
        combo.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                if (!e.isTemporary()) {
                    write.run();
                }
            }
        });
    }

    /** Enter is done with it. */
    private void goesBack(JComboBox<?> combo) {
        FormKeys.bind(combo, Keys.plain(KeyEvent.VK_ENTER), "wm-enter", () -> {
            combo.setPopupVisible(false);
            told.back();
        });
    }

    /** What was begun in a field and not left is as it was. */
    private void leaves() {
        StripInHand at = shown;
        if (at != null) {
            notWritten.remove(at.finding());
            adding = false;
            fillMark(at);
            fillWords(at);
            fillIncident(at);
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
        StripInHand at = shown;
        List<StripChoice.Mark> all = new ArrayList<>();
        all.add(new StripChoice.Mark(null, texts.get("strip.page.mark.none")));
        if (at != null) {
            FailureMode.marksAt(at.where().line().place())
                    .forEach(each -> all.add(new StripChoice.Mark(each, records.word(each))));
        }
        return all;
    }

    private void markLeft() {
        StripInHand at = shown;
        FindingMark picked = at == null ? null : picked(at);
        if (at != null && picked != null) {
            write(at, picked, null);
        }
        adding = false;
    }

    /** The mark that was picked and is not written yet nor being written. */
    private @Nullable FindingMark picked(StripInHand at) {
        StripChoice.Mark chosen = mark.chosen();
        FindingMark picked = chosen == null ? null : chosen.mark();
        boolean asking = asked != null && asked.mark() == picked;
        boolean there = asked == null && picked == at.mark();
        return !adding && (asking || there) ? null : picked;
    }

    private void write(StripInHand at, FindingMark picked, @Nullable PartSpot on) {
        if (adding) {
            adding = false;
            asked = new Asked(picked, null);
            told.another(at, picked, on);
        } else {
            Id<Finding> of = keysAreOf();
            asked = new Asked(picked, of);
            told.mark(at, of, picked, on);
        }
    }

    private void whichChosen() {
        StripChoice.Found chosen = which.chosen();
        StripInHand at = shown;
        if (at != null && chosen != null && !chosen.seen().finding().equals(at.finding())) {
            asked = null; // keys are of the one that was taken in hand
            show(new StripInHand(at.where(), at.cell(), chosen.seen()));
        }
    }

    private void wordsLeft() {
        StripInHand at = shown;
        Id<Finding> finding = at == null ? null : at.finding();
        if (at == null || finding == null) {
            return;
        }
        StripInHand.Typed typed =
                new StripInHand.Typed(spot.text().strip(), words.text().strip());
        if (!typed.equals(at.written())) {
            notWritten.put(finding, typed);
            told.words(at, typed.spot(), typed.words());
        }
    }

    private void incidentLeft() {
        StripChoice.Of chosen = incident.chosen();
        StripInHand at = shown;
        if (at != null && at.finding() != null && chosen != null && isOther(at)) {
            told.incident(at, chosen);
        }
    }

    /** Whether another incident is chosen than what is written. */
    private boolean isOther(StripInHand at) {
        StripChoice.Of chosen = incident.chosen();
        return chosen != null && !chosen.key().equals(at.incident());
    }

    /**
     * Shows a position. What stands in the fields of another is written first: a click on the table comes before the focus has left
     * them. What is being typed or chosen of the same stays; what is being picked or chosen while another mark of the same position
     * comes in hand is of that one.
     *
     * @param of the incidents of which it may be evidence, none first
     */
    void show(WriteStrip.Where where, StripLines.Cell cell, List<StripChoice.Of> of, boolean looking) {
        incidents = of;
        readOnly = looking;
        show(new StripInHand(where, cell, inHand(where, cell)));
    }

    /** What is new at the same position, else what was in hand there, else what has gone furthest. */
    private StripLines.@Nullable Seen inHand(WriteStrip.Where where, StripLines.Cell cell) {
        StripInHand was = shown;
        if (was == null || !was.where().equals(where)) {
            return cell.worst().orElse(null);
        }
        Set<Id<Finding>> before =
                was.cell().found().stream().map(StripLines.Seen::finding).collect(Collectors.toSet());
        return cell.found().stream()
                .filter(seen -> !before.contains(seen.finding()))
                .findFirst()
                .or(() -> cell.found().stream()
                        .filter(seen -> seen.finding().equals(was.finding()))
                        .findFirst())
                .or(cell::worst)
                .orElse(null);
    }

    private void show(StripInHand next) {
        StripInHand was = shown;
        boolean same = was != null && was.where().equals(next.where());
        boolean sameMark = was != null && same && Objects.equals(was.finding(), next.finding());
        if (!same && !readOnly) {
            markLeft();
            incidentLeft();
        }
        if (!sameMark && !readOnly) {
            wordsLeft();
        }
        boolean choosing = was != null && same && incident.combo().isFocusOwner() && (sameMark || isOther(was));
        boolean typing =
                sameMark && (spot.field().isFocusOwner() || words.field().isFocusOwner());
        Id<Finding> finding = next.finding();
        if (typing && finding != null) {
            notWritten.put(
                    finding,
                    new StripInHand.Typed(spot.text().strip(), words.text().strip()));
        }
        shown = next;
        asked = same && was != null && asked != null && !isThere(asked, was, next) ? asked : null;
        adding = same && adding;
        StripLines.Cell cell = next.cell();
        title.setText(cell.said().get(0));
        said.removeAll();
        cell.said().stream().skip(1).forEach(each -> said.add(Lettering.paragraph(each, Styles.NOTE), "growx, wmin 0"));
        boolean picking = same && (adding || asked != null || mark.combo().isFocusOwner());
        if (!picking) {
            fillMark(next);
        }
        fillWords(next);
        if (!choosing) {
            fillIncident(next);
        }
        drawing.show(next.where().line().outline(), next.spots(), !sameMark);
        where.setText(next.spots().said());
        where.setVisible(drawing.isVisible());
        offer(next);
        revalidate();
        repaint();
    }

    /** What can be said of it. */
    private void offer(StripInHand next) {
        Id<Finding> finding = next.finding();
        boolean there = finding != null;
        List<StripChoice.Found> all =
                next.cell().found().stream().map(StripChoice.Found::new).toList();
        which.load(
                all,
                all.stream()
                        .filter(each -> each.seen().equals(next.seen()))
                        .findFirst()
                        .orElse(null));
        which.setVisible(all.size() > 1);
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
            photos.show(finding == null ? null : PhotosOf.finding(finding));
        }
    }

    /** Whether what was asked for has been read back. */
    private static boolean isThere(Asked asked, StripInHand was, StripInHand next) {
        return next.cell().found().stream()
                .filter(seen -> seen.mark() == asked.mark())
                .map(StripLines.Seen::finding)
                .anyMatch(finding -> asked.of() == null
                        ? was.cell().found().stream()
                                .noneMatch(before -> before.finding().equals(finding) && before.mark() == asked.mark())
                        : finding.equals(asked.of()));
    }

    /** What was asked for was refused. */
    void refused() {
        asked = null;
    }

    private void fillMark(StripInHand at) {
        List<StripChoice.Mark> all = choices();
        mark.load(
                all,
                all.stream()
                        .filter(each -> each.mark() == at.mark())
                        .findFirst()
                        .orElse(all.get(0)));
    }

    private void fillWords(StripInHand at) {
        Id<Finding> finding = at.finding();
        StripInHand.Typed written = at.written();
        StripInHand.Typed typed = finding == null ? written : notWritten.getOrDefault(finding, written);
        if (typed.equals(written)) {
            notWritten.remove(finding);
        }
        spot.load(typed.spot());
        words.load(typed.words());
    }

    private void fillIncident(StripInHand at) {
        incident.load(incidents, incidents.get(0));
        for (int i = 0; i < incident.combo().getItemCount(); i++) {
            StripChoice.Of each = incident.combo().getItemAt(i);
            if (each.key().equals(at.incident())) {
                incident.choose(each);
            }
        }
    }

    /** What the drawing asks for: of the position in hand. */
    private final class Drawing implements PartDrawing.Asked {
        @Override
        public void place(@Nullable PartSpot on) {
            StripInHand at = shown;
            FindingMark picked = at == null ? null : picked(at);
            if (at == null) {
                return;
            }
            if (picked != null) {
                write(at, picked, on);
            } else if (asked != null) {
                told.place(at, keysAreOf(), on); // a click comes after the focus has left the mark
            } else if (!Objects.equals(on, at.spots().inHand())) {
                told.place(at, at.finding(), on);
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

    /** What is in hand at the position shown: a mark that is being written is, before it is read back. Null for the last or none. */
    @Nullable
    Id<Finding> keysAreOf() {
        Asked now = asked;
        return now != null ? now.of() : shown == null ? null : shown.finding();
    }

    /** Its mark in words; empty where there is none. */
    String word() {
        StripChoice.Mark chosen = mark.chosen();
        return chosen == null || chosen.mark() == null ? "" : chosen.words();
    }

    /** Whether anything is in hand or being written. */
    boolean hasMark() {
        return asked != null || shown != null && shown.finding() != null;
    }

    /** Where a position is not there. */
    void showNone() {
        shown = null;
        asked = null;
        adding = false;
        title.setText(" ");
        said.removeAll();
        which.setVisible(false);
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

    ChoiceBox<StripChoice.Found> which() {
        return which;
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
