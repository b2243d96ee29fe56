/** The command line over the real store and the real folders. */
package witnessmark.command;
