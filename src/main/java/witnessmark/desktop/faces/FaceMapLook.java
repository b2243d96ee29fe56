package witnessmark.desktop.faces;

import witnessmark.chart.FaceMapStyle;
import witnessmark.desktop.form.ChartLook;
import witnessmark.desktop.form.Palette;

/** The style of face maps in the theme in force. Asked for while painting, so that it follows the theme and the size. */
final class FaceMapLook {
    private FaceMapLook() {}

    static FaceMapStyle now() {
        return FaceMapStyle.of(
                ChartLook.now(),
                Palette.TRACK.colour(),
                Palette.MARK.colour(),
                Palette.FIELD_BORDER.colour(),
                Palette.DUE.colour(),
                Palette.OVER.colour(),
                Palette.MARK.colour());
    }
}
