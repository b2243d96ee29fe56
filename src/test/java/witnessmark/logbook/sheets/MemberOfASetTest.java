package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Part;
import witnessmark.domain.SetMember;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** One rod of a set makes no whole set of a position. */
class MemberOfASetTest {
    @Test
    void a_member_fitted_where_a_whole_set_sits_is_asked_about(@TempDir Path folder) {
        try (OwnLogbook own = new OwnLogbook(folder)) {
            String[] engine = {"number", "H1", "design_name", "Quarrow 2.0", "cylinders", "4", "hours_how", "part_new"};
            own.save(new AddEngine(), engine).orThrow();
            FitPart fit = new FitPart();
            String[] rods = {
                "place", "H1", "position", "rods", "since", "2 Mar", "mark", "RS-1", "part_design_name", "Corve rods"
            };
            own.save(fit, rods).orThrow();
            own.write(new SetMember(own.the(Part.class, "RS-1").id(), "rod 3", 1));
            own.save(new TakeOffPart(), "place", "H1", "fitted", "RS-1", "off_when", "5 Mar", "off_reason", "look")
                    .orThrow();
            own.save(new SplitSet(), "set", "RS-1", "members", "Rod-3", "mark", "R3")
                    .orThrow();

            Map<SheetField, String> typed =
                    own.filled(fit, "place", "H1", "position", "rods", "part", "R3", "since", "9 Mar");
            Problem asked = own.sheets.read(fit, typed).of(FitPart.PART).problem();

            assertThat(asked).isNotNull();
            assertThat(asked.kind()).isEqualTo(ProblemKind.MEMBER_ALONE);
            assertThat(asked.facts()).isEqualTo(List.of("R3", "RS-1"));
            assertThat(asked.stops()).isFalse();
        }
    }
}
