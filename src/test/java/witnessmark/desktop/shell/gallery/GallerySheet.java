package witnessmark.desktop.shell.gallery;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.LifeStrip;
import witnessmark.desktop.form.NotesBox;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SideBySide;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.wording.Texts;

/** An invented form: every kind of field and note, the live side, the foot with its main button. */
public final class GallerySheet implements Place {
    private final StateWords states;
    private final JPanel page =
            new JPanel(new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[0::,grow,fill]16[]"));
    private final FieldBox time = new FieldBox(Caption.of("Running &time"));

    public GallerySheet(Texts texts) {
        states = new StateWords(texts);
        page.setOpaque(false);
        page.add(new ScrollPage(new SideBySide(form(), side(), 340, 980)), "grow, wmin 0, wrap");
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 6, fillx", "[0::,grow,fill][][][]"));
        foot.setOpaque(false);
        foot.add(Lettering.cutLine("Draft kept 09:41:12. Not in the logbook yet.", Styles.NOTE), "wmin 0");
        foot.add(Buttons.plain(Caption.of("&Clear sheet"), () -> {}));
        foot.add(Buttons.plain(Caption.of("Save, &next car"), () -> {}));
        foot.add(Buttons.main(Caption.of("&Save run"), Keys.menu(KeyEvent.VK_ENTER), () -> {}));
        page.add(foot, "growx");
    }

    private Sheet form() {
        String quarter = "[0::,grow,fill,sg q]";
        Sheet sheet = new Sheet("fill", quarter + quarter + quarter + quarter, "");
        sheet.add(Lettering.line("Which run", Styles.SECTION), "span, wrap");
        sheet.add(choice("C&ar", "41, engine K03", "K03 since 13 Jun, 12.87 h since rebuild"), "span 2");
        sheet.add(choice("&Event", "Round 6, Thornacre", "from the calendar"), "span 2, wrap");
        sheet.add(choice("R&un", "Practice 1", "first in the timetable"));
        sheet.add(choice("&Driver", "Driver 1", "same as last run"));
        sheet.add(field("Da&te", "Sat 25 Jul 2026", "", "today"));
        sheet.add(field("&Out at", "09:00", "", "timetable"), "wrap");
        sheet.add(Lettering.line("How long and how hard", Styles.SECTION), "span, gaptop 2, wrap");
        time.load("28:20");
        time.echo("= 28 min 20 s, warm-up 7");
        sheet.add(time);
        sheet.add(field("&Laps", "15", "", "at 1:21 that is 20 min"));
        sheet.add(field("Highest &rpm", "8\u2009205", "rpm", "logger, limiter 8\u2009200"));
        FieldBox overs = field("O&ver-revs", "1h7x", "", "");
        overs.stop("Can't read '1h7x'; for example 2, or empty.");
        sheet.add(overs, "wrap");
        sheet.add(Lettering.line("Temperatures and oil", Styles.SECTION), "span, gaptop 2, wrap");
        sheet.add(field("&Water, highest", "82", "\u00b0C", "last run 84"));
        sheet.add(field("O&il, highest", "110", "\u00b0C", "last run 106"));
        FieldBox pressure = field("Oil &pressure, lowest hot", "45", "bar", "");
        pressure.query("Usual 4.3 to 4.8. Meant 4.5?");
        sheet.add(pressure);
        sheet.add(field("Oil a&dded", "0.2", "L", "0.2 L since change"), "wrap");
        NotesBox notes = new NotesBox(Caption.of("An&ything to tell"), 3);
        notes.load("Driver asked about the gears: no missed change. Plugs clean.");
        sheet.add(notes, "span, grow, pushy, wrap");
        sheet.add(
                new JCheckBox("Something broke or stopped the run (opens an incident after saving)"), "span, growx 0");
        return sheet;
    }

    private Sheet side() {
        Sheet sheet = new Sheet("fillx, aligny top", "[]10[0::,grow,fill]10[right]", "");
        sheet.add(Lettering.line("What this run does", Styles.SECTION), "span, wrap");
        sheet.add(
                Lettering.cutLine("K03 goes from 12.87 to 13.34 h. Counts 1 heat cycle.", Styles.NOTE),
                "span, wmin 0, wrap 6");
        part(sheet, SeamState.OVER, "Valve springs VS-03", Life.of(12.87, 0.47, 12), "1.3 h over", "was 0.9 h over");
        part(sheet, SeamState.DUE, "Oil and filter", Life.of(0, 0.47, 3.5), "3.0 h to its limit", "due by race 2");
        part(sheet, SeamState.WITHIN, "Rings", Life.of(13, 0.5, 20), "6.7 h to its limit", "");
        part(sheet, SeamState.WITHIN, "Big-end shells, look", Life.of(5, 0.5, 10), "4.5 h to its limit", "");
        sheet.add(new Hairline(), "span, growx, wrap");
        sheet.add(states.mark(SeamState.NOT_KNOWN, "rods"), "");
        sheet.add(
                Lettering.cutLine("Rods: no crack test since the over-rev of 3 May", Styles.QUIET_INK),
                "span 2, wmin 0, wrap");
        return sheet;
    }

    private void part(Sheet sheet, SeamState state, String what, Life life, String left, String more) {
        sheet.add(new Hairline(), "span, growx, wrap");
        sheet.add(states.mark(state, what), "spany 2, aligny top, gaptop 2");
        sheet.add(Lettering.cutLine(what, Styles.STRONG), "wmin 0");
        sheet.add(Lettering.line(left, state.style()), "wrap");
        sheet.add(new LifeStrip(life, state, what), "w 60:148:148");
        sheet.add(Lettering.line(more.isEmpty() ? " " : more, Styles.NOTE), "wrap 4");
    }

    private static ChoiceBox<String> choice(String caption, String chosen, String note) {
        ChoiceBox<String> box = new ChoiceBox<>(Texts.in(Locale.UK), Caption.of(caption), Function.identity());
        box.load(List.of(chosen, "Another"), chosen);
        box.note(note);
        return box;
    }

    private static FieldBox field(String caption, String text, String unit, String note) {
        FieldBox box = new FieldBox(Caption.of(caption));
        if (!unit.isEmpty()) {
            box.unit(unit);
        }
        box.load(text);
        box.note(note);
        return box;
    }

    @Override
    public PlaceId id() {
        return PlaceId.RUN_SHEET;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return time.field();
    }

    @Override
    public void refresh() {
        page.repaint();
    }
}
