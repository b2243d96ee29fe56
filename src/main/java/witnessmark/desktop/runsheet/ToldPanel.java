package witnessmark.desktop.runsheet;

import java.awt.event.KeyEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FootGivesWay;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.LabelledBox;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.ledger.result.LifeChange;
import witnessmark.logbook.told.ToldField;
import witnessmark.wording.Texts;

/** The form for running told by others: who says so, how he knows, and between which hours it lies. */
final class ToldPanel extends JPanel {
    private final transient ToldModel model;
    private final transient ToldActions actions;
    private final transient ToldWords words;
    private final transient Texts texts;
    private final transient Runnable leave;
    private final Map<ToldField, LabelledBox> boxes = new EnumMap<>(ToldField.class);
    private final ChoiceBox<Entry<Engine>> engine;
    private final JTextArea life = Lettering.paragraph("", Styles.ECHO);
    private final NoticeStrip strip = new NoticeStrip();
    private final FormFoot foot;
    private final transient FootGivesWay way;
    private boolean showing;

    /** @param leave what Esc and the back button do, and saving when it worked */
    ToldPanel(ToldModel model, ToldActions actions, ToldWords words, Runnable leave) {
        super(new FormLayout(
                "insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[0::,grow,fill]8[shrink 0]8[shrink 0]"));
        setOpaque(false);
        this.model = model;
        this.actions = actions;
        this.words = words;
        this.texts = words.texts();
        this.leave = leave;
        this.engine = new ChoiceBox<>(texts, Caption.of(words.label(ToldField.ENGINE)), words::engine);
        for (ToldField field : ToldField.values()) {
            boxes.put(field, field == ToldField.ENGINE ? engineBox() : fieldBox(field));
        }
        this.foot = new FormFoot(buttons());
        ScrollPage scroll = new ScrollPage(sheet());
        add(scroll, "grow, wrap");
        add(strip, "growx, wrap");
        add(foot, "growx");
        this.way = new FootGivesWay(this, scroll::end, foot, "growx");
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_ENTER), "wm-save", this::save);
        FormKeys.bindWithin(this, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", leave);
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_Z), "wm-put-back", model::canPutBack, this::putBack);
        model.onChange(this::showModel);
        actions.onChange(this::showModel);
        showModel();
    }

    JComponent input(ToldField field) {
        return (JComponent) Objects.requireNonNull(box(field).label().getLabelFor());
    }

    LabelledBox box(ToldField field) {
        return Objects.requireNonNull(boxes.get(field));
    }

    @Override
    public void doLayout() {
        way.fit();
        super.doLayout();
    }

    private Sheet sheet() {
        Sheet sheet = new Sheet("fillx", "[0:120:,grow,fill,sg t]".repeat(3), "");
        sheet.add(Lettering.line(texts.get("runsheet.told.heading"), Styles.SECTION), "span, wrap");
        sheet.add(Lettering.paragraph(texts.get("runsheet.told.about"), Styles.NOTE), "span, growx, wmin 0, wrap");
        sheet.add(box(ToldField.ENGINE));
        sheet.add(box(ToldField.FROM));
        sheet.add(box(ToldField.TO), "wrap");
        sheet.add(box(ToldField.LIKELY));
        sheet.add(box(ToldField.LOWEST));
        sheet.add(box(ToldField.HIGHEST), "wrap");
        sheet.add(box(ToldField.TOLD_BY));
        sheet.add(box(ToldField.HOW), "span 2, wrap");
        sheet.add(Lettering.line(texts.get("runsheet.told.adds"), Styles.SECTION), "span, wrap, gaptop 8");
        sheet.add(life, "span, growx, wmin 0");
        return sheet;
    }

    private LabelledBox engineBox() {
        engine.onChange(() -> {
            Entry<Engine> chosen = engine.chosen();
            typed(ToldField.ENGINE, chosen == null ? "" : chosen.id().text());
        });
        FormKeys.enterMovesOn(engine.combo());
        return engine;
    }

    private FieldBox fieldBox(ToldField field) {
        FieldBox box = new FieldBox(Caption.of(words.label(field)));
        if (field.hours()) {
            box.unit(texts.get("runsheet.unit.hours"));
        }
        box.onChange(() -> typed(field, box.text()));
        box.onLeave(() -> {
            model.leave(field);
            actions.left();
        });
        return box;
    }

    private List<JButton> buttons() {
        return List.of(
                Buttons.plain(Caption.of(texts.get("runsheet.told.back")), leave),
                Buttons.plain(Caption.of(texts.get("runsheet.told.clear")), this::clear),
                Buttons.main(Caption.of(texts.get("runsheet.told.save")), Keys.menu(KeyEvent.VK_ENTER), this::save));
    }

    private void clear() {
        actions.clear(this::lookAtFirst);
        lookAtFirst();
    }

    private void putBack() {
        actions.putBack(this::lookAtFirst);
    }

    private void lookAtFirst() {
        box(model.firstEmpty()).takeFocus();
    }

    private void save() {
        actions.save(field -> box(field).takeFocus(), leave);
    }

    private void typed(ToldField field, String now) {
        if (!showing) {
            model.type(field, now);
        }
    }

    private void showModel() {
        showing = true;
        showEngines();
        for (ToldField field : ToldField.values()) {
            LabelledBox box = box(field);
            if (box instanceof FieldBox typed && !typed.text().equals(model.text(field))) {
                typed.load(model.text(field));
            }
            SayLine.on(box, model.line(field), words::line, words::inFull);
        }
        showing = false;
        showLife();
        foot.draft(actions.draftLine());
        List<ToldField> stopped = model.stopped();
        foot.look(
                texts.get("runsheet.look", stopped.size()),
                rest -> texts.get("runsheet.look.rest", rest),
                stopped,
                words::label,
                field -> box(field).takeFocus());
        strip.say(List.of(actions.failure()), List::of);
    }

    private void showEngines() {
        List<Entry<Engine>> engines = model.engines();
        Entry<Engine> chosen = engines.stream()
                .filter(entry -> entry.id().text().equals(model.text(ToldField.ENGINE)))
                .findFirst()
                .orElse(null);
        if (engine.combo().getItemCount() != engines.size() || !Objects.equals(engine.chosen(), chosen)) {
            engine.load(engines, chosen);
        }
    }

    private void showLife() {
        Entry<Engine> chosen = engine.chosen();
        String said = model.life()
                .map(LifeChange::after)
                .filter(after -> chosen != null)
                .map(after -> words.life(chosen == null ? "" : chosen.fact().number(), after))
                .orElse(texts.get("runsheet.told.waiting"));
        life.setText(said);
        life.getAccessibleContext().setAccessibleName(said);
    }
}
