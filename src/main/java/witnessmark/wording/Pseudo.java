package witnessmark.wording;

/** Turns a sentence pattern into its pseudo-language form, blanks and quotes kept. */
final class Pseudo {
    private static final String PLAIN = "AEIOUaeiouncsyzdlgrt";
    private static final String ODD = "ÅÉÎÖÛàéîöûñçšýžďļğŕţ";

    private Pseudo() {}

    static String of(String pattern) {
        StringBuilder odd = new StringBuilder("[");
        int depth = 0;
        int letters = 0;
        for (char c : pattern.toCharArray()) {
            depth += c == '{' ? 1 : 0;
            int at = depth == 0 ? PLAIN.indexOf(c) : -1;
            odd.append(at < 0 ? c : ODD.charAt(at));
            letters += depth == 0 && Character.isLetter(c) ? 1 : 0;
            depth -= c == '}' ? 1 : 0;
        }
        odd.append(" ~".repeat(Math.max(0, letters / 6)));
        return odd.append(']').toString();
    }
}
