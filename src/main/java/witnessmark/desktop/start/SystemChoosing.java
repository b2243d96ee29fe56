package witnessmark.desktop.start;

import com.formdev.flatlaf.util.SystemFileChooser;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.port.Settings;
import witnessmark.wording.Texts;

/** Asks with the system's own dialogs, which begin where {@link LastFolder} says. */
public final class SystemChoosing implements Choosing {
    private final Texts texts;
    private final LastFolder last;
    private final Path home;
    private final Supplier<@Nullable Component> parent;

    /**
     * @param home where the first dialog begins
     * @param parent the window the dialogs belong to
     */
    public SystemChoosing(Texts texts, Settings settings, Path home, Supplier<@Nullable Component> parent) {
        this.texts = texts;
        this.home = home;
        this.last = new LastFolder(settings, home);
        this.parent = parent;
    }

    @Override
    public Optional<Path> logbook() {
        SystemFileChooser chooser = chooser("logbook");
        String words = texts.get("beforewego.choose.logbooks");
        chooser.addChoosableFileFilter(new SystemFileChooser.FileNameExtensionFilter(words, LogbookNames.ENDING));
        return shown("logbook", chooser, chooser.showOpenDialog(parent.get()));
    }

    @Override
    public Optional<Path> newLogbook(Path suggested) {
        SystemFileChooser chooser = chooser("newLogbook");
        if (!suggested.equals(home)) {
            chooser.setSelectedFile(last.place("newLogbook", suggested).toFile());
        }
        return shown("newLogbook", chooser, chooser.showSaveDialog(parent.get()));
    }

    @Override
    public Optional<Path> seasonToRead() {
        return folder("seasonToRead");
    }

    @Override
    public Optional<Path> seasonToWrite() {
        return folder("seasonToWrite");
    }

    @Override
    public Optional<Path> statementToRead() {
        SystemFileChooser chooser = chooser("statementToRead");
        return shown("statementToRead", chooser, chooser.showOpenDialog(parent.get()));
    }

    @Override
    public Optional<Path> traceToRead() {
        SystemFileChooser chooser = chooser("traceToRead", "traces.choose.file");
        return shown("traceToRead", chooser, chooser.showOpenDialog(parent.get()));
    }

    @Override
    public Optional<Path> tracesFolder() {
        return folder("tracesFolder", "traces.choose.folder");
    }

    @Override
    public List<Path> photosToRead() {
        SystemFileChooser chooser = chooser("photosToRead", "photos.choose");
        chooser.setMultiSelectionEnabled(true);
        return shown("photosToRead", chooser, chooser.showOpenDialog(parent.get()))
                        .isEmpty()
                ? List.of()
                : Stream.of(chooser.getSelectedFiles()).map(File::toPath).toList();
    }

    @Override
    public Optional<Path> photosFolder() {
        return folder("photosFolder", "photos.choose.folder");
    }

    @Override
    public Optional<Path> photoToWrite(Path suggested) {
        SystemFileChooser chooser = chooser("photoToWrite", "photos.choose.copy");
        chooser.setSelectedFile(last.place("photoToWrite", suggested).toFile());
        return shown("photoToWrite", chooser, chooser.showSaveDialog(parent.get()));
    }

    @Override
    public Optional<Path> calendarToWrite(Path suggested) {
        return fileToWrite("calendarToWrite", suggested);
    }

    @Override
    public Optional<Path> jobSheetToWrite(Path suggested) {
        return fileToWrite("jobSheetToWrite", suggested);
    }

    @Override
    public Optional<Path> seasonTableToWrite(Path suggested) {
        return fileToWrite("seasonTableToWrite", suggested);
    }

    @Override
    public Optional<Path> seasonSheetToWrite(Path suggested) {
        return fileToWrite("seasonSheetToWrite", suggested);
    }

    @Override
    public Optional<Path> buildSheetToWrite(Path suggested) {
        return fileToWrite("buildSheetToWrite", suggested);
    }

    @Override
    public Optional<Path> traceSheetToWrite(Path suggested) {
        return fileToWrite("traceSheetToWrite", suggested);
    }

    @Override
    public Optional<Path> faceSheetToWrite(Path suggested) {
        return fileToWrite("faceSheetToWrite", suggested);
    }

    @Override
    public Optional<Path> stripSheetToWrite(Path suggested) {
        return fileToWrite("stripSheetToWrite", suggested);
    }

    @Override
    public Optional<Path> caseSheetToWrite(Path suggested) {
        return fileToWrite("caseSheetToWrite", suggested);
    }

    @Override
    public Optional<Path> tagsToWrite(Path suggested) {
        return fileToWrite("tagsToWrite", suggested);
    }

    @Override
    public Optional<Path> copy() {
        SystemFileChooser chooser = chooser("copy", "keeping.choose.copy");
        return shown("copy", chooser, chooser.showOpenDialog(parent.get()));
    }

    @Override
    public Optional<Path> copiesFolder() {
        return folder("copiesFolder", "keeping.choose.copiesFolder");
    }

    @Override
    public Optional<Path> secondPlace() {
        return folder("secondPlace", "keeping.choose.secondPlace");
    }

    private Optional<Path> fileToWrite(String what, Path suggested) {
        SystemFileChooser chooser = chooser(what);
        chooser.setSelectedFile(last.place(what, suggested).toFile());
        return shown(what, chooser, chooser.showSaveDialog(parent.get()));
    }

    private Optional<Path> folder(String what) {
        return folder(what, "beforewego.choose." + what);
    }

    private Optional<Path> folder(String what, String key) {
        SystemFileChooser chooser = chooser(what, key);
        chooser.setFileSelectionMode(SystemFileChooser.DIRECTORIES_ONLY);
        chooser.setApproveButtonText(texts.get(key + ".button"));
        return shown(what, chooser, chooser.showOpenDialog(parent.get()));
    }

    private SystemFileChooser chooser(String what) {
        return chooser(what, "beforewego.choose." + what);
    }

    private SystemFileChooser chooser(String what, String key) {
        SystemFileChooser chooser = new SystemFileChooser();
        chooser.setDialogTitle(texts.get(key));
        chooser.setCurrentDirectory(last.of(what).toFile());
        return chooser;
    }

    private Optional<Path> shown(String what, SystemFileChooser chooser, int answer) {
        File chosen = chooser.getSelectedFile();
        if (answer != SystemFileChooser.APPROVE_OPTION || chosen == null) {
            return Optional.empty();
        }
        last.chosen(what, chosen.toPath());
        return Optional.of(chosen.toPath());
    }
}
