package witnessmark.command;

import witnessmark.ledger.result.HeldBy;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.wording.ReadingWords;
import witnessmark.wording.UnprovenWords;

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
        return on.mark()
                .reason()
                .fold(
                        this::held,
                        use -> use.limit().fact().name() + ": " + tools.lives().limit(use),
                        this::read,
                        date -> tools.measures().date(date.useBy()),
                        this::unproven);
    }

    private String held(HeldBy by) {
        String name = by.rule() == null ? "" : by.rule().fact().name() + ", ";
        return name + tools.measures().date(by.since().day());
    }

    private String unproven(UnprovenBuild build) {
        UnprovenWords words = new UnprovenWords(tools.texts(), tools.measures());
        return words.name(build) + ": " + words.list(build);
    }

    private String read(ReadingUse use) {
        String name = use.limit().fact().name();
        return use.worst() == null
                ? name
                : name + ": " + use.worst().fact().place() + " "
                        + new ReadingWords(tools.texts(), tools.measures())
                                .of(use.worst().fact());
    }
}
