package witnessmark.desktop.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

class StartLogbookModelTest {
    private static final Path FOLDER = Path.of("documents").toAbsolutePath();
    private static final Texts TEXTS = Texts.in(Locale.UK);

    private final StartLogbookModel model =
            new StartLogbookModel(TEXTS, new Problems(TEXTS, new Measures(TEXTS, Units.METRIC)), FOLDER);

    @Test
    void a_place_is_suggested_from_the_team_until_another_is_chosen() {
        assertThat(model.suggestion("Marrowgate"))
                .contains(FOLDER.resolve("Marrowgate.witness").toString());
        model.pathChosen();
        assertThat(model.suggestion("Other")).isEmpty();
    }

    @Test
    void both_answers_are_asked_for_at_once() {
        assertThat(model.check(" ", ""))
                .extracting(StartLogbookModel.Stop::field)
                .containsExactly(StartLogbookModel.Field.TEAM, StartLogbookModel.Field.FILE);
        assertThat(model.check("Marrowgate", "x.witness")).isEmpty();
    }

    @Test
    void a_bare_name_lies_in_the_suggested_folder_with_its_ending() {
        assertThat(model.path(" ours ")).contains(FOLDER.resolve("ours.witness"));
        assertThat(model.path(FOLDER.resolve("x.witness").toString())).contains(FOLDER.resolve("x.witness"));
        assertThat(model.path("")).isEmpty();
        assertThat(model.path("a\0b")).isEmpty();
    }

    @Test
    void a_refusal_of_the_file_stands_under_the_file() {
        StartLogbookModel.Stop stop = model.refused(Problem.of(ProblemKind.FILE_EXISTS, Path.of("x.witness")));
        assertThat(stop.field()).isEqualTo(StartLogbookModel.Field.FILE);
        assertThat(stop.words()).contains("x.witness");
    }

    @ParameterizedTest(name = "{0} reads {1}")
    @CsvSource({"US, true", "GB, false", "DE, false", "'', false"})
    void units_are_those_most_people_of_the_country_read(String country, boolean imperial) {
        assertThat(StartLogbookModel.usual(new Locale("en", country)))
                .isEqualTo(imperial ? Units.IMPERIAL : Units.METRIC);
    }

    @Test
    void the_cautions_are_said() {
        assertThat(String.join(" ", model.cautions()))
                .contains("Limits come from you", "cannot see a part", "Never let it overrule an inspection");
    }
}
