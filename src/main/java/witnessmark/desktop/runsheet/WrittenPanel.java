package witnessmark.desktop.runsheet;

import java.awt.CardLayout;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FootGivesWay;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.logbook.run.RunDoes;
import witnessmark.logbook.run.RunField;
import witnessmark.wording.Texts;

/** The page of one written run: who wrote it, the same sheet as for a new one, and what can be done with it. */
final class WrittenPanel extends JPanel implements SheetView {
    private static final String SHEET = "sheet";
    private static final String HISTORY = "history";

    private final transient RunSheetModel model;
    private final transient WrittenActions actions;
    private final transient RunWords words;
    private final transient Texts texts;
    private final RunSheetForm form;
    private final DoesPanel does;
    private final SheetBeside page;
    private final FieldBox why;
    private final RunHistory history;
    private final CardLayout cards = new CardLayout();
    private final JPanel body = new JPanel(cards);
    private final NoticeStrip strip = new NoticeStrip();
    private final TraceRows traces;
    private final FormFoot foot;
    private final transient FootGivesWay way;
    private final ReasonRow asking;
    private final JButton strike;
    private final JButton restore;
    private final JButton historyButton;
    private final JButton job;
    private final JButton putBack;
    private final JButton save;
    private transient Optional<RunDoes> shown = Optional.empty();

    /**
     * @param traces what loggers wrote of the run
     * @param planJob plans a job of what was told
     * @param fresh goes to the sheet for a new run
     * @param leave what Esc does
     */
    WrittenPanel(
            RunSheetModel model,
            WrittenActions actions,
            RunWords words,
            TraceRows traces,
            Runnable planJob,
            Runnable fresh,
            Runnable leave) {
        super(new FormLayout(
                "insets 0, gap 0, fill, hidemode 3",
                "[0::,grow,fill]",
                "[0::,grow,fill]8[shrink 0]4[shrink 0]8[shrink 0][shrink 0]"));
        setOpaque(false);
        this.model = model;
        this.actions = actions;
        this.words = words;
        this.traces = traces;
        this.texts = words.texts();
        this.why = new FieldBox(Caption.of(texts.get("runsheet.written.because")));
        this.form = new RunSheetForm(model, words, why);
        this.does = new DoesPanel(words, "");
        this.page = new SheetBeside(form, does);
        this.strike = button("runsheet.written.strike", this::askReason);
        this.restore = button("runsheet.written.restore", () -> act(actions::restore));
        this.historyButton = button("runsheet.written.history", this::showHistory);
        this.job = button("runsheet.written.job", planJob);
        this.history = new RunHistory(texts, this::backFromHistory);
        this.putBack = button("runsheet.written.putBack", actions::putBack);
        this.save = Buttons.main(
                Caption.of(texts.get("runsheet.written.save")), Keys.menu(KeyEvent.VK_ENTER), actions::save);
        this.foot = new FormFoot(
                List.of(button("runsheet.written.fresh", fresh), strike, restore, historyButton, job, putBack, save));
        this.asking = new ReasonRow(texts, this::strikeOut, this::stopAsking);
        asking.setVisible(false);
        body.setOpaque(false);
        body.add(page, SHEET);
        body.add(history, HISTORY);
        add(body, "grow, w 0:0:, wrap");
        add(strip, "growx, wrap");
        add(traces, "growx, wmin 0, wrap");
        add(foot, "growx, wrap");
        this.way = new FootGivesWay(this, page::end, foot, "growx, wrap");
        add(asking, "growx");
        askWhy();
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_ENTER), "wm-save", actions::save);
        FormKeys.bindWithin(this, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", leave);
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_Z), "wm-put-back", model::canPutBack, actions::notPutBack);
        form.onLeave(field -> actions.left());
        model.onChange(this::showModel);
        actions.onChange(this::showModel);
        showModel();
    }

    RunSheetForm form() {
        return form;
    }

    FieldBox why() {
        return why;
    }

    /** After the fields of the run stands why they are changed: it goes into the history and not into the run. */
    private void askWhy() {
        why.note(texts.get("runsheet.written.because.note"));
        why.onChange(() -> actions.because(why.text()));
        why.onLeave(actions::left);
    }

    JButton historyButton() {
        return historyButton;
    }

    RunHistory history() {
        return history;
    }

    ReasonRow asking() {
        return asking;
    }

    /** What the strip says. */
    String said() {
        return strip.sentence();
    }

    void fit() {
        page.fit();
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

    @Override
    public void doLayout() {
        way.fit();
        super.doLayout();
    }

    private JButton button(String key, Runnable work) {
        return Buttons.plain(Caption.of(texts.get(key)), work);
    }

    /** Asks for the reason in place of the buttons. */
    void askReason() {
        foot.setVisible(false);
        asking.setVisible(true);
        revalidate();
        asking.ask();
    }

    private void stopAsking() {
        asking.setVisible(false);
        foot.setVisible(true);
        revalidate();
        strike.requestFocusInWindow();
    }

    private void strikeOut(String because) {
        stopAsking();
        act(() -> actions.strikeOut(because));
    }

    private void showHistory() {
        history.show(actions.named(), actions.history());
        foot.setVisible(false);
        cards.show(body, HISTORY);
        history.takeFocus();
    }

    private void backFromHistory() {
        foot.setVisible(true);
        cards.show(body, SHEET);
        historyButton.requestFocusInWindow();
    }

    /** What was pressed may be gone afterwards: the focus goes back to the sheet. */
    private void act(Runnable work) {
        form.focus(RunField.RUNNING);
        work.run();
    }

    private void showModel() {
        boolean correct = actions.canCorrect();
        traces.refresh(correct);
        form.editable(correct);
        why.field().setEditable(correct);
        if (!why.text().equals(actions.why().typed())) {
            why.load(actions.why().typed());
        }
        String waiting = texts.get(actions.isStruckOut() ? "runsheet.does.nothing" : "runsheet.does.cannot");
        if (!model.does().equals(shown) || shown.isEmpty()) {
            shown = model.does();
            does.waiting(waiting);
            does.show(shown);
        }
        strike.setVisible(correct);
        restore.setVisible(actions.isStruckOut() && !actions.isEarlierDay());
        job.setVisible(correct);
        putBack.setVisible(correct);
        save.setVisible(correct);
        historyButton.setEnabled(!actions.history().isEmpty());
        if (history.isVisible()) {
            history.show(actions.named(), actions.history());
        }
        foot.about(actions.by());
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
        if (actions.isEarlierDay()) {
            sentences.add(texts.get("runsheet.written.earlier", words.measures().date(actions.day())));
        }
        if (actions.isStruckOut()) {
            String because = actions.entry().struckBecause();
            sentences.add(texts.get("runsheet.written.struck", because == null ? "" : because));
        }
        Optional<String> other = actions.perhapsSame();
        other.ifPresent(sentences::add);
        actions.changedMeanwhile().ifPresent(who -> sentences.add(texts.get("runsheet.written.meanwhile", who)));
        model.wholeRun().forEach(problem -> sentences.add(words.sentence(problem)));
        boolean settles = other.isPresent() && actions.canCorrect();
        strip.say(sentences, () -> settles ? settling() : List.of());
    }

    private List<JButton> settling() {
        return List.of(
                button("runsheet.written.same", () -> act(actions::same)),
                button("runsheet.written.another", () -> act(actions::another)));
    }
}
