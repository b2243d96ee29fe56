package witnessmark.desktop.engines;

import org.jspecify.annotations.Nullable;

/**
 * One head, or another part that is in no engine, as a row shows it.
 *
 * @param id the text form of its identity
 * @param mark as marked
 * @param where the engine or car it is in, or came off, and when
 * @param running its whole running time
 * @param sinceSkim a head's running time since the last skim; null for another part
 */
record PartLine(
        String id,
        String mark,
        String where,
        Shown running,
        @Nullable Shown sinceSkim) {}
