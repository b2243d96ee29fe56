package witnessmark.desktop.form;

import java.awt.FontMetrics;

/** Words cut to the room there is for them. */
public final class Cut {
    private Cut() {}

    /** As much of it as there is room for; what is cut ends with an ellipsis. */
    public static String to(String words, FontMetrics metrics, double width) {
        if (metrics.stringWidth(words) <= width) {
            return words;
        }
        int end = words.length();
        while (end > 0 && metrics.stringWidth(words.substring(0, end) + "…") > width) {
            end--;
        }
        return words.substring(0, end).stripTrailing() + "…";
    }
}
