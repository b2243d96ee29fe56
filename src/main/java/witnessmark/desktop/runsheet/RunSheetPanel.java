package witnessmark.desktop.runsheet;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FootGivesWay;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.logbook.run.RunDoes;
import witnessmark.logbook.run.RunField;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Texts;

/** The page: sheet and forecast side by side, strip and buttons under them. It holds no rule of its own. */
final class RunSheetPanel extends JPanel implements SheetView {
    private final transient RunSheetModel model;
    private final transient RunSheetActions actions;
    private final transient RunWords words;
    private final transient Texts texts;
    private final RunSheetForm form;
    private final DoesPanel does;
    private final SheetBeside page;
    private final NoticeStrip strip = new NoticeStrip();
    private final FormFoot foot;
    private final transient FootGivesWay way;
    private final transient Runnable leave;
    private transient Optional<RunDoes> shown = Optional.empty();

    /** @param leave what Esc does */
    RunSheetPanel(RunSheetModel model, RunSheetActions actions, RunWords words, Runnable leave) {
        super(new FormLayout(
                "insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[0::,grow,fill]8[shrink 0]8[shrink 0]"));
        setOpaque(false);
        this.model = model;
        this.actions = actions;
        this.words = words;
        this.texts = words.texts();
        this.leave = leave;
        this.form = new RunSheetForm(model, words);
        this.does = new DoesPanel(words, texts.get("runsheet.does.waiting"));
        this.page = new SheetBeside(form, does);
        this.foot = new FormFoot(buttons());
        add(page, "grow, wrap");
        add(strip, "growx, wrap");
        add(foot, "growx");
        this.way = new FootGivesWay(this, page::end, foot, "growx");
        bindKeys();
        form.onLeave(field -> actions.left());
        model.onChange(this::showModel);
        actions.onChange(this::showModel);
        showModel();
    }

    RunSheetForm form() {
        return form;
    }

    @Override
    public void focus(RunField field) {
        form.focus(field);
    }

    @Override
    public Optional<RunField> focused() {
        return form.focused();
    }

    @Override
    public void written() {
        form.forgetTyping();
    }

    /** Puts the forecast beside the sheet or under it, as there is room. */
    void fit() {
        page.fit();
    }

    @Override
    public void doLayout() {
        way.fit();
        super.doLayout();
    }

    private List<JButton> buttons() {
        return List.of(
                Buttons.plain(Caption.of(texts.get("runsheet.clear")), actions::clear),
                Buttons.plain(Caption.of(texts.get("runsheet.save_next")), () -> actions.save(true)),
                Buttons.main(
                        Caption.of(texts.get("runsheet.save")),
                        Keys.menu(KeyEvent.VK_ENTER),
                        () -> actions.save(false)));
    }

    private void bindKeys() {
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_ENTER), "wm-save", () -> actions.save(false));
        FormKeys.bindWithin(this, Keys.menuShift(KeyEvent.VK_ENTER), "wm-save-next", () -> actions.save(true));
        FormKeys.bindWithin(this, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", leave);
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_Z), "wm-put-back", model::canPutBack, actions::putBack);
    }

    private void showModel() {
        if (!model.does().equals(shown)) {
            shown = model.does();
            does.show(shown);
        }
        foot.draft(actions.draftLine());
        foot.look(
                texts.get("runsheet.look", model.stopped().size()),
                rest -> texts.get("runsheet.look.rest", rest),
                model.stopped(),
                words::name,
                form::focus);
        showStrip();
    }

    private void showStrip() {
        List<String> sentences = new ArrayList<>();
        sentences.add(actions.failure());
        boolean asks = asksAboutChange();
        if (asks) {
            sentences.add(words.inFull(model.line(RunField.OUT_AT)));
        }
        actions.wholeRun().forEach(problem -> sentences.add(words.sentence(problem)));
        actions.goesWith().ifPresent(name -> sentences.add(texts.get("runsheet.with", name)));
        sentences.add(actions.waiting());
        strip.say(sentences, () -> asks ? changeButtons() : moreButtons());
    }

    private boolean asksAboutChange() {
        var problem = model.line(RunField.OUT_AT).problem();
        return problem != null && problem.kind() == ProblemKind.BEFORE_OR_AFTER_CHANGE;
    }

    private List<JButton> moreButtons() {
        List<JButton> more = new ArrayList<>();
        if (actions.goesWith().isPresent()) {
            more.add(Buttons.plain(Caption.of(texts.get("runsheet.with.alone")), () -> {
                form.focus(model.firstEmpty());
                actions.alone();
            }));
        }
        if (!actions.waiting().isEmpty()) {
            more.add(Buttons.plain(Caption.of(texts.get("runsheet.waiting.open")), actions::openWaiting));
        }
        return more;
    }

    private List<JButton> changeButtons() {
        return List.of(
                Buttons.plain(Caption.of(texts.get("runsheet.before_change")), () -> aroundChange("before")),
                Buttons.plain(Caption.of(texts.get("runsheet.after_change")), () -> aroundChange("after")));
    }

    private void aroundChange(String word) {
        model.type(RunField.OUT_AT, word);
        model.leave(RunField.OUT_AT);
        form.focus(model.firstEmpty());
    }
}
