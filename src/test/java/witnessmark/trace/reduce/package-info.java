/** State machines over samples, looked at from inside. */
package witnessmark.trace.reduce;
