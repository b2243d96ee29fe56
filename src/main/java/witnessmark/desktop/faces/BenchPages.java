package witnessmark.desktop.faces;

import java.awt.CardLayout;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.strip.StripReportPage;
import witnessmark.wording.Texts;

/** The measuring bench with its pages: the build sheet of an engine, the faces of its parts, and what was found at a strip. */
public final class BenchPages implements Place {
    private static final String SHEET = "sheet";
    private static final String FACES = "faces";
    private static final String STRIP = "strip";

    private final Place sheet;
    private final FacesPage faces;
    private final StripReportPage strip;
    private final Texts texts;
    private final CardLayout cards = new CardLayout();
    private final JPanel shown = new JPanel(cards);
    private final JToggleButton toSheet;
    private final JToggleButton toFaces;
    private final JToggleButton toStrip;
    private final Command see;
    private final Command strips;
    private @Nullable JPanel page;
    private String on = SHEET;

    /** @param go goes to the bench */
    public BenchPages(Place sheet, FacesPage faces, StripReportPage strip, Texts texts, Runnable go) {
        this.sheet = sheet;
        this.faces = faces;
        this.strip = strip;
        this.texts = texts;
        this.toSheet = tab("facemap.tab.sheet", SHEET);
        this.toFaces = tab("facemap.tab.faces", FACES);
        this.toStrip = tab("strip.page.tab", STRIP);
        this.see = new Command(texts, "facemap.command.faces", CommandMenu.VIEW, 2, null, () -> {
            turn(FACES);
            go.run();
        });
        this.strips = new Command(texts, "strip.command.report", CommandMenu.VIEW, 2, null, () -> {
            turn(STRIP);
            go.run();
        });
        ButtonGroup one = new ButtonGroup();
        one.add(toSheet);
        one.add(toFaces);
        one.add(toStrip);
        toSheet.setSelected(true);
    }

    private JToggleButton tab(String key, String card) {
        JToggleButton button = Lettering.plain(new JToggleButton(texts.get(key)));
        button.putClientProperty("JButton.buttonType", "tab");
        button.addActionListener(e -> {
            turn(card);
            refresh();
        });
        return button;
    }

    @Override
    public PlaceId id() {
        return sheet.id();
    }

    @Override
    public JComponent component() {
        JPanel made = page;
        if (made == null) {
            made = new JPanel(new FormLayout("insets 0, gap 4 2, fill", "[][][][0::,grow]", "[]2[grow,fill]"));
            made.setOpaque(false);
            shown.setOpaque(false);
            shown.add(sheet.component(), SHEET);
            shown.add(faces.component(), FACES);
            shown.add(strip.component(), STRIP);
            made.add(toSheet);
            made.add(toFaces);
            made.add(toStrip, "wrap");
            made.add(shown, "span, grow, w 0:0:, h 0:0:");
            page = made;
            turn(on);
        }
        return made;
    }

    private void turn(String card) {
        on = card;
        (card.equals(FACES) ? toFaces : card.equals(STRIP) ? toStrip : toSheet).setSelected(true);
        cards.show(shown, card);
    }

    @Override
    public JComponent firstFocus() {
        return switch (on) {
            case FACES -> faces.firstFocus();
            case STRIP -> strip.firstFocus();
            default -> sheet.firstFocus();
        };
    }

    @Override
    public void refresh() {
        switch (on) {
            case FACES -> faces.refresh();
            case STRIP -> strip.refresh();
            default -> sheet.refresh();
        }
    }

    @Override
    public void recount() {
        sheet.recount();
    }

    @Override
    public void again() {
        sheet.again();
    }

    @Override
    public void open() {
        if (on.equals(SHEET)) {
            sheet.open();
        }
    }

    /** A head, gasket or block by its faces; anything else by the build sheet. */
    @Override
    public void open(String record) {
        boolean face = faces.has(record);
        turn(face ? FACES : SHEET);
        if (face) {
            faces.open(record);
        } else {
            sheet.open(record);
        }
    }

    @Override
    public List<String> help() {
        return switch (on) {
            case FACES -> List.of("help.faces");
            case STRIP -> List.of("help.strip");
            default -> sheet.help();
        };
    }

    @Override
    public List<Command> commands() {
        return Stream.concat(sheet.commands().stream(), Stream.of(strips, see)).toList();
    }
}
