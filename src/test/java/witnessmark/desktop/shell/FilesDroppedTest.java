package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.TransferHandler.TransferSupport;
import org.junit.jupiter.api.Test;
import witnessmark.desktop.testing.UiTest;

/** What is dropped on the window. */
@UiTest
class FilesDroppedTest {
    private final List<Path> taken = new ArrayList<>();
    private final FilesDropped files = new FilesDropped(taken::addAll);

    @Test
    void what_is_pasted_and_what_is_no_file_is_not_taken() {
        assertThat(files.importData(new TransferSupport(new JPanel(), new StringSelection("/tmp/a.csv"))))
                .isFalse();
        assertThat(files.canImport(new TransferSupport(new JPanel(), new Files(new File("a.csv")))))
                .as("pasted, not dropped")
                .isFalse();
        assertThat(taken).isEmpty();
    }

    @Test
    void files_go_on_in_their_order() {
        files.take(List.of(Path.of("b.csv"), Path.of("a.csv")));
        files.take(List.of());
        assertThat(taken).containsExactly(Path.of("b.csv"), Path.of("a.csv"));
    }

    private record Files(File file) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return List.of(file);
        }
    }
}
