package witnessmark.wording;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Piece;
import witnessmark.cost.result.Place;
import witnessmark.domain.CostBasis;
import witnessmark.domain.CostLine;
import witnessmark.domain.Facts;
import witnessmark.quantity.Money;
import witnessmark.quantity.RunningTime;

/** Words the line a piece is cut from, the same on the screen and on paper. */
public final class PieceWords {
    private static final long MINUTE = 60_000;

    private final Texts texts;
    private final Measures measures;
    private final Facts facts;

    public PieceWords(Texts texts, Measures measures, Facts facts) {
        this.texts = texts;
        this.measures = measures;
        this.facts = facts;
    }

    /** The line a piece is cut from. */
    public CostLine line(Piece piece) {
        return facts.of(CostLine.class).get(piece.line());
    }

    /** What was paid for all of its line, in the home currency. */
    public Money paid(Piece piece) {
        return home(piece, line(piece).paid());
    }

    /** What of its line came back, in the home currency. */
    public Money back(Piece piece) {
        return home(piece, line(piece).recovered());
    }

    /** What of its line was kept for later, in the home currency. */
    public Money kept(Piece piece) {
        return home(piece, line(piece).carried());
    }

    /** What else is to be said of it: due anyway, still to be paid, its rate, whether it is a share of its line. */
    public List<String> said(Piece piece) {
        CostLine line = line(piece);
        List<String> said = new ArrayList<>();
        if (piece.planned()) {
            said.add(texts.get("season.line.planned"));
        }
        if (piece.allocated()) {
            said.add(texts.get("season.line.allocated"));
        }
        if (line.basis() == CostBasis.COMMITTED) {
            said.add(texts.get("season.line.committed"));
        }
        @Nullable Integer minutes = line.minutes();
        if (line.basis() == CostBasis.VALUED && minutes != null) {
            said.add(texts.get("season.line.work", measures.hours(new RunningTime(minutes * MINUTE))));
        }
        @Nullable BigDecimal rate = line.rate();
        if (rate != null) {
            said.add(new MoneyWords(texts, measures).atRate(line.paid(), rate));
        }
        said.add(share(piece, line));
        said.removeIf(String::isEmpty);
        return said;
    }

    /** Where a piece is not all of its line that counts on its day. */
    private String share(Piece piece, CostLine line) {
        LocalDate day = line.day();
        if (!piece.day().equals(day)) {
            return texts.get("season.line.carriedFrom", measures.date(day));
        }
        Money whole = piece.place() == Place.KEPT
                ? kept(piece)
                : paid(piece).minus(back(piece)).minus(kept(piece));
        return piece.amount().equals(whole) ? "" : texts.get("season.line.share", measures.amount(whole));
    }

    /** A piece's line has its rate where it is in another currency, or it would be none. */
    private Money home(Piece piece, Money amount) {
        Currency home = piece.amount().currency();
        return amount.currency().equals(home)
                ? amount
                : amount.in(home, Objects.requireNonNull(line(piece).rate()));
    }
}
