package witnessmark.abuse;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import witnessmark.logbook.tracing.ReduceTrace;
import witnessmark.logbook.tracing.TraceAnswers;
import witnessmark.trace.SampleSink;
import witnessmark.trace.Watch;
import witnessmark.trace.kept.KeptWriter;
import witnessmark.trace.kept.SampleDigest;
import witnessmark.trace.reduce.Reducer;
import witnessmark.trace.result.Reduction;
import witnessmark.trace.result.TraceForm;
import witnessmark.trace.result.TraceSettings;
import witnessmark.trace.text.TraceReader;

/** Reads a trace as long as it is told, which is made while it is read, and reduces and keeps it in the memory it has. */
public final class HugeTraceProgram {
    private static final String HEADING = "Time [s],Engine Speed [rpm],Throttle [%],Oil Press [bar],Water Temp [C]\n";

    private HugeTraceProgram() {}

    /** @param args how many bytes; and a pipe they come through, or nothing where they are made here */
    public static void main(String[] args) throws IOException {
        long size = Long.parseLong(args[0]);
        TraceForm form =
                ReduceTrace.recognised(() -> new Made(size), null).orThrow().form();
        Reducer reducer = new Reducer(TraceSettings.usual());
        SampleSink sink = SampleSink.both(
                reducer, SampleSink.both(new KeptWriter(OutputStream.nullOutputStream()), new SampleDigest()));
        long row;
        if (args.length > 1) {
            try (InputStream pipe = new FileInputStream(args[1])) {
                row = TraceReader.read(pipe, form, sink, Watch.none()).orThrow().rows();
            }
        } else {
            Made made = new Made(size);
            TraceReader.read(made, form, sink, Watch.none()).orThrow();
            row = made.row;
        }
        Reduction found = reducer.parts().get(0);
        boolean stopped = !ReduceTrace.of(
                        () -> new Made(size), TraceAnswers.none(), TraceSettings.usual(), bytes -> bytes < 5_000_000)
                .didWork();
        System.out.println("rows " + row + " read " + found.rows() + " running "
                + (found.speed() == null ? -1 : found.speed().running()) + " stopped " + stopped);
    }

    /** Rows of 50 a second, for as many bytes as are wanted. */
    static final class Made extends InputStream {
        private final long size;
        private byte[] line = HEADING.getBytes(StandardCharsets.US_ASCII);
        private int at;
        private long handed;
        long row;

        Made(long size) {
            this.size = size;
        }

        @Override
        public int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int offset, int length) {
            int filled = 0;
            while (filled < length) {
                if (at == line.length && !another()) {
                    break;
                }
                int count = Math.min(length - filled, line.length - at);
                System.arraycopy(line, at, into, offset + filled, count);
                at += count;
                filled += count;
                handed += count;
            }
            return filled == 0 && length > 0 ? -1 : filled;
        }

        private boolean another() {
            if (handed >= size) {
                return false;
            }
            long i = row++;
            String hundredths = String.valueOf(100 + i * 2 % 100).substring(1);
            line = (i / 50 + "." + hundredths + "," + (1000 + i * 37 % 7000) + "," + i % 100 + "." + i % 10 + ","
                            + (2 + i % 3) + ".5," + (60 + i / 5000 % 30) + "\n")
                    .getBytes(StandardCharsets.US_ASCII);
            at = 0;
            return true;
        }
    }
}
