package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.Coded;
import witnessmark.domain.Look;
import witnessmark.ledger.result.LookAt;

/** What is looked at before a run, and who looked. */
public final class LookWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    public LookWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** "Plugs", "Head gasket HG-9 went in", "Told: oil light at turn 6". */
    public String what(LookAt look) {
        Coded word = look.word();
        String named = word == null ? "" : records.label(records.word(word));
        return switch (look.reason()) {
            case USUAL -> named;
            case ENGINE_WENT_IN -> texts.get("beforewego.next.engine", look.what());
            case WENT_IN -> texts.get("beforewego.next.wentIn", named, look.what());
            case TOLD ->
                look.engine() == null
                        ? texts.get("beforewego.next.told", look.what())
                        : texts.get("beforewego.next.toldOf", look.engine(), look.what());
        };
    }

    /** "Mechanic 1, 13:05, even, light tan". */
    public String done(Look look) {
        List<String> said = new ArrayList<>(List.of(look.by(), measures.moment(look.at())));
        if (!look.words().isBlank()) {
            said.add(look.words());
        }
        return measures.row(said);
    }
}
