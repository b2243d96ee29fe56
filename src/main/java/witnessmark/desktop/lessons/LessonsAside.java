package witnessmark.desktop.lessons;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.Command;
import witnessmark.desktop.shell.CommandMenu;
import witnessmark.desktop.task.Latest;
import witnessmark.logbook.View;
import witnessmark.logbook.lessons.SeeLessons;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** The page of all lessons, in the place of an engine: reads them off the event thread and shows them. */
public final class LessonsAside implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(LessonsAside.class);

    private final Texts texts;
    private final Supplier<View> view;
    private final LessonsAsked asked;
    private final LessonsModel model;
    private final Latest reading;
    private final LessonsPanel panel;

    /** @param view the logbook as of the day looked at; asked off the event thread */
    public LessonsAside(SheetTools tools, Measures measures, Supplier<View> view, LessonsAsked asked) {
        this.texts = tools.texts();
        this.view = view;
        this.asked = asked;
        this.model = new LessonsModel(texts, measures);
        this.reading = new Latest(tools.tasks());
        this.panel = new LessonsPanel(texts, asked);
        FormKeys.bindWithin(panel, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", asked.leave());
    }

    /** What leads to it from the menus. */
    public Command command() {
        return new Command(texts, "lessons.command.show", CommandMenu.VIEW, 2, null, this::open);
    }

    /** Puts it up. */
    public void open() {
        asked.show().accept(this);
        read();
    }

    @Override
    public String heading() {
        return texts.get("lessons.page.heading");
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        return panel.firstFocus();
    }

    @Override
    public List<String> help() {
        return List.of("help.lessons");
    }

    @Override
    public void changed() {
        read();
    }

    private void read() {
        reading.run(
                texts.get("lessons.page.reading"),
                () -> {
                    View now = view.get();
                    return model.lines(now, SeeLessons.all(now));
                },
                panel::show,
                this::failed);
    }

    private void failed(Throwable failure) {
        LOG.error("the lessons could not be put together", failure);
        panel.failed(
                texts.get("lessons.page.failed"),
                Buttons.plain(Caption.of(texts.get("lessons.page.again")), this::read));
    }
}
