package witnessmark.launch;

import java.awt.Window;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.engines.EnginePage;
import witnessmark.desktop.engines.EnginesPlace;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.incidents.IncidentsPlace;
import witnessmark.desktop.photos.PhotoStrip;
import witnessmark.desktop.photos.PhotoWatch;
import witnessmark.desktop.photos.Photographs;
import witnessmark.desktop.photos.PhotosContext;
import witnessmark.desktop.runsheet.UndoActions;
import witnessmark.desktop.sheets.Sheets;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.shell.ShellContext;
import witnessmark.desktop.start.Choosing;
import witnessmark.desktop.start.Start;
import witnessmark.desktop.strip.StripReportPage;
import witnessmark.domain.Id;
import witnessmark.logbook.photos.KeepPhotos;
import witnessmark.logbook.photos.WatchedPhotos;
import witnessmark.wording.Measures;

/** Photos on the pages of incidents, engines and parts; their own pages stand in the first place, as sheets do. */
final class PhotoPages {
    private final Desk window;
    private final Photographs photographs;
    private final PhotoWatch watch;

    PhotoPages(
            ShellContext shell,
            Measures measures,
            OpenBook book,
            Outside outside,
            Choosing choosing,
            UndoActions undo,
            Sheets sheets,
            Start start) {
        this.window = shell.desk();
        Path home = Path.of(System.getProperty("user.home"));
        this.watch = new PhotoWatch(
                shell.texts(), shell.tasks(), new WatchedPhotos(book.desk(), shell.settings(), outside.traces()));
        this.photographs = new Photographs(new PhotosContext(
                book.desk(),
                new KeepPhotos(book.desk(), outside.ids()),
                shell.desk(),
                new SheetTools(shell.texts(), shell.tasks(), shell.settings()),
                measures,
                watch,
                choosing::photosFolder,
                choosing::photosToRead,
                name -> choosing.photoToWrite(home.resolve(name)),
                new PhotosContext.Asked(
                        start.place()::stepAside, start.place()::dismiss, sheets::correct, undo::undo)));
    }

    /** Puts photos on the pages. */
    void on(IncidentsPlace incidents, EnginesPlace engines) {
        incidents.with(photographs.strip(PhotoStrip.Room.PAGE, of -> go(PlaceId.INCIDENTS, of.incident(), "")));
        engines.with(
                photographs.strip(PhotoStrip.Room.ALONE, of -> go(PlaceId.ENGINES, of.engine(), "")),
                photographs.strip(PhotoStrip.Room.ALONE, of -> go(PlaceId.ENGINES, of.part(), EnginePage.ofPart(""))));
    }

    /** Puts the photos of a finding beside it. */
    void on(StripReportPage strip) {
        strip.with(photographs.strip(PhotoStrip.Room.NARROW, of -> window.go(PlaceId.MEASURING_BENCH)));
    }

    private void go(PlaceId place, @Nullable Id<?> record, String page) {
        if (record != null) {
            window.go(place, page + record.text());
        }
    }

    /** Goes on once no photo is being brought in, or nobody waits for it. */
    void last(@Nullable Window window, Runnable then) {
        photographs.last(window, then);
    }

    /** Looks at no folder any more. */
    void close() {
        watch.close();
    }

    /** Takes files dropped on the window, if they are pictures for a page in sight. */
    boolean dropped(List<Path> files) {
        return photographs.dropped(files);
    }
}
