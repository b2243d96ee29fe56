package witnessmark.exchange;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file could not be read or written, as people say it. */
final class SystemWords {
    private SystemWords() {}

    static String of(Exception error) {
        Throwable cause = error instanceof DirectoryIteratorException || !(error instanceof IOException)
                ? error.getCause()
                : error;
        if (cause instanceof AccessDeniedException) {
            return "whoever is logged in on this computer is not allowed to";
        }
        if (cause instanceof NoSuchFileException) {
            return "there is nothing at that place";
        }
        if (cause instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        String said = cause == null ? null : cause.getMessage();
        return said == null ? "the disk did not answer" : said;
    }
}
