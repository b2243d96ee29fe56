package witnessmark.desktop.keeping;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.port.LogbookCopies.Copy;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Moment;
import witnessmark.wording.Texts;

/** The copies there are of one logbook: here, in its second place, and where somebody looked. */
final class RestoreModel {
    private final KeepingContext context;
    private final ElsewhereWords words;
    private final Path target;
    private final @Nullable String identity;

    /** The copies listed, and the logbooks they are of. */
    record Listed(List<CopyLine> lines, int others) {}

    /**
     * @param target the logbook that is to come back
     * @param identity which logbook that is; null when it cannot be told
     */
    RestoreModel(KeepingContext context, ElsewhereWords words, Path target, @Nullable String identity) {
        this.context = context;
        this.words = words;
        this.target = target;
        this.identity = identity;
    }

    Path target() {
        return target;
    }

    /**
     * Those in the data folder and in the second place. First is the one in which something was saved last, which is not
     * always the one made last: a file that came from before is copied too. Blocks.
     */
    Listed kept() {
        List<Copy> all = new ArrayList<>(context.copies().kept());
        context.elsewhere()
                .place()
                .map(context.copies()::in)
                .filter(Outcome::didWork)
                .ifPresent(there -> all.addAll(there.orThrow()));
        return listed(all);
    }

    /** Those at a place. Blocks. */
    Outcome<Listed> in(Path place) {
        return context.copies().in(place).map(all -> new Listed(lines(all), 0));
    }

    /** What the check of one came to, in words. Blocks. */
    String check(Path copy) {
        List<Problem> found = context.copies().check(copy);
        return context.tools()
                .texts()
                .get(found.isEmpty() ? "keeping.copies.good" : "keeping.copies.bad", found.size());
    }

    private Listed listed(List<Copy> all) {
        Optional<String> wanted = Optional.ofNullable(identity);
        List<Copy> ours = wanted.isEmpty()
                ? all
                : all.stream()
                        .filter(copy -> copy.logbook().equals(wanted.get()))
                        .toList();
        List<Copy> shown = ours.isEmpty() ? all : ours;
        Set<String> others = all.stream()
                .map(Copy::logbook)
                .filter(id -> shown.stream().noneMatch(copy -> copy.logbook().equals(id)))
                .collect(Collectors.toSet());
        return new Listed(lines(shown), others.size());
    }

    private List<CopyLine> lines(List<Copy> copies) {
        return copies.stream()
                .map(this::line)
                .sorted(Comparator.comparing(CopyLine::upTo)
                        .thenComparing(CopyLine::count)
                        .thenComparing(CopyLine::when)
                        .reversed())
                .toList();
    }

    private String where(Path copy) {
        Texts texts = context.tools().texts();
        if (copy.startsWith(context.copies().folder())) {
            return texts.get("keeping.copies.here");
        }
        return context.elsewhere().place().filter(copy::startsWith).isPresent()
                ? texts.get("keeping.copies.second")
                : String.valueOf(copy.getParent());
    }

    private CopyLine line(Copy copy) {
        Moment run = copy.lastRun();
        Instant saved = copy.saved();
        return new CopyLine(
                copy.file(),
                words.full(copy.made()),
                copy.made(),
                copy.name(),
                saved == null ? context.tools().texts().get("keeping.copies.noSaving") : words.full(saved),
                saved == null ? Instant.MIN : saved,
                context.measures().number(copy.records()),
                copy.records(),
                run == null
                        ? context.tools().texts().get("keeping.copies.noRun")
                        : context.measures().fullMoment(run),
                where(copy.file()),
                context.tools().texts().get("keeping.copies.checking"));
    }
}
