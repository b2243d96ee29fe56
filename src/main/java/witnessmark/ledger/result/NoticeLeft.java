package witnessmark.ledger.result;

import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Notice;
import witnessmark.domain.Part;

/**
 * A maker's notice that is not answered on every part it means.
 *
 * @param notice which one
 * @param parts those on which nothing is written down yet and that are not scrapped, at least one
 */
public record NoticeLeft(Entry<Notice> notice, List<Entry<Part>> parts) {
    public NoticeLeft {
        parts = List.copyOf(parts);
    }
}
