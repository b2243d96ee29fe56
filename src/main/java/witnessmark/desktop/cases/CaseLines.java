package witnessmark.desktop.cases;

/**
 * The investigation of an incident in words.
 *
 * @param incident the text form of its identity
 * @param mark the short name it goes by
 * @param way the engine's way up to it
 * @param evidence findings against causes
 * @param prompts what the trade asks
 */
public record CaseLines(String incident, String mark, WayLines way, EvidenceLines evidence, PromptLines prompts) {}
