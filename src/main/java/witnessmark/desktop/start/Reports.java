package witnessmark.desktop.start;

import java.util.List;
import javax.swing.JButton;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.beforewego.BeforeWeGoPlace;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.outcome.Problem;
import witnessmark.wording.Texts;

/** Tells how something went: in the status strip, or on a page of its own when there is more than a sentence. */
final class Reports {
    private static final Logger LOG = LoggerFactory.getLogger(Reports.class);

    private final StartContext context;
    private final BeforeWeGoPlace place;
    private final ReportModel model;

    Reports(StartContext context, BeforeWeGoPlace place) {
        this.context = context;
        this.place = place;
        this.model = new ReportModel(context.texts(), context.problems(), context.measures());
    }

    /** Runs the listener whenever another day is looked at: the story was walked on, or a step of it taken back. */
    void onDay(Runnable listener) {
        place.onDay(day -> listener.run());
    }

    ReportModel model() {
        return model;
    }

    Texts texts() {
        return context.texts();
    }

    void say(String key, Object... blanks) {
        context.window().say(texts().get(key, blanks));
    }

    /** Says what was done and offers to take it back. */
    void sayUndoable(String key, Object... blanks) {
        context.window().say(texts().get(key, blanks), Caption.of(texts().get("beforewego.undo")), context.undo());
    }

    /** Says why it did not work: one reason in the strip, several on a page. */
    void refused(String title, List<Problem> problems) {
        if (problems.size() == 1) {
            context.window().say(context.problems().sentence(problems.get(0)));
            return;
        }
        show(
                new ReportPage.Content(title, List.of(texts().get("beforewego.report.nothing")), model.lines(problems)),
                List.of(closing()));
    }

    /** Something nobody foresaw. */
    void failed(Throwable failure) {
        LOG.error("something about the logbook as a whole did not work", failure);
        say("beforewego.start.failed");
    }

    void show(ReportPage.Content content, List<JButton> ways) {
        show(new ReportPage(
                new SheetTools(texts(), context.tasks(), context.settings()), content, ways, this::dismiss));
    }

    void show(Aside page) {
        place.stepAside(page);
    }

    void dismiss() {
        place.dismiss();
    }

    JButton closing() {
        return way("beforewego.report.close", this::dismiss);
    }

    JButton way(String key, Runnable work) {
        return Buttons.plain(Caption.of(texts().get(key)), work);
    }

    JButton main(String key, Runnable work) {
        return Styles.as(Styles.MAIN, way(key, work));
    }
}
