package witnessmark.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.quantity.Moment;
import witnessmark.study.result.StripLine;

/** A finding in words (design 06, tables 14.11 and 14.12 have the findings; how they read is our own). */
class FindingWordsTest {
    private final FindingWords words =
            new FindingWords(Texts.in(Locale.UK), new Measures(Texts.in(Locale.UK), Units.METRIC));

    private static Finding finding(
            @Nullable FindingPlace place,
            @Nullable Integer number,
            String spot,
            @Nullable FindingMark mark,
            @Nullable HowMarked how,
            String said,
            @Nullable Integer around,
            @Nullable Integer out) {
        return new Finding(
                Id.<Incident>parse("019bc2d0-7500-7157-a85d-a8ee7939cad9"),
                null,
                null,
                null,
                "",
                place,
                number,
                spot,
                mark,
                how,
                null,
                null,
                null,
                null,
                Moment.parse("2026-04-15T12:00:00Z[Europe/London]"),
                "Crew chief",
                said,
                around,
                out);
    }

    @Test
    void the_side_is_said_once_with_the_place_and_the_place_on_the_part_with_the_mark() {
        Finding shell = finding(
                FindingPlace.BIG_END_SHELL,
                3,
                "upper near the parting line",
                FindingMark.WIPED,
                HowMarked.LIGHT,
                "grey stripe",
                92,
                50);

        assertThat(words.lead(shell)).isEqualTo("Big-end shell, upper 3");
        assertThat(words.words(shell))
                .isEqualTo("wiped, light, near the parting line, in the middle, middle of its width: grey stripe");
        assertThat(words.untyped(shell)).isEqualTo("wiped, light, in the middle, middle of its width");
        assertThat(words.named(shell)).startsWith("Big-end shell, upper 3: wiped, light");
    }

    @Test
    void a_share_of_a_disc_is_counted_outwards() {
        assertThat(words.words(finding(FindingPlace.CROWN, 2, "", FindingMark.DEPOSITS, HowMarked.CLEAR, "", 0, 100)))
                .endsWith("front, near the edge");
    }

    @Test
    void words_alone_and_no_place_are_said_as_they_are() {
        Finding seen = finding(null, null, "", null, null, "oil on the belt", null, null);

        assertThat(words.lead(seen)).isEqualTo("Seen");
        assertThat(words.words(seen)).isEqualTo("oil on the belt");
        assertThat(words.untyped(seen)).isEmpty();
        assertThat(words.position(seen)).isEmpty();
    }

    /** Nothing found is lost: every place there is has a line, and a line says its place. */
    @Test
    void every_place_is_said() {
        assertThat(Arrays.stream(FindingPlace.values())
                        .map(place -> words.lead(finding(place, null, "", FindingMark.NO_MARK, null, "", null, null))))
                .doesNotHaveDuplicates()
                .doesNotContain("Seen");
        assertThat(Arrays.stream(StripLine.values()).map(words::line)).doesNotHaveDuplicates();
    }
}
