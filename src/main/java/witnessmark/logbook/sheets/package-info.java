/**
 * Short sheets by which a team writes down what it has: cars, engines, parts and where they are, events, limits, work,
 * builds, people, readings, and what is held, signed clear and run on. Where {@code logbook.run} logs what ran, these say what there is to run. Each sheet is a class: its
 * fields, what stands in them at first, what can be picked, and which entries the typed text makes. Open
 * {@link witnessmark.logbook.sheets.WriteSheet} first, then {@link witnessmark.logbook.sheets.LogSheet}.
 */
@NullMarked
package witnessmark.logbook.sheets;

import org.jspecify.annotations.NullMarked;
