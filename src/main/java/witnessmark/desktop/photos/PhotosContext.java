package witnessmark.desktop.photos;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.shell.Desk;
import witnessmark.logbook.photos.KeepPhotos;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * What photos in the window stand on.
 *
 * @param book the logbook in hand
 * @param keep puts photos in
 * @param window the window's desk
 * @param watch a folder in which photos appear
 * @param chooseFolder asks for such a folder
 * @param choose asks for picture files; empty when somebody thought better of it
 * @param save asks where to write a copy, beginning with a name
 * @param asked what they lead to
 */
public record PhotosContext(
        witnessmark.logbook.Desk book,
        KeepPhotos keep,
        Desk window,
        SheetTools tools,
        Measures measures,
        PhotoWatch watch,
        Supplier<Optional<Path>> chooseFolder,
        Supplier<List<Path>> choose,
        Function<String, Optional<Path>> save,
        Asked asked) {
    /**
     * What photos lead to.
     *
     * @param show puts a page up
     * @param leave takes it away
     * @param correct opens an entry on its sheet, by the text form of its identity, and comes back
     * @param undo takes the last change back
     */
    public record Asked(Consumer<Aside> show, Runnable leave, BiConsumer<String, Runnable> correct, Runnable undo) {}

    Texts texts() {
        return tools.texts();
    }
}
