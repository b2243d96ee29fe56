package witnessmark.desktop.beforewego;

import java.util.List;
import witnessmark.desktop.form.BoardLine;

/**
 * What the board across the page says.
 *
 * @param sentence the next event
 * @param under when the truck leaves
 * @param figures at its right, none when nothing is planned
 */
public record Board(String sentence, String under, List<BoardLine.Figure> figures) {
    public Board {
        figures = List.copyOf(figures);
    }
}
