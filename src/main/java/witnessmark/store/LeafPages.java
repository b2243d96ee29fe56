package witnessmark.store;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The rows that lie in a file, page by page, without asking which table they are of: for one whose own list of tables is
 * torn. Read as sqlite.org/fileformat2.html has it: 1.6 pages of trees, 1.7 what runs over, 2.1 rows. Nothing is believed
 * of the file; what cannot be read is passed over. Only while this process has no connection to the file.
 */
final class LeafPages implements AutoCloseable {
    /** What to do with a row that was read. */
    interface EachRow {
        /**
         * @param page where it begins, from 1
         * @param values whole numbers as Long, texts as String, bytes, or null
         */
        void take(int page, List<@Nullable Object> values) throws SQLException;
    }

    /** The pages of every logbook; no other size was ever made. */
    private static final int PAGE = 4_096;

    private static final int INTERIOR = 0x05;
    private static final int LEAF = 0x0D;
    private static final int COUNT_AT = 3;
    private static final int LAST_CHILD_AT = 8;
    private static final int LEAF_HEADER = 8;
    private static final int INTERIOR_HEADER = 12;
    private static final int POINTER = 2;
    private static final int PAGE_NUMBER = 4;
    private static final int MOST_PAYLOAD = 64 << 20;

    /** Most of a row that stays on its page, and the least of one that runs over: 1.6, X and M. */
    private static final int MOST_HERE = PAGE - 35;

    private static final int LEAST_HERE = (PAGE - 12) * 32 / 255 - 23;

    private static final int LONGEST_NUMBER = 9;
    private static final int FIRST_BYTES = 12;

    private final FileChannel file;
    private final int pages;
    private final ByteBuffer page = ByteBuffer.allocate(PAGE);

    LeafPages(Path path) throws IOException {
        file = FileChannel.open(path, StandardOpenOption.READ);
        pages = (int) Math.min(Integer.MAX_VALUE, file.size() / PAGE);
    }

    /** The pages that another page of a tree leads to; a page given back is no longer among them. */
    Set<Integer> children() throws IOException {
        Set<Integer> children = new HashSet<>();
        for (int number = 2; number <= pages; number++) {
            read(number, page);
            int cells = cells(INTERIOR, INTERIOR_HEADER);
            Set<Integer> here = new HashSet<>();
            boolean good = cells > 0 && isChild(page.getInt(LAST_CHILD_AT), here);
            for (int i = 0; good && i < cells; i++) {
                int at = Short.toUnsignedInt(page.getShort(INTERIOR_HEADER + i * POINTER));
                good = at >= INTERIOR_HEADER && at <= PAGE - PAGE_NUMBER && isChild(page.getInt(at), here);
            }
            if (good) {
                children.addAll(here);
            }
        }
        return children;
    }

    private boolean isChild(int number, Set<Integer> here) {
        return number > 1 && number <= pages && here.add(number);
    }

    /** Hands on every row that can be read. The first page holds nothing but the list of tables. */
    void each(EachRow each) throws IOException, SQLException {
        for (int number = 2; number <= pages; number++) {
            each(number, each);
        }
    }

    /** The rows of one page, if it is one that holds any. */
    void each(int number, EachRow each) throws IOException, SQLException {
        read(number, page);
        int cells = cells(LEAF, LEAF_HEADER);
        for (int i = 0; i < cells; i++) {
            int at = Short.toUnsignedInt(page.getShort(LEAF_HEADER + i * POINTER));
            List<@Nullable Object> values = row(at);
            if (values != null) {
                each.take(number, values);
            }
        }
    }

    /** How many cells the page has, or 0 when it is none of that kind. */
    private int cells(int kind, int header) {
        int cells = page.get(0) == kind ? Short.toUnsignedInt(page.getShort(COUNT_AT)) : 0;
        return header + cells * POINTER <= PAGE ? cells : 0;
    }

    private @Nullable List<@Nullable Object> row(int at) throws IOException {
        try {
            page.position(at);
            long size = number(page);
            number(page); // which row of its table it is
            return size <= 0 || size > MOST_PAYLOAD ? null : values(payload((int) size));
        } catch (IllegalArgumentException
                | IndexOutOfBoundsException
                | java.nio.BufferUnderflowException
                | EOFException e) {
            return null; // torn
        }
    }

    private ByteBuffer payload(int size) throws IOException {
        int here = size;
        if (size > MOST_HERE) {
            int rest = LEAST_HERE + (size - LEAST_HERE) % (PAGE - PAGE_NUMBER);
            here = rest <= MOST_HERE ? rest : LEAST_HERE;
        }
        if (here > page.remaining() || size > (long) pages * PAGE) {
            throw new IllegalArgumentException("longer than there is room for");
        }
        byte[] all = new byte[size];
        page.get(all, 0, here);
        int next = here < size ? page.getInt() : 0;
        ByteBuffer over = ByteBuffer.allocate(PAGE);
        for (int done = here; done < size; ) {
            read(next, over);
            next = over.getInt();
            int some = Math.min(size - done, over.remaining());
            over.get(all, done, some);
            done += some;
        }
        return ByteBuffer.wrap(all);
    }

    private static List<@Nullable Object> values(ByteBuffer payload) {
        ByteBuffer kinds = payload.duplicate();
        long header = number(kinds);
        if (header < 0 || header > payload.limit()) {
            throw new IllegalArgumentException("a header longer than its row");
        }
        kinds.limit((int) header);
        payload.position((int) header);
        List<@Nullable Object> values = new ArrayList<>();
        while (kinds.hasRemaining()) {
            values.add(value(number(kinds), payload));
        }
        if (payload.hasRemaining()) {
            throw new IllegalArgumentException("more than its columns");
        }
        return values;
    }

    private static @Nullable Object value(long kind, ByteBuffer from) {
        if (kind >= FIRST_BYTES) {
            byte[] bytes = new byte[(int) Math.min((kind - FIRST_BYTES) / 2, from.remaining() + 1L)];
            from.get(bytes);
            return kind % 2 == 0 ? bytes : new String(bytes, StandardCharsets.UTF_8);
        }
        if (kind < 0) {
            throw new IllegalArgumentException("no kind of value");
        }
        return switch ((int) kind) {
            case 0 -> null;
            case 1 -> whole(from, 1);
            case 2 -> whole(from, 2);
            case 3 -> whole(from, 3);
            case 4 -> whole(from, 4);
            case 5 -> whole(from, 6);
            case 6 -> whole(from, 8);
            case 8 -> 0L;
            case 9 -> 1L;
            default -> throw new IllegalArgumentException("no logbook holds such a value");
        };
    }

    /** Big-endian, in two's complement. */
    private static Long whole(ByteBuffer from, int bytes) {
        long value = from.get();
        for (int i = 1; i < bytes; i++) {
            value = value << 8 | from.get() & 0xFF;
        }
        return value;
    }

    /** A number of one to nine bytes, seven bits each and eight in the ninth (1.6). */
    private static long number(ByteBuffer from) {
        long value = 0;
        for (int i = 1; i < LONGEST_NUMBER; i++) {
            byte each = from.get();
            value = value << 7 | each & 0x7F;
            if (each >= 0) {
                return value;
            }
        }
        return value << 8 | from.get() & 0xFF;
    }

    private void read(int number, ByteBuffer into) throws IOException {
        if (number < 1 || number > pages) {
            throw new EOFException("no page " + number);
        }
        into.clear();
        long at = (number - 1L) * PAGE;
        while (into.hasRemaining()) {
            if (file.read(into, at + into.position()) < 0) {
                throw new EOFException("the file ends within page " + number);
            }
        }
        into.flip();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
