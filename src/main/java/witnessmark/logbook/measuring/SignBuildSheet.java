package witnessmark.logbook.measuring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import witnessmark.domain.Concession;
import witnessmark.domain.Entry;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.Id;
import witnessmark.domain.SignOff;
import witnessmark.domain.SignedCheck;
import witnessmark.domain.Standing;
import witnessmark.fit.result.Bound;
import witnessmark.fit.result.Check;
import witnessmark.logbook.port.Ids;
import witnessmark.quantity.Moment;

/**
 * Signs a build sheet: keeps how every check stood, against which limit, and what accepted it. It says that somebody
 * looked and signed; never that an engine may run.
 */
public final class SignBuildSheet {
    private final Ids ids;

    public SignBuildSheet(Ids ids) {
        this.ids = ids;
    }

    /** What is written when a sheet is signed as it stands. */
    public List<Entry<?>> entries(SheetPage page, Moment at, String by, String second, String words) {
        List<Entry<?>> entries = new ArrayList<>();
        Id<SignOff> id = ids.next();
        entries.add(entry(id, new SignOff(page.build().id(), at, by, second, words)));
        checks(page, id).forEach(check -> entries.add(entry(ids.next(), check)));
        return entries;
    }

    /** How every check stands, as it is kept with a signing. */
    public static List<SignedCheck> checks(SheetPage page, Id<SignOff> signOff) {
        return page.answers().stream()
                .flatMap(answer -> answer.checks().stream())
                .map(check -> kept(signOff, page, check))
                .toList();
    }

    private static SignedCheck kept(Id<SignOff> signOff, SheetPage page, Check check) {
        Bound least = check.bounds().least();
        Bound most = check.bounds().most();
        boolean asks = check.verdict() == FitVerdict.OUTSIDE || check.verdict() == FitVerdict.NOT_MEASURED;
        Optional<Concession> accepted = page.accepts(check).map(Entry::fact).filter(concession -> asks);
        return new SignedCheck(
                signOff,
                check.place().kind(),
                check.place().number(),
                check.place().spot(),
                check.value(),
                least == null ? null : least.value(),
                most == null ? null : most.value(),
                least == null ? most == null ? "" : most.source() : least.source(),
                check.verdict(),
                accepted.map(concession -> concession.why() + ", " + concession.by())
                        .orElse(""));
    }

    private static <F extends witnessmark.domain.Fact> Entry<F> entry(Id<F> id, F fact) {
        return new Entry<>(id, fact, Standing.IN_FORCE, null, 1);
    }
}
