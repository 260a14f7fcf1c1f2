package stirtide.planner.service;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.logging.ConsoleHandler;
import java.util.logging.Formatter;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import stirtide.events.json.ContractJson;

/** The log of the service on standard error: one entry a line, as text for people or as JSON for programs. */
public final class LogOutput extends Formatter {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss.SSSX").withZone(ZoneOffset.UTC);

    private final Form form;

    private LogOutput(Form form) {
        this.form = form;
    }

    /** How an entry is written. */
    public enum Form {
        /** Time, level, part of the program, message; reasons of failures on lines of their own. */
        TEXT,
        /** One object a line: {@code time}, {@code level}, {@code part}, {@code message} and, of a failure, {@code failure}. */
        JSON
    }

    /** Sends everything of this level or above to standard error, and nothing anywhere else. */
    public static void start(Form form, Level least) {
        LogManager.getLogManager().reset();
        ConsoleHandler handler = new ConsoleHandler();
        handler.setLevel(Level.ALL);
        handler.setFormatter(new LogOutput(form));
        Logger root = Logger.getLogger("");
        root.setLevel(least);
        root.addHandler(handler);
    }

    @Override
    public String format(LogRecord entry) {
        String message = oneLine(formatMessage(entry));
        return form == Form.JSON ? json(entry, message) : text(entry, message);
    }

    private static String text(LogRecord entry, String message) {
        return TIME.format(entry.getInstant()) + " " + level(entry) + " " + entry.getLoggerName() + " - " + message
                + "\n" + failure(entry);
    }

    private static String json(LogRecord entry, String message) {
        ObjectNode line = ContractJson.mapper().createObjectNode();
        line.put("time", TIME.format(entry.getInstant()));
        line.put("level", level(entry));
        line.put("part", entry.getLoggerName());
        line.put("message", message);
        if (entry.getThrown() != null) line.put("failure", failure(entry));
        return line + "\n";
    }

    private static String level(LogRecord entry) {
        int level = entry.getLevel().intValue();
        if (level >= Level.SEVERE.intValue()) return "ERROR";
        if (level >= Level.WARNING.intValue()) return "WARN";
        return level >= Level.INFO.intValue() ? "INFO" : "DEBUG";
    }

    /** What came from outside must not look like an entry of its own. */
    private static String oneLine(String message) {
        return message.replace("\r", "\\r").replace("\n", "\\n");
    }

    private static String failure(LogRecord entry) {
        if (entry.getThrown() == null) return "";
        StringWriter lines = new StringWriter();
        entry.getThrown().printStackTrace(new PrintWriter(lines));
        return lines.toString();
    }
}
