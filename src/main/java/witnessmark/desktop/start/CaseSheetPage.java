package witnessmark.desktop.start;

import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.logbook.sharing.WriteCaseSheet;
import witnessmark.wording.Texts;

/** What of an incident goes to somebody outside: the typed words as they would stand on the sheet, to be read before. */
final class CaseSheetPage implements Aside {
    private final Texts texts;
    /** The choices are whole; what gives way where there is little room is what scrolls. */
    private final JPanel page =
            new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[shrink 0]8[0::,grow,fill]"));

    private final JCheckBox words;
    private final JCheckBox photos;
    private final JButton write;
    private final ChoiceBox<Entry<Incident>> which;
    private boolean leaving;

    /**
     * What stands on the sheet as somebody typed it, names taken out.
     *
     * @param always what is on it whatever is ticked: its causes as they are called
     * @param wanted what is on it when words are ticked
     */
    record Typed(List<String> always, List<String> wanted) {
        Typed {
            always = List.copyOf(always);
            wanted = List.copyOf(wanted);
        }
    }

    /** What the page leads to. */
    interface Asked {
        /** Of another incident instead, with the same ticks. */
        void another(WriteCaseSheet.Asked instead);

        void out(WriteCaseSheet.Asked asked);

        void leave();
    }

    /**
     * @param all every incident there is
     * @param incident the one to be shared
     * @param typed what would stand on the sheet
     * @param ticked whether words and photos go along
     */
    CaseSheetPage(
            Texts texts,
            List<Entry<Incident>> all,
            Entry<Incident> incident,
            Typed typed,
            WriteCaseSheet.Asked ticked,
            Asked asked) {
        this.texts = texts;
        this.which = new ChoiceBox<>(
                texts,
                Caption.of(texts.get("casesheet.which")),
                each -> texts.get(
                        "casesheet.incident", each.fact().mark(), each.fact().title()));
        which.load(all, incident);
        which.combo().putClientProperty("JComboBox.isTableCellEditor", Boolean.TRUE); // going through them picks none
        this.words = Buttons.tick(Caption.of(texts.get("casesheet.words")), now -> {});
        this.photos = Buttons.tick(Caption.of(texts.get("casesheet.photos")), now -> {});
        words.setSelected(ticked.words());
        photos.setSelected(ticked.photos());
        which.onChange(() -> {
            Entry<Incident> chosen = which.chosen();
            leaving = false;
            if (chosen != null && !chosen.id().equals(incident.id())) {
                leaving = true; // until the other is read, neither is the one to be written
                asked.another(new WriteCaseSheet.Asked(chosen.id(), words.isSelected(), photos.isSelected()));
            }
        });
        Runnable writes =
                () -> out(asked, new WriteCaseSheet.Asked(incident.id(), words.isSelected(), photos.isSelected()));
        this.write = Styles.as(Styles.MAIN, Buttons.plain(Caption.of(texts.get("casesheet.write")), writes));
        page.setOpaque(false);
        page.add(choices(asked::leave), "growx, wmin 0, wrap");
        ScrollPage scroll = new ScrollPage(read(typed));
        page.add(scroll, "grow");
        scroll.fromTop();
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", asked::leave);
        FormKeys.bindWithin(page, Keys.menu(KeyEvent.VK_ENTER), "wm-write", writes);
    }

    /** Stays in sight while the words are read. */
    private Sheet choices(Runnable leave) {
        Sheet sheet = new Sheet("fillx, hidemode 3, wrap", "[0::,grow,fill]", "");
        sheet.add(which, "growx, wmin 0, wmax 560");
        sheet.add(Lettering.paragraph(texts.get("casesheet.always"), Styles.FIELD_LABEL), "growx, wmin 0");
        sheet.add(photos, "growx 0, gaptop 6");
        sheet.add(words, "growx 0");
        sheet.add(Lettering.paragraph(texts.get("casesheet.words.note"), Styles.NOTE), "growx, wmin 0, gapleft 22");
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 8, alignx right"));
        foot.setOpaque(false);
        foot.add(Buttons.plain(Caption.of(texts.get("casesheet.leave")), leave));
        foot.add(write);
        sheet.add(foot, "growx, gaptop 4");
        return sheet;
    }

    /** What goes in any case first, as no tick keeps it back. */
    private JPanel read(Typed typed) {
        JPanel both = new JPanel(new FormLayout("insets 0, fillx, wrap", "[0::,grow,fill]", "[]8[]"));
        both.setOpaque(false);
        if (!typed.always().isEmpty()) {
            Sheet always = block("casesheet.typed.always");
            always.add(Lettering.paragraph(texts.get("casesheet.typed.always.note"), Styles.NOTE), "growx, wmin 0");
            lines(always, typed.always());
            both.add(always, "growx, wmin 0");
        }
        Sheet wanted = block("casesheet.typed.wanted");
        if (typed.wanted().isEmpty()) {
            wanted.add(Lettering.paragraph(texts.get("casesheet.nothing"), Styles.QUIET_INK), "growx, wmin 0");
        }
        lines(wanted, typed.wanted());
        both.add(wanted, "growx, wmin 0");
        return both;
    }

    private Sheet block(String heading) {
        Sheet sheet = new Sheet("fillx, hidemode 3, wrap", "[0::,grow,fill]", "");
        sheet.add(Lettering.paragraph(texts.get(heading), Styles.SECTION), "growx, wmin 0");
        return sheet;
    }

    private static void lines(Sheet sheet, List<String> typed) {
        typed.forEach(text -> sheet.add(Lettering.paragraph(text, Styles.FIELD_LABEL), "growx, wmin 0, gaptop 3"));
    }

    private void out(Asked asked, WriteCaseSheet.Asked what) {
        if (!leaving) {
            asked.out(what);
        }
    }

    ChoiceBox<Entry<Incident>> which() {
        return which;
    }

    @Override
    public String heading() {
        return texts.get("casesheet.page");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return photos;
    }

    @Override
    public List<String> help() {
        return List.of("help.casesheet");
    }
}
