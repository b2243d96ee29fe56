package witnessmark.domain.image;

/** How a column is kept: whole numbers or text, nothing else. */
public enum Storage {
    INTEGER,
    TEXT
}
