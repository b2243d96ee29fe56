/**
 * Benches: mains that measure and print, never tests with a clock. Each says in its first lines how to run it.
 */
package witnessmark.bench;
