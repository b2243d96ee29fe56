package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.PutAside;
import witnessmark.ledger.result.StockLevel;
import witnessmark.ledger.result.Where;
import witnessmark.quantity.Moment;

/** Where a part is, since when and why, in the words of the crew. */
public final class WhereWords {
    private final Texts texts;
    private final Measures measures;
    private final OutWords out;

    public WhereWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.out = new OutWords(texts, measures);
    }

    /**
     * Where it is, short: "on the shelf", "in quarantine", "with machinist G1".
     *
     * @param place the name of the engine or car it is fitted in
     */
    public String where(Where where, String place) {
        return switch (where.state()) {
            case FITTED -> place;
            case SPARE -> texts.get("shelf.where.spare");
            case QUARANTINE -> texts.get("shelf.where.quarantine");
            case AWAY -> out.with(where.away());
            case SCRAPPED -> texts.get("shelf.where.scrapped");
            case SPLIT -> texts.get("shelf.where.split");
        };
    }

    /** Since when it is there; empty when nothing says so. */
    public String since(Where where) {
        Moment since = where.since();
        return since == null ? "" : measures.date(since.day());
    }

    /**
     * Why it is there and what is to be known of that, a sentence's part each: why it was put aside, for what it went
     * and whether it is late, which members are aside.
     */
    public List<String> why(Where where) {
        List<String> said = new ArrayList<>();
        if (where.late() && where.away() != null) {
            said.add(out.promised(where.away()));
        }
        for (PutAside aside : where.asides()) {
            said.add(aside(aside, where.state()));
        }
        if (where.away() != null) {
            said.addAll(away(where.away(), where.state() == Where.State.AWAY));
        }
        for (PutAside aside : where.members()) {
            said.add(texts.get(
                    aside.kind() == PutAside.Kind.SCRAPPED ? "shelf.member.scrapped" : "shelf.member.quarantine",
                    aside.member(),
                    measures.shortDate(aside.from().day()),
                    aside.words()));
        }
        said.removeIf(String::isBlank);
        return said;
    }

    /**
     * That a borrowed part is to go back: "to go back to K06".
     *
     * @param home the engine or car it came from; empty when nothing says
     */
    public String goesBack(String home) {
        return home.isEmpty() ? texts.get("shelf.borrowed") : texts.get("shelf.borrowed.from", home);
    }

    /** How a batch stands: "5 on the shelf, 3 kept for jobs, 2 free", and what the design is short of. */
    public String stock(StockLevel level) {
        List<String> said = new ArrayList<>();
        said.add(texts.get("shelf.stock.there", level.onShelf(), level.kept(), level.free()));
        said.add(stands(level));
        said.removeIf(String::isEmpty);
        return measures.row(said);
    }

    /** What a design is short of, what is on order of it, that a batch is past its printed date; empty when nothing is. */
    public String stands(StockLevel level) {
        List<String> said = new ArrayList<>();
        if (level.freeOfDesign() < 0) {
            said.add(texts.get("shelf.stock.promised", -level.freeOfDesign()));
        }
        if (level.missing() > 0) {
            said.add(texts.get("shelf.stock.missing", level.missing(), level.leastOfDesign()));
        }
        if (level.onOrder() > 0) {
            said.add(texts.get("shelf.stock.onOrder", level.onOrder()));
        }
        if (level.pastUse() && level.onShelf() > 0) {
            said.add(texts.get("shelf.stock.pastUse"));
        }
        return said.isEmpty() ? "" : measures.row(said);
    }

    /** What put a part aside, as a heading of the time it was: "quarantine", "with machinist G1", "out of use". */
    public String place(PutAside aside) {
        return switch (aside.kind()) {
            case QUARANTINE -> texts.get("shelf.where.quarantine");
            case AWAY -> texts.get("shelf.where.away", aside.words());
            case SCRAPPED -> texts.get("shelf.where.scrapped");
        };
    }

    /** Why it was put aside, by whom, and what was decided or came of it. */
    public String reason(PutAside aside) {
        List<String> said = new ArrayList<>();
        if (aside.entry().fact() instanceof Quarantine fact) {
            said.add(fact.why());
            said.add(fact.to() == null ? "" : fact.released());
        } else if (aside.entry().fact() instanceof SentOut fact) {
            said.add(fact.asked());
            said.add(fact.back() == null ? "" : fact.result());
        } else if (aside.entry().fact() instanceof Scrapping fact) {
            said.add(fact.why());
            said.add(fact.by());
        }
        said.removeIf(String::isBlank);
        return said.isEmpty() ? "" : measures.row(said);
    }

    /** Why it is there; of what does not say where it is, that it is so too. Being away is said with its promise. */
    private String aside(PutAside aside, Where.State state) {
        if (aside.kind() == PutAside.Kind.AWAY) {
            return "";
        }
        boolean says =
                state == (aside.kind() == PutAside.Kind.SCRAPPED ? Where.State.SCRAPPED : Where.State.QUARANTINE);
        return says
                ? aside.words()
                : texts.get(
                        "shelf.aside.too",
                        place(aside),
                        measures.shortDate(aside.from().day()),
                        aside.words());
    }

    private List<String> away(Away away, boolean itself) {
        SentOut sent = away.sent().fact();
        List<String> said = new ArrayList<>();
        if (!itself) {
            said.add(texts.get("shelf.away.engine", sent.sentTo()));
        }
        said.add(sent.asked());
        if (!itself || !away.late()) {
            said.add(out.promised(away)); // that it is late itself is said first
        }
        said.add(out.silent(away));
        return said;
    }
}
