package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.domain.JointMethod;
import witnessmark.domain.PartKind;
import witnessmark.domain.Standing;
import witnessmark.ledger.result.JointGroup;
import witnessmark.quantity.Moment;

class BuildPageWordsTest {
    private final Texts texts = Texts.in(Locale.UK);
    private final BuildPageWords words = new BuildPageWords(texts, new Measures(texts, Units.METRIC));

    /** A figure never stands without its unit (design 04, rule 4); what was typed with one stays as it was typed. */
    @ParameterizedTest
    @CsvSource({
        "TORQUE, 95, Torque 95 N·m",
        "TORQUE, 95 Nm, Torque 95 Nm",
        "ANGLE, 90, Angle 90 °",
        "STRETCH, 0.14, Stretch 0.14 mm",
        "TORQUE_AND_ANGLE, 40 + 90°, Torque and angle 40 + 90°"
    })
    void a_bare_figure_is_said_with_the_unit_it_is_taken_in(JointMethod method, String typed, String said) {
        Joint joint = new Joint(
                new Id<>(UUID.randomUUID()),
                null,
                PartKind.HEAD_STUDS,
                "all ten",
                "",
                method,
                typed,
                "moly paste",
                null,
                Moment.of(Instant.parse("2026-07-08T12:00:00Z"), ZoneId.of("Europe/London")),
                true,
                "Crew chief",
                "Team engineer");
        JointGroup group = new JointGroup(
                PartKind.HEAD_STUDS,
                "all ten",
                List.of(new Entry<>(new Id<>(UUID.randomUUID()), joint, Standing.IN_FORCE, null, 1)),
                null);
        assertThat(words.tightened(Facts.none(), group))
                .singleElement()
                .asString()
                .startsWith(said + ", on moly paste");
    }
}
