package witnessmark.desktop.start;

/**
 * One problem as a row.
 *
 * @param number its turn, from 1
 * @param place where it stands in the files, empty when nowhere in particular
 * @param happened what happened
 * @param remedy what to do
 * @param whole all of it in one sentence
 */
record ProblemLine(int number, String place, String happened, String remedy, String whole) {}
