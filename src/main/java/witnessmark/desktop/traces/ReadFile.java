package witnessmark.desktop.traces;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import witnessmark.logbook.port.LoggerFile;

/** A file of which it is known how far it is read, and that is read no further once that is called off. */
final class ReadFile implements LoggerFile {
    private final LoggerFile file;
    private final AtomicLong bytes = new AtomicLong();
    private final AtomicLong all = new AtomicLong();
    private final AtomicBoolean stopped = new AtomicBoolean();

    ReadFile(LoggerFile file) {
        this.file = file;
    }

    @Override
    public String name() {
        return file.name();
    }

    @Override
    public long size() throws IOException {
        long size = file.size();
        all.set(size);
        return size;
    }

    @Override
    public InputStream open() throws IOException {
        bytes.set(0);
        return new Counted(file.open());
    }

    /** How many bytes were read since it was last opened. */
    long bytes() {
        return bytes.get();
    }

    /** Its size, bytes; 0 while that is not known. */
    long all() {
        return all.get();
    }

    /** Reads nothing more: whatever reads meets an end of its own within a piece of the file. */
    void stop() {
        stopped.set(true);
    }

    boolean isStopped() {
        return stopped.get();
    }

    private final class Counted extends FilterInputStream {
        Counted(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            if (stopped.get()) {
                throw new InterruptedIOException();
            }
            int read = super.read(into, offset, length);
            bytes.addAndGet(Math.max(0, read));
            return read;
        }

        @Override
        public long skip(long count) throws IOException {
            if (stopped.get()) {
                throw new InterruptedIOException();
            }
            long skipped = super.skip(count);
            bytes.addAndGet(skipped);
            return skipped;
        }

        @Override
        public boolean markSupported() {
            return false;
        }
    }
}
