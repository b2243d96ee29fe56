package witnessmark.logbook.sheets;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Notice;
import witnessmark.domain.NoticeDone;
import witnessmark.domain.Part;
import witnessmark.ledger.Notices;

/** Makers' notices to pick from: first those that ask for something here, then those that concern nobody any more. */
final class NoticesNow {
    private NoticesNow() {}

    static List<Choice> choices(SheetSight sight) {
        return sight.facts().of(Notice.class).where(notice -> true).stream()
                .sorted(Comparator.comparing(notice -> open(sight, notice).isEmpty()))
                .map(notice -> open(sight, notice).isEmpty()
                        ? Choice.of(notice.id().text(), concernsNobody(sight, notice.fact()))
                        : Choice.of(notice.id().text(), notice.fact()))
                .toList();
    }

    /** The parts that are meant and on which nothing was done. */
    static Set<Id<Part>> open(SheetSight sight, Entry<Notice> notice) {
        Set<Id<Part>> open = Notices.parts(sight.facts(), notice.fact()).stream()
                .map(Entry::id)
                .collect(Collectors.toSet());
        sight.facts()
                .of(NoticeDone.class)
                .where(done -> done.notice().equals(notice.id()))
                .forEach(done -> open.remove(done.fact().part()));
        return open;
    }

    private static SheetNote concernsNobody(SheetSight sight, Notice notice) {
        boolean none = Notices.parts(sight.facts(), notice).isEmpty();
        return SheetNote.of(none ? "notice_no_such_part" : "notice_done_on_all", notice);
    }
}
