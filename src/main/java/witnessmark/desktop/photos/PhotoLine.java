package witnessmark.desktop.photos;

import witnessmark.domain.Entry;
import witnessmark.domain.Photo;

/**
 * A photo on a page.
 *
 * @param title what it shows
 * @param when when it was taken
 * @param about of what, when, by whom
 */
record PhotoLine(Entry<Photo> entry, String title, String when, String about) {
    String id() {
        return entry.id().text();
    }
}
