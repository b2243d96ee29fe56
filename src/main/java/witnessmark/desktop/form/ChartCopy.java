package witnessmark.desktop.form;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.image.BufferedImage;
import java.util.List;

/** A chart on the clipboard: the picture for those who paste pictures, the numbers for those who paste text. */
public record ChartCopy(Image picture, String numbers) implements Transferable {
    /** Several as one picture, below each other, with the numbers of the first. */
    static ChartCopy under(List<ChartCopy> all) {
        int width =
                all.stream().mapToInt(one -> one.picture().getWidth(null)).max().orElse(1);
        int height = all.stream().mapToInt(one -> one.picture().getHeight(null)).sum();
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        int top = 0;
        for (ChartCopy one : all) {
            g.drawImage(one.picture(), 0, top, null);
            top += one.picture().getHeight(null);
        }
        g.dispose();
        return new ChartCopy(picture, all.get(0).numbers());
    }

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
