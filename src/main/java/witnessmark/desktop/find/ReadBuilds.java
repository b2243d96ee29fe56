package witnessmark.desktop.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.SignOff;
import witnessmark.wording.BuildPageWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Makes builds findable by engine and number, by what was opened and by their days. Each leads to its page. */
final class ReadBuilds {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final BuildPageWords builds;

    ReadBuilds(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.builds = new BuildPageWords(texts, measures);
    }

    /** Every build, the one opened last first. */
    List<Indexed> all(Facts facts) {
        Map<Id<Build>, SignOff> signed = new HashMap<>();
        facts.of(SignOff.class)
                .inForce()
                .sorted(Comparator.comparing(sign -> sign.fact().at()))
                .forEach(sign -> signed.put(sign.fact().build(), sign.fact()));
        return facts.of(Build.class)
                .inForce()
                .sorted(Comparator.comparing(
                                (Entry<Build> build) -> build.fact().opened())
                        .reversed())
                .map(build -> one(facts, build, signed.get(build.id())))
                .toList();
    }

    private Indexed one(Facts facts, Entry<Build> entry, @Nullable SignOff signed) {
        Build build = entry.fact();
        String engine = facts.of(Engine.class).get(build.engine()).number();
        String title = builds.name(engine, build);
        List<String> said = new ArrayList<>();
        said.add(
                build.closed() == null
                        ? texts.get(
                                "beforewego.find.build.open",
                                measures.date(build.opened().day()))
                        : texts.get(
                                "beforewego.find.build.closed",
                                measures.date(build.opened().day()),
                                measures.date(build.closed().day())));
        said.add(
                signed == null
                        ? texts.get("beforewego.find.build.unsigned")
                        : texts.get("beforewego.find.build.signed", signed.by()));
        said.addAll(build.zones().stream().map(records::word).toList());
        String note = measures.row(said);
        return new Indexed(
                title,
                note,
                Plain.serial(title),
                ReadRecords.words(
                        title,
                        texts.get("beforewego.find.build.words", engine, build.number()),
                        note,
                        build.opened().day().toString(),
                        build.closed() == null ? null : build.closed().day().toString(),
                        signed == null ? null : signed.at().day().toString(),
                        build.note()),
                PlaceId.ENGINES,
                entry.id().text());
    }
}
