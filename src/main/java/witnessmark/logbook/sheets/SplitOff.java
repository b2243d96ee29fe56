package witnessmark.logbook.sheets;

import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** A member of a set becomes a part of its own, with the set's life to that moment. */
final class SplitOff {
    private SplitOff() {}

    /** The mark offered for it: the set's and its own. */
    static String offered(Part set, String member) {
        return set.mark() + "-" + member;
    }

    /** Whether the mark is nobody's yet; noted when it is. */
    static void free(ReadSheet in, SheetField field, String mark) {
        if (in.sight().facts().of(Part.class).named(mark).isPresent()) {
            in.wrong(field, ProblemKind.NAME_TAKEN, RecordTypes.of(Part.class), mark);
        }
    }

    static Part part(Entry<Part> set, String member, String mark, Moment at) {
        Part fact = set.fact();
        return new Part(
                mark,
                fact.design(),
                fact.batch(),
                fact.supplier(),
                fact.boughtOn(),
                fact.madeOn(),
                fact.useBy(),
                set.id(),
                member,
                at,
                "");
    }
}
