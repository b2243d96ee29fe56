package witnessmark.desktop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Incident;
import witnessmark.domain.image.RecordTypes;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** The sheet that corrects an incident calls everything as the sheet did that reported it. */
class IncidentLabelsTest {
    private static final Texts TEXTS = Texts.in(Locale.UK);

    @ParameterizedTest
    @CsvSource({
        "mark, incident_mark",
        "title, incident_title",
        "at, report_incident.when",
        "found, incident_found",
        "run, incident_run",
        "event, incident_event",
        "car, incident_car",
        "engine, incident_engine",
        "severity, incident_severity",
        "seen, incident_seen",
        "before, incident_before",
        "by, report_incident.by"
    })
    void a_field_has_one_name(String component, String field) {
        assertThat(name(component)).isEqualTo(TEXTS.get("sheets.field." + field));
    }

    @Test
    void its_time_too() {
        String when = name("at");
        assertThat(TEXTS.get("sheets.field.record_time", when))
                .isEqualTo(TEXTS.get("sheets.field.report_incident.when_time"));
    }

    private static String name(String component) {
        return RecordTypes.of(Incident.class).components().stream()
                .filter(each -> each.name().equals(component))
                .map(each -> new RecordWords(TEXTS).field(Incident.class, each))
                .findFirst()
                .orElseThrow();
    }
}
