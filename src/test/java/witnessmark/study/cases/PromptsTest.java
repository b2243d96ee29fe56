package witnessmark.study.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import witnessmark.domain.Facts;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.Incident;
import witnessmark.sample.SampleViews;
import witnessmark.study.result.FailureMode;
import witnessmark.study.result.Prompted;
import witnessmark.wording.PromptWords;
import witnessmark.wording.Texts;

/** What is asked of the failures of the invented season, by its printed evidence and the trade's table of failure modes. */
class PromptsTest {
    private static Facts facts;

    @BeforeAll
    static void tellTheSeason() {
        facts = SampleViews.end().facts();
    }

    private static List<Prompted> of(String incident) {
        return new Prompts(SampleViews.on(facts, SampleViews.WINTER).ledger())
                .of(facts.of(Incident.class).named(incident).orElseThrow());
    }

    /** Trade handbook 6: the mark named as evidence leads to the failure it is evidence of. */
    @ParameterizedTest
    @CsvSource({
        "SHELL_BACK, FRETTED, LOST_GRIP",
        "ROD_BOLT, STRETCHED, LOST_GRIP",
        "BIG_END_SHELL, SPUN, SPUN_SHELL",
        "MAIN_SHELL, DIRT_EMBEDDED, DEBRIS",
        "BIG_END_SHELL, WIPED, WIPED_SHELL",
        "BIG_END_SHELL, CRAZED, WIPED_SHELL",
        "CROWN, HALF_MOON, VALVE_STRIKE",
        "CROWN, POLISHED_ARC, SQUISH_CONTACT",
        "PLUG, SPECKS, DETONATION",
        "FIRE_RING, BEATEN, FIRE_RING_BEATEN",
        "HEAD_GASKET, CARBON_TRACK, GASKET_LEAK",
        "HEAD_FACE, SOFT, HEAD_TOO_HOT",
        "VALVE_SPRING, BROKEN, SPRING_BROKEN",
        "VALVE, BURNT, VALVE_BURNT",
        "CAM_LOBE, PITTED, CAM_WORN",
        "SEAL, SPLIT, OIL_LEAK",
        "WIRING, CHAFED, FALSE_READING",
        "FLYWHEEL, LOOSE, FLYWHEEL_LOOSE"
    })
    void a_mark_leads_to_the_failure_it_is_evidence_of(String place, String mark, FailureMode mode) {
        FindingPlace there = Arrays.stream(FindingPlace.values())
                .filter(each -> each.name().equals(place)
                        || each.code().replaceAll("[ -]", "_").equalsIgnoreCase(place))
                .findFirst()
                .orElseThrow();
        assertThat(mode.shows(there, FindingMark.valueOf(mark))).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "INC-01, FALSE_READING",
        "INC-02, VALVE_STRIKE",
        "INC-04, GASKET_LEAK",
        "INC-05, DEBRIS",
        "INC-05, LOST_GRIP",
        "INC-05, SPUN_SHELL",
        "INC-06, VALVE_DROPPED",
        "INC-06, SPRING_BROKEN",
        "INC-08, OIL_LEAK"
    })
    void the_failures_of_the_season_are_asked_what_their_marks_show(String incident, FailureMode mode) {
        assertThat(of(incident)).extracting(Prompted::mode).contains(mode);
    }

    /** Trade handbook 7: at least three, one of which is that it was put together wrong. */
    @Test
    void whether_it_was_put_together_wrong_is_always_asked_and_last() {
        for (var incident : facts.of(Incident.class).all()) {
            List<Prompted> all = of(incident.fact().mark());
            assertThat(all).hasSizeBetween(1, 4);
            assertThat(all.get(all.size() - 1).mode()).isEqualTo(FailureMode.AT_ASSEMBLY);
        }
    }

    @ParameterizedTest
    @EnumSource(FailureMode.class)
    void each_has_evidence_to_look_for_causes_and_questions_that_end_as_questions(FailureMode mode) {
        PromptWords words = new PromptWords(Texts.in(Locale.UK));
        assertThat(words.name(mode)).isNotBlank();
        assertThat(words.look(mode)).isNotEmpty().noneMatch(String::isBlank);
        assertThat(words.causes(mode)).hasSizeGreaterThanOrEqualTo(2).noneMatch(String::isBlank);
        assertThat(words.ask(mode)).isNotEmpty().allMatch(each -> each.endsWith("?"));
    }
}
