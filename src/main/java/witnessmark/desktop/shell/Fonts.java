package witnessmark.desktop.shell;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.fonts.roboto.FlatRobotoFont;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import javax.swing.UIManager;

/**
 * The two families bundled: Roboto for text, whose digits are all equally wide, and B612 Bold for titles. Only the one
 * face of B612 is registered, and it is asked for by its full name: by family name another face may be found.
 */
public final class Fonts {
    /** The full name of the face of titles. */
    public static final String TITLE_FACE = "B612 Bold";

    /** The fonts of this Java are kept for as long as it runs, and so is what the look manager was told. */
    private static final String REGISTERED = "wm.fontsRegistered";

    private Fonts() {}

    /**
     * Registers the families, the first time it is called: they are read from their files, which takes longer than the
     * rest of the look, and every further copy makes finding a font slower. To be called before the look is set up.
     */
    static void install() {
        if (UIManager.get(REGISTERED) != null) {
            return;
        }
        UIManager.put(REGISTERED, true);
        FlatRobotoFont.install();
        FlatLaf.setPreferredFontFamily(FlatRobotoFont.FAMILY);
        FlatLaf.setPreferredLightFontFamily(FlatRobotoFont.FAMILY_LIGHT);
        FlatLaf.setPreferredSemiboldFontFamily(FlatRobotoFont.FAMILY_SEMIBOLD);
        title().ifPresent(GraphicsEnvironment.getLocalGraphicsEnvironment()::registerFont);
    }

    /** The face of titles as bundled, at one point; empty when this Java cannot read it. */
    public static Optional<Font> title() {
        try (InputStream in = Fonts.class.getResourceAsStream("/fonts/B612-Bold.otf")) {
            return in == null ? Optional.empty() : Optional.of(Font.createFont(Font.TRUETYPE_FONT, in));
        } catch (IOException | FontFormatException unreadable) {
            return Optional.empty();
        }
    }
}
