package witnessmark.abuse;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a program had said by some moment: which record has which revision as far as saved, and what it was at. After a
 * power cut the logbook holds what was saved, or that and the whole of what it was at.
 */
final class SaidSoFar {
    private final Map<String, Long> saved = new HashMap<>();
    private Map<String, Long> withBegun = Map.of();
    private final List<String> drafts = new ArrayList<>(List.of(""));
    private final List<String> backups = new ArrayList<>();
    private boolean made;

    /** What a program finds that begins with these records and this draft. */
    static SaidSoFar startingWith(Map<String, Long> records, String draft) {
        SaidSoFar said = new SaidSoFar();
        said.made = true;
        said.saved.putAll(records);
        said.take("drafted " + draft);
        return said;
    }

    void take(String lines) {
        lines.lines().forEach(line -> {
            int end = line.indexOf(' ');
            String verb = end < 0 ? line : line.substring(0, end);
            String rest = line.substring(end + 1);
            switch (verb) {
                case "made" -> made = true;
                case "begins" -> {
                    withBegun = new HashMap<>(saved);
                    put(withBegun, rest);
                }
                case "refused" -> withBegun = Map.of();
                case "saved" -> {
                    put(saved, rest);
                    withBegun = Map.of();
                }
                case "drafts" -> drafts.add(rest);
                case "drafted" -> {
                    drafts.clear();
                    drafts.add(rest);
                }
                case "backup" -> backups.add(rest);
                default -> {}
            }
        });
    }

    private static void put(Map<String, Long> into, String entries) {
        for (String entry : entries.split(" ")) {
            int colon = entry.lastIndexOf(':');
            into.put(entry.substring(0, colon), Long.valueOf(entry.substring(colon + 1)));
        }
    }

    boolean isMade() {
        return made;
    }

    List<String> backups() {
        return List.copyOf(backups);
    }

    /** What is wrong with the records found; empty when nothing. */
    String wrongIn(Map<String, Long> found, String draft) {
        if (!found.equals(saved) && !(found.equals(withBegun) && !withBegun.isEmpty())) {
            Map<String, Long> lost = new HashMap<>(saved);
            lost.entrySet().removeAll(found.entrySet());
            return lost.isEmpty() ? "half of a change" : lost(lost, found);
        }
        return drafts.contains(draft) ? "" : "a draft is lost";
    }

    private static String lost(Map<String, Long> lost, Map<String, Long> found) {
        Map.Entry<String, Long> one = lost.entrySet().iterator().next();
        return "lost of what was saved: " + lost.size() + ", as " + one.getKey() + ":" + one.getValue() + ", found "
                + found.get(one.getKey());
    }
}
