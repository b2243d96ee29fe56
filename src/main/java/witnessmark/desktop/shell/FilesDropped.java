package witnessmark.desktop.shell;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Files dropped on the window go to who wants them; nothing else is taken. */
final class FilesDropped extends TransferHandler {
    private static final Logger LOG = LoggerFactory.getLogger(FilesDropped.class);

    private final transient Consumer<List<Path>> taken;

    FilesDropped(Consumer<List<Path>> taken) {
        this.taken = taken;
    }

    @Override
    public boolean canImport(TransferSupport dropped) {
        return dropped.isDrop() && dropped.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport dropped) {
        if (!canImport(dropped)) {
            return false;
        }
        try {
            List<?> files = (List<?>) dropped.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            take(files.stream().map(file -> ((File) file).toPath()).toList());
            return true;
        } catch (UnsupportedFlavorException | IOException e) {
            LOG.warn("what was dropped cannot be had", e);
            return false;
        }
    }

    void take(List<Path> files) {
        if (!files.isEmpty()) {
            taken.accept(files);
        }
    }
}
