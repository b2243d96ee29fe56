package witnessmark.desktop.engines;

import java.util.List;

/**
 * The list in words.
 *
 * @param day the day looked at
 * @param engines by number
 * @param parts the heads, then the other parts that are in no engine, each by mark
 */
record EnginesLines(String day, List<EngineLine> engines, List<PartLine> parts) {
    EnginesLines {
        engines = List.copyOf(engines);
        parts = List.copyOf(parts);
    }
}
