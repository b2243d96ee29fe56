package witnessmark.desktop.shell.gallery;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import witnessmark.desktop.form.BoardLine;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.LifeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SideBySide;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.wording.Texts;

/** An invented first place: board, marks, strips and buttons as they stand together. */
public final class GalleryBoard implements Place {
    private final StateWords states;
    private final JPanel page =
            new JPanel(new FormLayout("insets 0, gap 14, fill", "[0::,grow,fill]", "[][0::,grow,fill]"));
    private final JComponent first;

    public GalleryBoard(Texts texts) {
        states = new StateWords(texts);
        page.setOpaque(false);
        BoardLine board = new BoardLine();
        board.show(
                "3 to be done before we load",
                "Truck leaves Fri 24 Jul, 06:00. Round 6, Thornacre.",
                List.of(
                        new BoardLine.Figure("16", "days"),
                        new BoardLine.Figure("2", "cars"),
                        new BoardLine.Figure("10", "runs planned")));
        page.add(board, "growx, wrap");
        Sheet jobs = jobs();
        first = Buttons.plain(Caption.of("&Log a run"), () -> {});
        JPanel side = new JPanel(new FormLayout("insets 0, gap 16, fillx, wrap", "[0::,grow,fill]"));
        side.setOpaque(false);
        side.add(lastOut(first));
        side.add(stillOpen());
        side.add(new JLabel(), "push");
        page.add(new ScrollPage(new SideBySide(jobs, side, 280, 1000)), "grow, wmin 0");
    }

    private Sheet jobs() {
        Sheet sheet = new Sheet(
                "fillx, aligny top, hidemode 3",
                "[]12[0::,grow 5,fill]16[60:188:188,fill]20[0::,grow 4,fill]12[right]",
                "");
        sheet.add(Lettering.line("Must be done before we go", Styles.SECTION), "span 3");
        sheet.add(Lettering.line("Runs out", Styles.NOTE), "span 2, wrap 4");
        sheet.add(new Hairline(), "span, growx, wrap");
        row(
                sheet,
                SeamState.OVER,
                "Valve springs VS-03",
                "Engine K03, car 41",
                Life.of(12.87, 2.4, 12),
                "12.87 h run, limit 12 h (builder)",
                "0.9 h over now",
                "none on shelf, 8 days away",
                "&Decide");
        row(
                sheet,
                SeamState.NOT_KNOWN,
                "Rods, crack test",
                "Engine K03, car 41",
                null,
                "9\u2009340 rpm on 3 May, 5.0 h ago",
                "Not looked at",
                "can wreck the engine",
                "&Write it down");
        sheet.add(Lettering.line("Due while we are there", Styles.SECTION), "span, gaptop 12, wrap 4");
        sheet.add(new Hairline(), "span, growx, wrap");
        row(
                sheet,
                SeamState.DUE,
                "Big-end shells, look",
                "Engine K06, car 57",
                Life.of(6.11, 2.2, 10),
                "6.11 h run, look at 10 h (own)",
                "1.6 h left after",
                "2.2 h a weekend (1.9 to 2.4)",
                "&Plan job");
        sheet.add(states.mark(SeamState.WITHIN, "38 parts"), "gaptop 6");
        sheet.add(
                Lettering.cutLine("38 parts inside their recorded limits; 4 not known", Styles.FIELD_LABEL),
                "span 3, wmin 0");
        sheet.add(Buttons.link(Caption.of("&Show them"), () -> {}), "wrap");
        int at = 0;
        JPanel all = new JPanel(new FormLayout("insets 0, gapx 8"));
        all.setOpaque(false);
        for (SeamState state : SeamState.values()) {
            all.add(states.mark(state, ""));
            all.add(Lettering.line(states.of(state), state.style()), ++at % 4 == 0 ? "wrap" : "gapright 14");
        }
        sheet.add(all, "span, gaptop 14, wrap");
        sheet.add(
                new LifeStrip(Life.of(8, 6, 12), SeamState.DUE, "crosses its limit"),
                "span 2, w 60:188:188, gaptop 10");
        sheet.add(new LifeStrip(Life.of(18, 3, 12), SeamState.OVER, "runs off the scale"), "");
        sheet.add(new LifeStrip(Life.notKnown(), SeamState.NOT_KNOWN, "not known"), "wrap push");
        return sheet;
    }

    private void row(
            Sheet sheet,
            SeamState state,
            String what,
            String where,
            Life life,
            String figures,
            String when,
            String more,
            String verb) {
        sheet.add(states.mark(state, what), "spany 2");
        sheet.add(Lettering.cutLine(what, Styles.ROW_TITLE), "wmin 0");
        if (life != null) {
            sheet.add(new LifeStrip(life, state, figures), "");
        } else {
            sheet.add(Lettering.cutLine(figures, Styles.NOTE), "spany 2, wmin 0");
        }
        sheet.add(Lettering.cutLine(when, state.style()), "wmin 0");
        sheet.add(Buttons.plain(Caption.of(verb), () -> {}), "spany 2, wrap");
        sheet.add(Lettering.cutLine(where, Styles.NOTE), "wmin 0");
        if (life != null) {
            sheet.add(Lettering.cutLine(figures, Styles.ECHO), "wmin 0");
        }
        sheet.add(Lettering.cutLine(more, Styles.NOTE), "wmin 0, wrap");
        sheet.add(new Hairline(), "span, growx, gaptop 2, wrap");
    }

    private static Sheet lastOut(JComponent button) {
        Sheet sheet = new Sheet("[0::,grow,fill]");
        sheet.add(Lettering.line("Last out", Styles.SECTION), "wrap 6");
        sheet.add(Lettering.line("Car 41, engine K03", Styles.STRONG), "wrap");
        sheet.add(Lettering.line("Sun 5 Jul, race 2: 27.7 min, 12 laps", Styles.NOTE), "wrap");
        sheet.add(Lettering.line("Max 8\u2009230 rpm, water 84 \u00b0C", Styles.NOTE), "wrap 8");
        sheet.add(new Hairline(), "growx, wrap 8");
        sheet.add(Lettering.line("Car 57, engine K06", Styles.STRONG), "wrap");
        sheet.add(Lettering.line("Sun 5 Jul, race 2: 27.6 min, 12 laps", Styles.NOTE), "wrap 8");
        sheet.add(button, "growx");
        return sheet;
    }

    private static Sheet stillOpen() {
        Sheet sheet = new Sheet("[0::,grow,fill]");
        sheet.add(Lettering.line("Still open", Styles.SECTION), "wrap 6");
        JLabel line = Lettering.line("Big end no. 3, engine K05", Styles.STRONG);
        sheet.add(line, "wrap");
        sheet.add(Lettering.line("14 Jun, came back after 6.38 h", Styles.NOTE), "wrap");
        return sheet;
    }

    @Override
    public PlaceId id() {
        return PlaceId.BEFORE_WE_GO;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return first;
    }

    @Override
    public void refresh() {
        page.repaint();
    }
}
