/** Tests of the words of the job sheet, against what Before we go shows of the same day. */
@NullMarked
package witnessmark.launch.jobsheet;

import org.jspecify.annotations.NullMarked;
