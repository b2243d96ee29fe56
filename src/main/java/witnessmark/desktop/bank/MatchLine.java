package witnessmark.desktop.bank;

import java.time.LocalDate;
import witnessmark.logbook.bank.Reconciled;

/**
 * A line of a statement that is matched with nothing.
 *
 * @param line what it is
 * @param day as shown
 * @param amount what is left of it, as shown
 * @param perhaps what it most likely pays; empty when nothing is near
 */
record MatchLine(Reconciled.Line line, String day, String amount, String perhaps) {
    LocalDate when() {
        return line.bank().fact().day();
    }

    long minor() {
        return line.left().minor();
    }

    String words() {
        return line.bank().fact().text();
    }
}
