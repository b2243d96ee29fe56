/** The program as a whole. */
package witnessmark.launch;
