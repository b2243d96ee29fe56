/**
 * What the program must survive: being killed while it saves, a power cut, a disk that fails or fills, files damaged,
 * pulled away or mixed up, files that are no logbooks or hostile ones, clocks that are wrong.
 *
 * <p>Each fault is a test of its own. It drives the real way of saving and opening, prints one line with its seed and
 * what the fault came to, and is itself tested: a loss planted on purpose has to be found. "Acknowledged" means that
 * the program said saved.
 *
 * <p>To read a failure: its message names the seed and, for each finding, which try it was and what was done to the
 * file. {@code mvn test -Dtest=TheTest -Dseed=<number>} repeats it exactly; {@code -Dabuse.<fault>=<count>} sets how
 * often, and {@code mvn -Plong test} runs every fault of this package with the long counts ({@link
 * witnessmark.abuse.Numbers}). Power cuts and failing calls need a C compiler ({@code cc}); without one they are
 * skipped, unless {@code -Dfaults.required=true} makes that a failure.
 */
package witnessmark.abuse;
