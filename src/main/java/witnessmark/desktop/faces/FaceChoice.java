package witnessmark.desktop.faces;

/**
 * Something to choose on the page of faces.
 *
 * @param key the text form of an identity; empty for none
 * @param words how it reads
 */
record FaceChoice(String key, String words) {
    static FaceChoice none(String words) {
        return new FaceChoice("", words);
    }
}
