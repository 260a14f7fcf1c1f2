package stirtide.bar;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Sends standard output and errors to {@code bar.log} in the state folder, or nowhere when it cannot be written. */
final class ErrorLog {
    private ErrorLog() {}

    static void redirect(Path state) {
        try {
            Files.createDirectories(state);
            var log = new PrintStream(
                    new FileOutputStream(state.resolve("bar.log").toFile(), true), true, StandardCharsets.UTF_8);
            System.setOut(log);
            System.setErr(log);
        } catch (IOException noLog) {
            System.setOut(new PrintStream(PrintStream.nullOutputStream(), false, StandardCharsets.UTF_8));
            System.setErr(System.out);
        }
    }
}
