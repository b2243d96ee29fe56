package witnessmark.architecture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The map of rooms: what each may see of the others, and why no more. Lower rooms first: a line can only name rooms
 * written above it, so nobody looks up. A room is a package directly under {@code witnessmark}, with all below it.
 */
enum Room {
    QUANTITY("a quantity knows only arithmetic, so that every room can use it", Sight.nothing()),
    OUTCOME("an outcome carries anybody's facts, so it knows nobody's types", Sight.nothing()),
    STATISTICS(
            "statistics take and give numbers, whatever was measured",
            Sight.nothing().whole(OUTCOME)),
    MECHANICS(
            "mechanics are published formulas, whichever engine they serve",
            Sight.nothing().whole(QUANTITY, OUTCOME)),
    DOMAIN(
            "what was written down must not depend on what is made of it",
            Sight.nothing().whole(QUANTITY, OUTCOME)),
    LEDGER(
            "the ledger is a pure sum over what was written; all else is an argument",
            Sight.nothing().downFrom(DOMAIN)),
    FIT("fits are judged from measurements and mechanics alone", Sight.nothing().downFrom(DOMAIN, MECHANICS)),
    TRACE(
            "a trace is reduced while it is read, before lives are known",
            Sight.nothing().downFrom(DOMAIN, MECHANICS)),
    STUDY(
            "a study chooses samples from the ledger and calls statistics and published formulas",
            Sight.nothing().downFrom(LEDGER, STATISTICS, MECHANICS)),
    COST("costs are shared out by what the ledger says", Sight.nothing().downFrom(LEDGER)),
    PLAN("a plan weighs studies, costs and lives", Sight.nothing().downFrom(STUDY, COST)),
    PICTURE(
            "a picture is read from its file, whatever it shows",
            Sight.nothing().whole(OUTCOME)),
    LOGBOOK(
            "use cases serve window, command line and report alike, and reach outside by ports",
            Sight.nothing().downFrom(PLAN, FIT, TRACE)),
    WORDING(
            "a sentence is made from a result; it does not work one out",
            Sight.values().results(STATISTICS, MECHANICS, LEDGER, FIT, TRACE, STUDY, COST, PLAN)),
    STORE(
            "the store keeps what the ports hand it; deciding is for the use cases",
            Sight.values().portsOfLogbook().whole(PICTURE)),
    EXCHANGE(
            "exchange reads and writes for the ports; deciding is for the use cases",
            Sight.values().portsOfLogbook()),
    CHART(
            "a chart is described in quantities, so that it can draw any room's result",
            Sight.nothing().whole(QUANTITY)),
    REPORT(
            "a page is laid out from results; it fetches and computes nothing",
            Sight.values().whole(CHART, WORDING).results(STATISTICS, MECHANICS, LEDGER, FIT, TRACE, STUDY, COST, PLAN)),
    COMMAND(
            "the command line asks use cases and prints what they answer",
            Sight.values()
                    .whole(LOGBOOK, WORDING, REPORT)
                    .results(STATISTICS, MECHANICS, LEDGER, FIT, TRACE, STUDY, COST, PLAN)),
    DESKTOP(
            "the window asks use cases and shows what they answer",
            Sight.values()
                    .whole(LOGBOOK, WORDING, CHART, REPORT)
                    .results(STATISTICS, MECHANICS, LEDGER, FIT, TRACE, STUDY, COST, PLAN)),
    LAUNCH(
            "launch joins the rooms together",
            Sight.nothing().downFrom(LOGBOOK, WORDING, STORE, EXCHANGE, CHART, REPORT, COMMAND, DESKTOP));

    static final String ROOT = "witnessmark";

    private final String why;
    private final Sight sight;

    Room(String why, Sight sight) {
        this.why = why;
        this.sight = sight;
    }

    /** The rooms from {@link #QUANTITY} to {@link #PLAN}: the same arguments always give the same answer. */
    static List<Room> pure() {
        return Stream.of(values()).filter(room -> room.compareTo(PLAN) <= 0).toList();
    }

    /** The room a package lies in; empty when the map lists none for it. */
    static Optional<Room> of(String packageName) {
        return Stream.of(values())
                .filter(room ->
                        packageName.equals(room.packageName()) || packageName.startsWith(room.packageName() + "."))
                .findFirst();
    }

    boolean maySee(Room other, String packageName) {
        return this == other || sight.reaches(other, packageName);
    }

    /** Why a sight is forbidden, for the one who met the rule. */
    String whyNot(Room other) {
        return "%s sees %s: %s".formatted(label(), sight.seenOf(other), why);
    }

    String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    String packageName() {
        return ROOT + "." + label();
    }

    Sight sight() {
        return sight;
    }
}
