package witnessmark.store;

/**
 * Who has a logbook open.
 *
 * @param host the computer
 * @param person who sits at it, as the system calls him or her
 */
public record Holder(String host, String person) {
    public Holder {
        host = oneLine(host);
        person = oneLine(person);
    }

    /** This computer and its user, asked of the system without the network. */
    public static Holder ofThisMachine() {
        String host = System.getenv("COMPUTERNAME");
        if (host == null) {
            host = System.getenv("HOSTNAME");
        }
        if (host == null) {
            host = HostName.written();
        }
        return new Holder(host, System.getProperty("user.name", "somebody"));
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\p{Cntrl}", " ").strip();
    }
}
