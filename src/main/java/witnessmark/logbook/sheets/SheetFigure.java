package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Coded;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.MeasureKind;

/**
 * A figure of a build sheet, as a field holds it.
 *
 * @param build whose sheet
 * @param kind which figure
 * @param number at which cylinder or main bearing; null for all of them, or the engine's one
 * @param engine whose build
 */
record SheetFigure(
        Entry<Build> build, MeasureKind kind, @Nullable Integer number, Engine engine) {
    private static final String BETWEEN = "/";

    /** What the field holds for it. */
    static String key(Id<Build> build, MeasureKind kind, @Nullable Integer number) {
        return build.text() + BETWEEN + kind.code() + BETWEEN + (number == null ? "" : number);
    }

    /** What stands in the field, where it is one and its build is there still. */
    static Optional<SheetFigure> read(SheetSight sight, String key) {
        String[] parts = key.split(BETWEEN, -1);
        if (parts.length != 3 || !parts[2].matches("[0-9]{0,2}")) {
            return Optional.empty();
        }
        Optional<MeasureKind> kind = Coded.find(MeasureKind.class, parts[1]);
        return sight.find(Build.class, parts[0])
                .flatMap(build -> kind.map(known -> new SheetFigure(
                        build,
                        known,
                        parts[2].isEmpty() ? null : Integer.valueOf(parts[2]),
                        sight.facts().of(Engine.class).get(build.fact().engine()))));
    }

    Choice choice() {
        List<Object> facts = new ArrayList<>(List.of(kind));
        if (number != null) {
            facts.add(number);
        }
        facts.add(SheetNote.of("of_build", engine.number(), build.fact().number()));
        return new Choice(key(build.id(), kind, number), facts);
    }
}
