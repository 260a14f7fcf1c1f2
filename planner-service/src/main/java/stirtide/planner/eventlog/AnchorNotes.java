package stirtide.planner.eventlog;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stirtide.planner.eventlog.SqliteStatements.Head;

/**
 * What the file of {@link HeadAnchor} says.
 *
 * @param state whether all that was noted is there
 * @param heads noted ends by day, in the order of the file, as far as they are sound
 */
record AnchorNotes(State state, Map<String, Head> heads) {
    /** No notes are wanted of this log: a copy has none beside it. */
    static final AnchorNotes UNUSED = new AnchorNotes(State.WHOLE, Map.of());

    enum State {
        /** Every note that was written is there. */
        WHOLE,
        /** Written by an earlier release, which noted the newest event of all days only. */
        ONE_DAY,
        /** There is no file. */
        MISSING,
        /** The file has no byte. */
        EMPTY,
        /** Notes are missing or not what was written. */
        TORN
    }

    static AnchorNotes read(Path path) throws IOException {
        if (!Files.exists(path)) return new AnchorNotes(State.MISSING, Map.of());
        byte[] bytes = Files.readAllBytes(path);
        if (bytes.length == 0) return new AnchorNotes(State.EMPTY, Map.of());
        Map<String, Head> heads = new LinkedHashMap<>();
        boolean sound = bytes.length % HeadAnchor.SLOT_BYTES == 0;
        long count = -1;
        for (int at = 0; at < bytes.length; at += HeadAnchor.SLOT_BYTES) {
            int length = Math.min(HeadAnchor.SLOT_BYTES, bytes.length - at);
            List<String> words = words(new String(bytes, at, length, StandardCharsets.UTF_8));
            if (at == 0 && words.size() == 2) count = Long.parseLong(words.get(1));
            else if (words.size() == 3)
                heads.put(
                        words.get(0),
                        new Head(Long.parseLong(words.get(1)), HexFormat.of().parseHex(words.get(2))));
            else sound = false;
        }
        if (count < 0 && sound && heads.size() == 1) return new AnchorNotes(State.ONE_DAY, heads);
        return new AnchorNotes(sound && count >= 0 && heads.size() >= count ? State.WHOLE : State.TORN, heads);
    }

    /** Words of a slot before its digest; none when the digest is of another text. */
    private static List<String> words(String slot) {
        String line = slot.stripTrailing();
        int end = line.lastIndexOf(' ');
        if (end < 0 || !slot.endsWith("\n")) return List.of();
        String text = line.substring(0, end);
        return line.substring(end + 1).equals(HeadAnchor.digest(text)) ? List.of(text.split(" ")) : List.of();
    }

    /** Whether the file holds these heads and nothing else. */
    boolean equalTo(Map<String, Head> newest) {
        return state == State.WHOLE
                && heads.keySet().equals(newest.keySet())
                && newest.entrySet().stream().allMatch(head -> same(head.getValue(), heads.get(head.getKey())));
    }

    private static boolean same(Head one, @Nullable Head other) {
        return other != null && one.revision() == other.revision() && Arrays.equals(one.hash(), other.hash());
    }

    /** What the file no longer tells although it once did, as a sentence about it; empty for a log without events. */
    Optional<String> loss(Map<String, Head> newest) {
        if (newest.isEmpty()) return Optional.empty();
        String what = switch (state) {
            case WHOLE, ONE_DAY -> "";
            case MISSING -> "is missing";
            case EMPTY -> "is empty";
            case TORN -> "is torn";
        };
        return what.isEmpty()
                ? Optional.empty()
                : Optional.of(what + "; whether the end of a day or a whole day has gone from the log since it was"
                        + " written cannot be told");
    }

    /** How the file is behind the log, as a sentence about it; empty when it is not. */
    Optional<String> behind(Map<String, Head> newest) {
        if (state == State.ONE_DAY)
            return Optional.of(
                    "is of an earlier release and knows the newest event only; the next start makes it anew");
        if (state != State.WHOLE) return Optional.empty();
        List<String> later = newest.entrySet().stream()
                .filter(head -> head.getValue().revision() > noted(head.getKey()))
                .map(head -> head.getKey() + " from revision " + (noted(head.getKey()) + 1))
                .toList();
        if (later.isEmpty()) return Optional.empty();
        return Optional.of("is older than the log, as after a power cut, and does not cover "
                + String.join(", ", later.subList(0, Math.min(3, later.size())))
                + (later.size() > 3 ? " and " + (later.size() - 3) + " more days" : "")
                + "; the next start brings it up to date");
    }

    private long noted(String day) {
        Head head = heads.get(day);
        return head == null ? 0 : head.revision();
    }
}
