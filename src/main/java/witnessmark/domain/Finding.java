package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;

/**
 * One piece of evidence: a mark on a part when an engine was taken down, or something seen that speaks to an incident.
 *
 * @param incident to which incident it speaks, or null
 * @param engine in which engine, or null
 * @param build in which build of it, or null
 * @param part on which part or set, or null
 * @param member the member of the set; empty for the whole
 * @param place where on the engine, or null for what is on none
 * @param number at which cylinder, rod or main bearing, counted from 1; null for none
 * @param spot where there, as the crew says it: upper, thrust side, exhaust 3B; empty when it need not be said
 * @param mark what it is, or null when only words say
 * @param how how far it has gone, or null when nobody judged
 * @param face on which face, or null
 * @param x its place on that face from the front end, or null
 * @param y its place on that face from the inlet edge, or null
 * @param reading the reading that says it, or null
 * @param at when it was seen
 * @param by who saw it
 * @param words what was seen; never empty when there is no mark
 * @param aroundDegrees how far round its part, 0 to 359, or null; from where it is counted goes by the place
 * @param outPercent how far out or along it, 0 to 100, or null
 */
public record Finding(
        @Nullable Id<Incident> incident,
        @Nullable Id<Engine> engine,
        @Nullable Id<Build> build,
        @Nullable Id<Part> part,
        String member,
        @Nullable FindingPlace place,
        @Nullable Integer number,
        String spot,
        @Nullable FindingMark mark,
        @Nullable HowMarked how,
        @Nullable FaceKind face,
        @Nullable Length x,
        @Nullable Length y,
        @Nullable Id<Reading> reading,
        Moment at,
        String by,
        String words,
        @AddedLater @Nullable Integer aroundDegrees,
        @AddedLater @Nullable Integer outPercent)
        implements Fact {
    public Finding {
        if (incident == null && engine == null && part == null) {
            throw new IllegalArgumentException("a finding is of an incident, an engine or a part");
        }
        if (mark == null && words.isBlank()) {
            throw new IllegalArgumentException("a finding says what was seen");
        }
        if (number != null && number < 1) {
            throw new IllegalArgumentException("cylinders and bearings are counted from 1");
        }
        if ((x == null) != (y == null) || x != null && face == null) {
            throw new IllegalArgumentException("a place on a face has a face and both its lengths");
        }
        if ((aroundDegrees == null) != (outPercent == null) || aroundDegrees != null && place == null) {
            throw new IllegalArgumentException("a place on a part is on something and has both its figures");
        }
        if (aroundDegrees != null && outPercent != null && !PartSpot.isWithin(aroundDegrees, outPercent)) {
            throw new IllegalArgumentException("a place on a part is within it");
        }
    }

    @Override
    public Moment happened() {
        return at;
    }

    /** The same with another mark. */
    public Finding marked(FindingMark next, @Nullable HowMarked far) {
        return with(incident, spot, next, far, words, aroundDegrees, outPercent);
    }

    /** The same, so far gone. */
    public Finding judged(HowMarked far) {
        return with(incident, spot, mark, far, words, aroundDegrees, outPercent);
    }

    /** The same in other words. */
    public Finding told(String where, String seen) {
        return with(incident, where, mark, how, seen, aroundDegrees, outPercent);
    }

    /** Where on its part, or null where nobody said. */
    public @Nullable PartSpot onPart() {
        return aroundDegrees == null || outPercent == null ? null : new PartSpot(aroundDegrees, outPercent);
    }

    /** The same elsewhere on its part, or nowhere on it in particular. */
    public Finding placed(@Nullable PartSpot on) {
        return with(incident, spot, mark, how, words, on == null ? null : on.around(), on == null ? null : on.out());
    }

    /** The same as evidence of an incident, or of none. */
    public Finding evidenceOf(@Nullable Id<Incident> next) {
        return with(next, spot, mark, how, words, aroundDegrees, outPercent);
    }

    private Finding with(
            @Nullable Id<Incident> of,
            String where,
            @Nullable FindingMark next,
            @Nullable HowMarked far,
            String seen,
            @Nullable Integer around,
            @Nullable Integer out) {
        return new Finding(
                of, engine, build, part, member, place, number, where, next, far, face, x, y, reading, at, by, seen,
                around, out);
    }
}
