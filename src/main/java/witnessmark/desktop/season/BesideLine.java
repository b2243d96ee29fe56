package witnessmark.desktop.season;

import java.util.List;

/**
 * A season beside others.
 *
 * @param id what makes it the same row as before
 * @param season which one
 * @param which as reported, or as the logbook has it now
 * @param amounts planned, spent, came in, cash out, own labour, events missed
 * @param hours run by all engines
 */
record BesideLine(String id, String season, String which, List<Amount> amounts, Amount hours) {
    BesideLine {
        amounts = List.copyOf(amounts);
    }
}
