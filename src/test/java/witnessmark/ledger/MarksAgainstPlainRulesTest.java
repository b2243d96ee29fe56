package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.Part;
import witnessmark.domain.RunOn;
import witnessmark.domain.Standing;
import witnessmark.ledger.PlainAhead.Walked;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.RunsOut;

/** How parts stand, against the rules done the long way over odd histories with odd calendars. */
class MarksAgainstPlainRulesTest {
    private static final int A_SEED = 60;

    static LongStream blocks() {
        return LongStream.rangeClosed(1, 20);
    }

    @ParameterizedTest(name = "from seed {0}00")
    @MethodSource("blocks")
    void every_mark_of_every_part_is_what_the_long_way_gives(long block) {
        int due = 0;
        int runOn = 0;
        for (long seed = block * 100; seed < block * 100 + A_SEED; seed++) {
            FutureGenerator.Future future = FutureGenerator.future(seed);
            LifeLedger ledger = LifeLedger.of(future.story().facts(), future.asOf());
            Marks marks = new Marks(ledger);
            for (Id<Part> part : future.parts()) {
                for (Mark mark : marks.ofPart(part)) {
                    try {
                        judge(future, ledger, mark);
                    } catch (AssertionError | RuntimeException e) {
                        throw new AssertionError("the future of seed " + seed + ", " + mark, e);
                    }
                    due += mark.state() == MarkState.DUE ? 1 : 0;
                    runOn += mark.state() == MarkState.RUN_ON ? 1 : 0;
                }
            }
        }
        assertThat(due).as("some fell due, or the test says little").isPositive();
        assertThat(runOn).as("some went on").isPositive();
    }

    private static void judge(FutureGenerator.Future future, LifeLedger ledger, Mark mark) {
        LimitUse use = (LimitUse) mark.reason();
        Limit limit = use.limit().fact();
        Life used = new PlainSums(future.story().facts(), future.asOf())
                .life(Objects.requireNonNull(mark.part()), limit.counter(), use.since());
        assertThat(use.used()).isEqualTo(used);
        long left = limit.amount() - used.highest();
        Long upTo = lastRunOn(future, use.limit().id(), mark.part());
        MarkState alone;
        if (left > 0) {
            alone = used.atLeast() || used.runsNotRead() > 0 ? MarkState.NOT_KNOWN : MarkState.WITHIN;
        } else {
            alone = upTo != null && used.highest() < upTo ? MarkState.RUN_ON : MarkState.OVER;
        }
        assertThat(use.state()).isEqualTo(alone);
        Walked walked = alone == MarkState.OVER
                ? null
                : new PlainAhead(future.story().facts(), future.asOf(), ledger)
                        .walk(
                                mark.engine(),
                                mark.car(),
                                limit.counter(),
                                alone == MarkState.RUN_ON ? upTo - used.highest() : left);
        RunsOut runsOut = mark.runsOut();
        assertThat(runsOut == null).as("runs out").isEqualTo(walked == null);
        if (runsOut != null && walked != null) {
            assertThat(runsOut.event().id()).isEqualTo(walked.event());
            assertThat(runsOut.planned() == null ? null : runsOut.planned().id())
                    .isEqualTo(walked.planned());
            assertThat(runsOut.sure()).isEqualTo(walked.sure());
            assertThat(runsOut.after()).isEqualTo(walked.after());
        }
        boolean falls = walked != null && (alone == MarkState.WITHIN || alone == MarkState.NOT_KNOWN);
        assertThat(mark.state()).isEqualTo(falls ? MarkState.DUE : alone);
    }

    private static @Nullable Long lastRunOn(FutureGenerator.Future future, Id<Limit> limit, Id<Part> part) {
        List<Entry<RunOn>> signed = new ArrayList<>();
        for (Entry<RunOn> entry : future.story().facts().of(RunOn.class).all()) {
            RunOn fact = entry.fact();
            if (entry.standing() == Standing.IN_FORCE
                    && limit.equals(fact.limit())
                    && part.equals(fact.part())
                    && !fact.at().isAfter(future.asOf().last())) {
                signed.add(entry);
            }
        }
        signed.sort((one, other) -> {
            int byTime = one.fact().at().compareTo(other.fact().at());
            return byTime != 0 ? byTime : one.id().compareTo(other.id());
        });
        return signed.isEmpty() ? null : signed.get(signed.size() - 1).fact().upTo();
    }
}
