package witnessmark.desktop.beforewego;

/**
 * A short report of three lines at the side of the page: a car's last run, or what an engine gained.
 *
 * @param title "Car 41, engine K03"
 * @param first "Sun 5 Jul, race 2: 27 min 42 s, 12 laps"
 * @param second "Highest 8 230 rpm, water 84 °C"
 * @param record the text of the identity of the run or engine it opens
 */
public record OutLine(String title, String first, String second, String record) {}
