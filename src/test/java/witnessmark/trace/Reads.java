package witnessmark.trace;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import witnessmark.outcome.Outcome;
import witnessmark.trace.reduce.Reducer;
import witnessmark.trace.result.Defects;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceRead;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.text.Recognition;
import witnessmark.trace.text.TraceReader;

/** Reads a trace held in memory as a use case does. */
public final class Reads {
    private Reads() {}

    /** A trace read and reduced. */
    record Read(Recognised recognised, TraceRead read, List<Reduction> parts, Defects defects) {
        Reduction only() {
            if (parts.size() != 1) {
                throw new AssertionError(parts.size() + " parts");
            }
            return parts.get(0);
        }
    }

    static Outcome<Recognised> recognise(byte[] bytes) {
        int length = Math.min(bytes.length, Recognition.HEAD);
        return Recognition.of(bytes, length, length == bytes.length);
    }

    static Read of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8), TraceSettings.usual());
    }

    static Read of(byte[] bytes, TraceSettings settings) {
        Recognised recognised = recognise(bytes).orThrow();
        return of(bytes, recognised, recognised.form(), settings);
    }

    static Read of(byte[] bytes, Recognised recognised, TraceForm form, TraceSettings settings) {
        return of(new ByteArrayInputStream(bytes), recognised, form, settings).orThrow();
    }

    static Outcome<Read> of(InputStream in, Recognised recognised, TraceForm form, TraceSettings settings) {
        Reducer reducer = new Reducer(settings);
        return TraceReader.read(in, form, reducer, Watch.none())
                .map(read -> new Read(recognised, read, reducer.parts(), reducer.defects(read.defects())));
    }

    /** A stream that hands out its bytes in pieces as they come. */
    static InputStream inPieces(byte[] bytes, java.util.function.IntSupplier sizes) {
        return new ByteArrayInputStream(bytes) {
            @Override
            public synchronized int read(byte[] into, int offset, int length) {
                return super.read(into, offset, Math.min(length, Math.max(1, sizes.getAsInt())));
            }
        };
    }

    static byte[] all(InputStream in) {
        try (in) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
