package witnessmark.command;

import witnessmark.logbook.standing.MarkOn;
import witnessmark.wording.ReasonWords;
import witnessmark.wording.StandWords;

/** A mark as a line says it. */
final class MarkText {
    private final Tools tools;

    MarkText(Tools tools) {
        this.tools = tools;
    }

    /** "Over", "Not known". */
    String state(MarkOn on) {
        return new StandWords(tools.texts(), tools.measures()).state(on.state());
    }

    /** "renew valve springs: 0.9 h over". */
    String why(MarkOn on) {
        return new ReasonWords(tools.texts(), tools.measures()).why(on.mark());
    }
}
