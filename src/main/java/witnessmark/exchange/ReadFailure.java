package witnessmark.exchange;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a file could not be read, as people say it. */
final class ReadFailure {
    private ReadFailure() {}

    static String words(Exception error) {
        Throwable cause = error instanceof DirectoryIteratorException || !(error instanceof IOException)
                ? error.getCause()
                : error;
        if (cause instanceof AccessDeniedException) {
            return "whoever is logged in on this computer may not read it";
        }
        if (cause instanceof NoSuchFileException) {
            return "it is no longer there";
        }
        if (cause instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        String said = cause == null ? null : cause.getMessage();
        return said == null ? "the disk did not answer" : said;
    }
}
