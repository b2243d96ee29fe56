package witnessmark.desktop.form;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;

/** A chart on the clipboard: the picture for those who paste pictures, the numbers for those who paste text. */
public record ChartCopy(Image picture, String numbers) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {DataFlavor.imageFlavor, DataFlavor.stringFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
        return flavor.equals(DataFlavor.imageFlavor) || flavor.equals(DataFlavor.stringFlavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
        if (flavor.equals(DataFlavor.imageFlavor)) {
            return picture;
        }
        if (flavor.equals(DataFlavor.stringFlavor)) {
            return numbers;
        }
        throw new UnsupportedFlavorException(flavor);
    }
}
