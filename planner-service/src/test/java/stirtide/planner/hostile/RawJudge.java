package stirtide.planner.hostile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says what is wrong with what came back for raw bytes: nothing at all is right, and so is any refusal. */
final class RawJudge {
    /** The library repeats the version as it was sent, however it was sent. */
    private static final Pattern HEAD = Pattern.compile("[^ \r\n]+ ([0-9]{3}) [^\r\n]*\r\n((?:[^\r\n]+\r\n)*)\r\n");

    private final Judge judge;

    RawJudge(ContractBook contract) {
        this.judge = new Judge(contract);
    }

    /** Every answer in the text must be a problem document: nobody is let in without a token. */
    List<String> faults(Attempt attempt, String text) {
        List<String> faults = new ArrayList<>();
        int at = 0;
        Matcher head = HEAD.matcher(text);
        while (at < text.length()) {
            if (!head.find(at) || head.start() != at) {
                faults.add("no HTTP: " + text.substring(at, Math.min(text.length(), at + 80)));
                break;
            }
            Map<String, String> headers = headers(head.group(2));
            int end = end(text, head.end(), headers);
            Answer answer =
                    new Answer(Integer.parseInt(head.group(1)), headers, text.substring(head.end(), end), false);
            at = end;
            // The library's own word for a version of HTTP it does not speak: no body, and the end of the line.
            if (answer.status() == 100
                    || answer.status() == 501 && answer.body().isEmpty()) continue;
            faults.addAll(judge.faults(attempt, answer));
        }
        return faults;
    }

    private static int end(String text, int from, Map<String, String> headers) {
        String length = headers.get("content-length");
        return length == null ? from : Math.min(text.length(), from + Integer.parseInt(length));
    }

    private static Map<String, String> headers(String lines) {
        Map<String, String> headers = new TreeMap<>();
        lines.lines()
                .forEach(line -> headers.put(
                        line.replaceFirst(":.*", "").toLowerCase(java.util.Locale.ROOT),
                        line.replaceFirst("[^:]*:\\s*", "")));
        return headers;
    }
}
