/** Text into samples, looked at from inside. */
package witnessmark.trace.text;
