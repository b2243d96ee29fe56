package witnessmark.command;

import witnessmark.logbook.standing.MarkOn;
import witnessmark.wording.ReasonWords;

/** A mark as a line says it. */
final class MarkText {
    private final Tools tools;

    MarkText(Tools tools) {
        this.tools = tools;
    }

    /** "Over", "Not known". */
    String state(MarkOn on) {
        return tools.texts()
                .get(
                        switch (on.state()) {
                            case HELD -> "form.state.held";
                            case OVER -> "form.state.over";
                            case RUN_ON -> "form.state.runOn";
                            case DUE -> "form.state.due";
                            case NOT_KNOWN -> "form.state.notKnown";
                            case WITHIN -> "form.state.within";
                        });
    }

    /** "renew valve springs: 0.9 h over". */
    String why(MarkOn on) {
        return new ReasonWords(tools.texts(), tools.measures()).why(on.mark());
    }
}
