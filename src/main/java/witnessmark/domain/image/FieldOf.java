package witnessmark.domain.image;

import witnessmark.domain.Fact;

/** A part of a kind of entry, for a problem that is about it. */
public record FieldOf(Class<? extends Fact> kind, Component component) {}
