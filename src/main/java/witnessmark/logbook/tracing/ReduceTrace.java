package witnessmark.logbook.tracing;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongPredicate;
import org.jspecify.annotations.Nullable;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.SampleSink;
import witnessmark.trace.packed.Packed;
import witnessmark.trace.packed.PackedProblem;
import witnessmark.trace.packed.UnpackLimits;
import witnessmark.trace.packed.UpToTheCut;
import witnessmark.trace.reduce.Reducer;
import witnessmark.trace.result.Defects;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceRead;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.text.Recognition;
import witnessmark.trace.text.TraceReader;

/** Reads a logger's file and says what the engine did, with no logbook. Nothing is written. */
public final class ReduceTrace {
    private ReduceTrace() {}

    /** Opens the file from its first byte, as often as it is asked. */
    @FunctionalInterface
    public interface Source {
        InputStream open() throws IOException;
    }

    /**
     * What came of it.
     *
     * @param recognised how its beginning was understood
     * @param asBefore whether it was read as files with its headings were read before
     * @param form how it was read
     * @param open questions without whose answers figures would be wrong
     * @param read null when such a question was open from the start
     * @param parts what it comes to, a part for each time its time begins; empty as above
     * @param defects what was wrong with it, or null as above
     */
    public record Found(
            Recognised recognised,
            boolean asBefore,
            TraceForm form,
            List<Question> open,
            @Nullable TraceRead read,
            List<Reduction> parts,
            @Nullable Defects defects) {}

    /**
     * @param goOn is told how many bytes of its text were read, and whether to go on
     * @return what was found, except for what is to be known of the file before anything of it is believed; or why nothing was
     */
    public static Outcome<Found> of(Source source, TraceAnswers said, TraceSettings settings, LongPredicate goOn) {
        return of(source, said, understood -> Optional.empty(), settings, Optional.empty(), goOn);
    }

    /**
     * The same.
     *
     * @param remembered how a file that is understood so was read before, or empty
     * @param beside is handed every sample too
     */
    static Outcome<Found> of(
            Source source,
            TraceAnswers said,
            Function<TraceForm, Optional<TraceForm>> remembered,
            TraceSettings settings,
            Optional<SampleSink> beside,
            LongPredicate goOn) {
        return recognised(source, said, remembered).then(recognised -> {
            Optional<TraceForm> before = remembered.apply(recognised.form()).map(form -> withItsMark(form, recognised));
            return said.putRight(before.orElse(recognised.form())).then(form -> {
                List<Question> open = said.open(recognised, form).stream()
                        .filter(question -> before.isEmpty() || !form.time().known())
                        .toList();
                return open.isEmpty()
                        ? reduced(source, said, recognised, before.isPresent(), form, settings, beside, goOn)
                        : Outcome.worked(new Found(recognised, before.isPresent(), form, open, null, List.of(), null));
            });
        });
    }

    /** By the order of day and month that was said, else that of files with its headings before. */
    private static Outcome<Recognised> recognised(
            Source source, TraceAnswers said, Function<TraceForm, Optional<TraceForm>> remembered) {
        Boolean order = said.dayFirst();
        return recognised(source, said.entry(), order == null || order)
                .then(first -> order == null
                                && remembered
                                        .apply(first.form())
                                        .filter(before -> !before.time().dayFirst())
                                        .isPresent()
                        ? recognised(source, said.entry(), false)
                        : Outcome.worked(first));
    }

    /** Two loggers may name their channels alike: a decimal mark that a file shows by itself is its own. */
    private static TraceForm withItsMark(TraceForm before, Recognised recognised) {
        boolean doubtful =
                recognised.questions().stream().anyMatch(question -> question.kind() == Question.Kind.DECIMAL_MARK);
        char own = recognised.form().decimal();
        return doubtful || own == before.decimal() ? before : before.withDecimal(own);
    }

    /** How the beginning of a file is understood. */
    public static Outcome<Recognised> recognised(Source source, @Nullable String entry) {
        return recognised(source, entry, true);
    }

    private static Outcome<Recognised> recognised(Source source, @Nullable String entry, boolean dayFirst) {
        if (entry == null) {
            try (InputStream file = source.open()) {
                Packed.notSeveral(file, UnpackLimits.usual());
            } catch (PackedProblem e) {
                return Outcome.didNot(e.problem());
            } catch (IOException e) {
                return broke(e);
            }
        }
        try (InputStream file = source.open();
                UpToTheCut text = new UpToTheCut(Packed.open(file, entry, UnpackLimits.usual()))) {
            byte[] head = text.readNBytes(Recognition.HEAD);
            boolean ended = head.length < Recognition.HEAD || text.read() < 0;
            Outcome<Recognised> found = Recognition.of(head, head.length, ended && !text.isCut(), dayFirst);
            return found.didWork() || text.flaw().isEmpty()
                    ? found
                    : Outcome.didNot(text.flaw().get());
        } catch (PackedProblem e) {
            return Outcome.didNot(e.problem());
        } catch (IOException e) {
            return broke(e);
        }
    }

    private static Outcome<Found> reduced(
            Source source,
            TraceAnswers said,
            Recognised recognised,
            boolean asBefore,
            TraceForm form,
            TraceSettings settings,
            Optional<SampleSink> beside,
            LongPredicate goOn) {
        Reducer reducer = new Reducer(settings);
        SampleSink sink = beside.map(other -> SampleSink.both(reducer, other)).orElse(reducer);
        try (InputStream file = source.open();
                InputStream text = Packed.open(file, said.entry(), UnpackLimits.usual())) {
            return TraceReader.read(text, form, sink, goOn::test).map(read -> {
                List<Question> late = new ArrayList<>(read.late());
                return new Found(
                        recognised, asBefore, form, late, read, reducer.parts(), reducer.defects(read.defects()));
            });
        } catch (PackedProblem e) {
            return Outcome.didNot(e.problem());
        } catch (IOException e) {
            return broke(e);
        }
    }

    private static <T> Outcome<T> broke(IOException e) {
        String said = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        return Outcome.didNot(Problem.of(ProblemKind.TRACE_BROKE_OFF, 0L, said));
    }
}
