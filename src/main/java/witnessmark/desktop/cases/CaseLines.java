package witnessmark.desktop.cases;

/**
 * The investigation of an incident in words.
 *
 * @param incident the text form of its identity
 * @param mark the short name it goes by
 * @param evidence findings against causes
 */
public record CaseLines(String incident, String mark, EvidenceLines evidence) {}
