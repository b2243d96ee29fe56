package witnessmark.desktop.shell.gallery;

import java.util.List;
import witnessmark.desktop.shell.AboutFacts;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.Look;
import witnessmark.desktop.shell.Place;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.shell.ShellPane;
import witnessmark.desktop.task.Tasks;
import witnessmark.desktop.testing.MemorySettings;
import witnessmark.wording.Texts;

/** A whole window of invented places. */
public final class Gallery implements AutoCloseable {
    public final Texts texts;
    public final Desk desk = new Desk();
    public final Tasks tasks = new Tasks((thread, failure) -> {
        throw new IllegalStateException(failure);
    });
    public final ShellContext context;
    public final GalleryBoard board;
    public final GallerySheet sheet;
    public final GalleryList list;
    public final ShellPane pane;

    public Gallery(Look look, Texts texts) {
        this.texts = texts;
        AboutFacts about =
                new AboutFacts("0.1.0", List.of(new AboutFacts.Kept("Logbook", "/home/team/season.witness")));
        context = new ShellContext(texts, tasks, new MemorySettings(), look, desk, about, () -> {});
        board = new GalleryBoard(texts);
        sheet = new GallerySheet(texts);
        list = new GalleryList(texts);
        pane = new ShellPane(context, places(), List.of(), List.of());
        pane.logbook("Marrowgate, sample season");
        desk.heading(PlaceId.BEFORE_WE_GO, "Wed 8 Jul 2026");
        desk.heading(PlaceId.RUN_SHEET, "new run");
        desk.waiting(PlaceId.BEFORE_WE_GO, 3);
        desk.draft(PlaceId.RUN_SHEET, true);
        desk.say("Saved 21:58");
        pane.logbook("Marrowgate, sample season");
        desk.go(PlaceId.BEFORE_WE_GO);
    }

    public List<Place> places() {
        return List.of(board, sheet, list);
    }

    @Override
    public void close() {
        tasks.close();
    }
}
