package witnessmark.desktop.start;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.logbook.SampleSeason;
import witnessmark.logbook.port.Story;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;

/** The quiet strip over the sample season: begin an own logbook, begin the sample again, walk on in its story. */
public final class SampleStrip {
    /** Among the settings: the chapter up to which the story is told at once, after a reset. */
    private static final String FOLLOW = "sample.follow";

    /** Among the settings: whether the reader goes on without the story. */
    private static final String ALONE = "sample.alone";

    private final StartContext context;
    private final Reports reports;
    private final SampleSeason sample;
    private final Path folder;
    private final Runnable startOwn;

    /**
     * @param folder the sample's season folder
     * @param startOwn shows the page that begins an own logbook
     */
    SampleStrip(StartContext context, Reports reports, SampleSeason sample, Path folder, Runnable startOwn) {
        this.context = context;
        this.reports = reports;
        this.sample = sample;
        this.folder = folder;
        this.startOwn = startOwn;
        reports.onDay(this::show);
    }

    /** Reads which chapter comes next and shows the strip; tells on where a reset left a story to follow. */
    public void show() {
        context.tasks()
                .run(
                        reports.texts().get("beforewego.sample.reading"),
                        () -> sample.nextChapter(folder),
                        this::shown,
                        failure -> shown(Optional.empty()));
    }

    private void shown(Optional<Story.Chapter> next) {
        if (!context.logbook().day().equals(context.logbook().today().day())) {
            return; // the strip says which day is looked at, and leads back
        }
        boolean follows = !setting(FOLLOW).isEmpty();
        if (follows && next.isPresent()) {
            walkOn(next.get());
            return;
        }
        if (follows) {
            context.settings().put(FOLLOW, "");
        }
        Optional<Path> kept = sample.kept();
        if (kept.isPresent()) {
            sayWhereOwnIs(kept.get(), next);
            return;
        }
        List<JButton> ways = new ArrayList<>();
        ways.add(reports.way("beforewego.sample.startOwn", startOwn));
        ways.add(reports.way("beforewego.sample.reset", this::askReset));
        boolean alone = setting(ALONE).equals("true");
        next.filter(chapter -> !alone).ifPresent(chapter -> ways.add(walkButton(chapter)));
        context.window().notice(reports.texts().get("beforewego.sample"), ways);
    }

    /** After a reset, until it is read: what somebody wrote before is not gone. */
    private void sayWhereOwnIs(Path backup, Optional<Story.Chapter> next) {
        JButton seen = reports.way("beforewego.sample.seen", () -> {
            sample.keptSeen();
            shown(next);
        });
        context.window().notice(reports.texts().get("beforewego.sample.kept", backup), List.of(seen));
    }

    private JButton walkButton(Story.Chapter chapter) {
        JButton button = reports.way("beforewego.sample.walk", () -> walkOn(chapter));
        button.setText(reports.texts().get("beforewego.sample.walkTo", chapter.name()));
        return button;
    }

    /** Undo cannot bring the working copy back, so this asks, in the strip itself; the safe answer has the focus. */
    private void askReset() {
        JButton keep = reports.way("beforewego.sample.keep", this::show);
        JButton reset = reports.way("beforewego.sample.reset", () -> reset(""));
        FormKeys.bind(keep, Keys.plain(KeyEvent.VK_ESCAPE), "wm-keep", this::show);
        FormKeys.bind(reset, Keys.plain(KeyEvent.VK_ESCAPE), "wm-keep", this::show);
        context.window().notice(reports.texts().get("beforewego.sample.resetAsk"), List.of(keep, reset));
        keep.requestFocusInWindow();
    }

    private void reset(String follow) {
        context.settings().put(ALONE, "");
        context.settings().put(FOLLOW, follow);
        context.opening().resetSample();
    }

    /** Walks on to the next chapter, as the button of the strip does, whether the strip is up or not. */
    void walkOn() {
        if (!context.logbook().day().equals(context.logbook().today().day())) {
            reports.say("beforewego.sample.another");
            return;
        }
        context.tasks()
                .run(
                        reports.texts().get("beforewego.sample.reading"),
                        () -> sample.nextChapter(folder),
                        next -> next.ifPresentOrElse(this::walkOn, () -> reports.say("beforewego.sample.told")),
                        reports::failed);
    }

    private void walkOn(Story.Chapter chapter) {
        reports.say("beforewego.sample.walking", chapter.name());
        context.tasks()
                .write(
                        reports.texts().get("beforewego.sample.walking", chapter.name()),
                        () -> sample.walkOn(
                                context.logbook(),
                                chapter,
                                reports.texts().get("beforewego.sample.why", chapter.name())),
                        outcome -> walked(chapter, outcome),
                        reports::failed);
    }

    private void walked(Story.Chapter chapter, Outcome<Written> outcome) {
        if (!outcome.didWork()) {
            context.settings().put(FOLLOW, "");
            show();
            differs(chapter, outcome);
            return;
        }
        if (setting(FOLLOW).equals(chapter.name())) {
            context.settings().put(FOLLOW, "");
        }
        context.window().changed();
        reports.sayUndoable(
                "beforewego.sample.walked", chapter.name(), context.measures().date(chapter.today()));
        show();
    }

    /** The reader's own entries contradict the story: it says where, and offers both ways out; nothing is lost by Enter. */
    private void differs(Story.Chapter chapter, Outcome<Written> outcome) {
        reports.show(
                new ReportPage.Content(
                        reports.texts().get("beforewego.sample.differs"),
                        List.of(reports.texts().get("beforewego.sample.differs.note", chapter.name())),
                        reports.model().lines(outcome.problems())),
                List.of(
                        reports.way("beforewego.sample.follow", () -> {
                            reports.dismiss();
                            reset(chapter.name());
                        }),
                        reports.way("beforewego.sample.alone", () -> {
                            context.settings().put(ALONE, "true");
                            reports.dismiss();
                            show();
                        }),
                        reports.main("beforewego.sample.notNow", reports::dismiss)));
    }

    private String setting(String key) {
        return context.settings().get(key).orElse("");
    }
}
