package witnessmark.logbook.measuring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import witnessmark.fit.result.WhatIf;
import witnessmark.logbook.measuring.TriedText.Tried;

/** What is typed to be tried at speed, as window and command line read it. An inch is 25.4 mm (ISO 80000-3). */
class TriedTextTest {
    private static TriedText one(Tried tried, String text) {
        return TriedText.of(Map.of(tried, text));
    }

    @Test
    void an_empty_field_is_as_it_is() {
        Map<Tried, String> empty = new EnumMap<>(Tried.class);
        for (Tried tried : Tried.values()) {
            empty.put(tried, " ");
        }
        assertThat(TriedText.of(empty).whatIf()).isEqualTo(WhatIf.NOTHING);
        assertThat(TriedText.of(empty).unread()).isEmpty();
        assertThat(TriedText.of(Map.of()).whatIf().any()).isFalse();
    }

    @Test
    void each_text_goes_where_it_belongs() {
        TriedText read = TriedText.of(Map.of(
                Tried.RED_LINE, "8 200",
                Tried.GASKET, "0.95",
                Tried.CROWN_CUT, "0.2",
                Tried.DECK_SKIM, "0.1",
                Tried.HEAD_SKIM, "0.01 in",
                Tried.ROD_AREA, "165"));
        assertThat(read.unread()).isEmpty();
        assertThat(read.whatIf().redLine()).isEqualTo(8200);
        assertThat(read.whatIf().gasket()).isEqualTo(950_000);
        assertThat(read.whatIf().crownCut()).isEqualTo(200_000);
        assertThat(read.whatIf().deckSkim()).isEqualTo(100_000);
        assertThat(read.whatIf().headSkim()).isEqualTo(254_000);
        assertThat(read.whatIf().rodArea()).isNotNull();
    }

    /** A cut of nothing is one; a rod without a section, an engine that stands and a gasket of nothing are none. */
    @ParameterizedTest
    @CsvSource({
        "CROWN_CUT, 0, true",
        "DECK_SKIM, 0, true",
        "HEAD_SKIM, 0, true",
        "GASKET, 0, false",
        "ROD_AREA, 0, false",
        "RED_LINE, 0, false",
        "GASKET, -0.1, false",
        "CROWN_CUT, -0.1, false",
        "DECK_SKIM, thick, false",
        "RED_LINE, fast, false"
    })
    void what_cannot_be_is_not_tried_and_an_example_stands_beside_it(Tried tried, String text, boolean read) {
        assertThat(one(tried, text).unread().containsKey(tried)).isEqualTo(!read);
        assertThat(one(tried, text).whatIf().any()).isEqualTo(read);
        if (!read) {
            assertThat(one(tried, text).unread().get(tried)).isNotBlank();
        }
    }
}
