/** The shipped sample season as a test: its printed tables are what the program must come to, cell by cell. */
package witnessmark.sample;
