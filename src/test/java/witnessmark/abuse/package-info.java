/** What the program must survive: being killed while it saves, files pulled away, things that are no logbooks. */
package witnessmark.abuse;
