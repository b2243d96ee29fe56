package witnessmark.desktop.strip;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.FindingMark;

/** Something to choose on the page of a strip. */
sealed interface StripChoice {
    /** How it reads. */
    String words();

    /** @param key the text form of the identity of a build or an incident; empty for none */
    record Of(String key, String words) implements StripChoice {}

    /** @param seen one of several at the position */
    record Found(StripLines.Seen seen) implements StripChoice {
        @Override
        public String words() {
            return seen.reads();
        }
    }

    /** @param mark null for none yet */
    record Mark(@Nullable FindingMark mark, String words) implements StripChoice {}
}
