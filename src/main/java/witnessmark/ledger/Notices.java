package witnessmark.ledger;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Notice;
import witnessmark.domain.NoticeDone;
import witnessmark.domain.Part;
import witnessmark.domain.Scrapping;
import witnessmark.ledger.result.NoticeLeft;

/** Which parts a maker's notice means. */
public final class Notices {
    private Notices() {}

    /**
     * Every part it means, wherever it is now, in the order written. Batch and serials are compared without spaces,
     * dashes and case, as people write them.
     */
    public static List<Entry<Part>> parts(Facts facts, Notice notice) {
        Set<String> marks = Arrays.stream(notice.marks().split(";"))
                .map(Notices::plain)
                .filter(mark -> !mark.isEmpty())
                .collect(Collectors.toSet());
        String batch = plain(notice.batch());
        return facts.of(Part.class)
                .where(part -> (notice.design() == null || notice.design().equals(part.design()))
                        && (batch.isEmpty() || batch.equals(plain(part.batch())))
                        && (marks.isEmpty() || marks.contains(plain(part.mark()))));
    }

    /** The notices of a day that are not answered on every part they mean, in the order of their dates. */
    public static List<NoticeLeft> left(Facts facts, AsOf asOf) {
        Set<Id<Part>> scrapped =
                facts.of(Scrapping.class).where(each -> each.member().isEmpty() && asOf.counts(each.at())).stream()
                        .map(entry -> entry.fact().part())
                        .collect(Collectors.toSet());
        return facts.of(Notice.class).where(notice -> !notice.dated().isAfter(asOf.day())).stream()
                .sorted(Comparator.comparing(notice -> notice.fact().dated()))
                .map(notice -> new NoticeLeft(notice, left(facts, asOf, notice, scrapped)))
                .filter(left -> !left.parts().isEmpty())
                .toList();
    }

    private static List<Entry<Part>> left(Facts facts, AsOf asOf, Entry<Notice> notice, Set<Id<Part>> scrapped) {
        Set<Id<Part>> done = facts
                .of(NoticeDone.class)
                .where(each -> each.notice().equals(notice.id()) && asOf.counts(each.at()))
                .stream()
                .map(entry -> entry.fact().part())
                .collect(Collectors.toSet());
        return parts(facts, notice.fact()).stream()
                .filter(part -> !done.contains(part.id()) && !scrapped.contains(part.id()))
                .toList();
    }

    private static String plain(String written) {
        return written.replaceAll("[\\s\\-]", "").toLowerCase(Locale.ROOT);
    }
}
