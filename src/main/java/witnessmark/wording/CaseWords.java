package witnessmark.wording;

import java.util.List;
import java.util.Locale;
import witnessmark.domain.Entry;
import witnessmark.domain.Incident;
import witnessmark.study.result.Aspect;
import witnessmark.study.result.InCommon;
import witnessmark.study.result.ReadAcross;

/** Words what incidents share and which other engines carry what failed. */
public final class CaseWords {
    private final Texts texts;
    private final Measures measures;

    public CaseWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** "wrench or gauge", "cylinder or bearing". */
    public String aspect(Aspect aspect) {
        return texts.get("proof.aspect." + aspect.name().toLowerCase(Locale.ROOT));
    }

    /** "same part RB-05", with the incidents where not all have it. */
    public String alike(InCommon common, InCommon.Alike alike) {
        String thing = texts.get("proof.alike", aspect(alike.aspect()), alike.what());
        return alike.in().size() == common.incidents().size()
                ? thing
                : texts.get("proof.alike.in", thing, measures.all(marks(alike.in())));
    }

    private static List<String> marks(List<Entry<Incident>> incidents) {
        return incidents.stream().map(each -> each.fact().mark()).toList();
    }

    /** "K06: batch V1-2601, VS-06a, 8.37 h". */
    public String across(ReadAcross across) {
        String engine = across.engine().fact().number();
        String thing = texts.get("proof.alike", aspect(across.aspect()), across.what());
        String ran = across.ran() == null ? texts.get("proof.across.unread") : measures.hours(across.ran());
        return across.parts().isEmpty()
                ? texts.get("proof.across.tool", engine, thing, ran)
                : texts.get(
                        "proof.across.parts",
                        engine,
                        thing,
                        measures.all(across.parts().stream()
                                .map(part -> part.fact().mark())
                                .toList()),
                        ran);
    }
}
