package witnessmark.desktop.builds;

/**
 * One thing that can be picked.
 *
 * @param key what the field holds when it is picked; empty for none
 * @param words how it reads
 */
record Option(String key, String words) {
    @Override
    public String toString() {
        return words;
    }
}
