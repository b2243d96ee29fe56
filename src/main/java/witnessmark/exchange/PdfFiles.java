package witnessmark.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import witnessmark.logbook.port.Paper;
import witnessmark.logbook.port.PaperFiles;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Pages for printing as PDF files. */
public final class PdfFiles implements PaperFiles {
    private static final String BEGINS = "%PDF-";

    /** Who made a PDF is written in it in plain letters. */
    private static final String OURS = "Witness Mark";

    /** Ours have a few pages; what is larger is another's, and is not read. */
    private static final long MOST = 16L << 20;

    private final WholeFile files;

    public PdfFiles() {
        this(new RealDisk());
    }

    PdfFiles(Disk disk) {
        this.files = new WholeFile(disk);
    }

    /** At the place there are the pages as they were, or all of the new ones. */
    @Override
    public Outcome<Integer> write(Paper paper, Path file) {
        try {
            if (Files.exists(file) && !isOurs(file)) {
                return Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, file.toString()));
            }
            files.write(paper.bytes(), file);
            return Outcome.worked(paper.pages());
        } catch (IOException e) {
            return Outcome.didNot(WriteFailure.problem(file, e));
        }
    }

    private static boolean isOurs(Path file) throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) > MOST) {
            return false;
        }
        String text = Files.readString(file, StandardCharsets.ISO_8859_1);
        return text.startsWith(BEGINS) && text.contains(OURS);
    }
}
