package witnessmark.desktop.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.domain.Car;
import witnessmark.domain.Cause;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Makes incidents findable, the open ones first, each the latest first. */
final class ReadIncidents {
    private final Texts texts;
    private final Measures measures;

    ReadIncidents(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    List<Indexed> all(Facts facts) {
        return facts.of(Incident.class)
                .inForce()
                .sorted(Comparator.comparing(
                                (Entry<Incident> incident) -> incident.fact().closed() != null)
                        .thenComparing(incident -> incident.fact().at(), Comparator.reverseOrder()))
                .map(incident -> one(facts, incident))
                .toList();
    }

    private Indexed one(Facts facts, Entry<Incident> entry) {
        Incident incident = entry.fact();
        Moment closed = incident.closed();
        List<String> said = new ArrayList<>();
        if (incident.car() != null) {
            said.add(texts.get(
                    "beforewego.car", facts.of(Car.class).get(incident.car()).name()));
        }
        if (incident.engine() != null) {
            said.add(facts.of(Engine.class).get(incident.engine()).number());
        }
        said.add(measures.date(incident.at().day()));
        said.add(
                closed == null
                        ? texts.get("beforewego.find.incident.open")
                        : texts.get("beforewego.find.incident.closed", measures.date(closed.day())));
        String title = texts.get("beforewego.comma", incident.mark(), incident.title());
        String note = measures.row(said);
        List<String> causes = facts
                .of(Cause.class)
                .where(cause -> cause.incident().equals(entry.id()))
                .stream()
                .map(cause -> cause.fact().statement())
                .toList();
        return new Indexed(
                title,
                note,
                Plain.serial(incident.mark()),
                ReadRecords.words(
                        title,
                        note,
                        incident.seen(),
                        String.join(" ", causes),
                        incident.at().day().toString()),
                PlaceId.INCIDENTS,
                entry.id().text());
    }
}
