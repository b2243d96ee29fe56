package witnessmark.desktop.engines;

import java.util.List;

/**
 * The list in words.
 *
 * @param day the day looked at
 * @param engines by number
 * @param heads by mark
 */
record EnginesLines(String day, List<EngineLine> engines, List<HeadLine> heads) {
    EnginesLines {
        engines = List.copyOf(engines);
        heads = List.copyOf(heads);
    }
}
