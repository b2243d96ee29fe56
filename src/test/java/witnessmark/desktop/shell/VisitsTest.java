package witnessmark.desktop.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VisitsTest {
    private static Visit visit(int number) {
        return Visit.to(PlaceId.ENGINES, "K" + number);
    }

    @Test
    void nothing_is_behind_or_ahead_at_first() {
        Visits visits = new Visits();
        assertThat(visits.current()).isEmpty();
        assertThat(visits.goBack()).isEmpty();
        assertThat(visits.goForward()).isEmpty();
    }

    @Test
    void going_where_one_is_changes_nothing() {
        Visits visits = new Visits();
        visits.go(visit(1));
        visits.go(visit(1));
        assertThat(visits.canGoBack()).isFalse();
    }

    @Test
    void going_elsewhere_forgets_what_was_ahead() {
        Visits visits = new Visits();
        visits.go(visit(1));
        visits.go(visit(2));
        visits.goBack();
        visits.go(visit(3));
        assertThat(visits.canGoForward()).isFalse();
        assertThat(visits.goBack()).contains(visit(1));
    }

    @Test
    void a_hundred_steps_are_kept() {
        Visits visits = new Visits();
        for (int i = 0; i < 150; i++) {
            visits.go(visit(i));
        }
        int steps = 0;
        while (visits.goBack().isPresent()) {
            steps++;
        }
        assertThat(steps).isEqualTo(100);
        assertThat(visits.current()).contains(visit(49));
    }

    /** The same walk done with a list and an index, as the plainest thing that can be right. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void a_random_walk_goes_as_over_a_list_with_an_index(long seed) {
        Random random = new Random(seed);
        Visits visits = new Visits();
        List<Visit> list = new ArrayList<>();
        int at = -1;
        for (int step = 0; step < 80; step++) {
            int what = random.nextInt(4);
            if (what == 0 && at > 0) {
                at--;
                visits.goBack();
            } else if (what == 1 && at + 1 < list.size()) {
                at++;
                visits.goForward();
            } else {
                Visit next = visit(random.nextInt(6));
                if (at < 0 || !list.get(at).equals(next)) {
                    list.subList(at + 1, list.size()).clear();
                    list.add(next);
                    at++;
                }
                visits.go(next);
            }
            assertThat(visits.current()).isEqualTo(at < 0 ? Optional.empty() : Optional.of(list.get(at)));
            assertThat(visits.canGoBack()).isEqualTo(at > 0);
            assertThat(visits.canGoForward()).isEqualTo(at + 1 < list.size());
        }
    }
}
