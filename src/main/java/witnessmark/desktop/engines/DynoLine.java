package witnessmark.desktop.engines;

import java.time.LocalDate;

/**
 * One dyno sheet in the list of its engine, in words.
 *
 * @param id the text form of its identity
 * @param sorted by which day it is sorted
 * @param day the day of its run
 * @param power highest power in kW; a dash where nothing is corrected
 * @param torque highest torque in N·m; a dash likewise
 * @param change against the baseline in percent; empty where it is not compared
 * @param verdict in a word or two
 */
record DynoLine(String id, LocalDate sorted, String day, String power, String torque, String change, String verdict) {}
