package stirtide.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import stirtide.planner.access.OwnerOnlyFile;
import stirtide.planner.cli.CommandException;

/** The file of a prep sheet for a printer. */
final class SheetFile {
    private static final String SUFFIX = ".html";

    private SheetFile() {}

    /** Accepts names that end in {@value #SUFFIX}, so that a slip replaces none of the salon's own files. */
    static final class Name implements ITypeConverter<Path> {
        @Override
        public Path convert(String text) {
            if (text.endsWith(SUFFIX) && text.indexOf('\0') < 0) return Path.of(text);
            throw new TypeConversionException("'" + text + "' is not accepted; accepted is a file that ends in "
                    + SUFFIX + ", such as prep.html");
        }
    }

    /**
     * Writes the file whole or not at all, for its owner only, as it names clients. A file that is there is replaced.
     *
     * @throws CommandException with {@link CommandException#CANNOT_CREATE} when it cannot be written
     */
    static void write(Path file, String page) {
        if (Files.exists(file) && !Files.isRegularFile(file))
            throw new CommandException(
                    CommandException.CANNOT_CREATE, file + " is no file; name a file that is new or may be replaced");
        try {
            OwnerOnlyFile.write(file, page);
        } catch (IOException failed) {
            throw new CommandException(
                    CommandException.CANNOT_CREATE,
                    file + " cannot be written; name a file in a folder that is there and may be written");
        }
    }
}
