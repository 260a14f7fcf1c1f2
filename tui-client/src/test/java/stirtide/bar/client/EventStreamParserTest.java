package stirtide.bar.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class EventStreamParserTest {
    private final List<String> heard = new ArrayList<>();
    private final EventStreamParser events = new EventStreamParser(new EventStreamParser.Listener() {
        @Override
        public void event(byte[] bytes, int length) {
            heard.add(new String(bytes, 0, length, StandardCharsets.UTF_8));
        }

        @Override
        public void comment() {
            heard.add("comment");
        }
    });

    private void take(String text) {
        events.take(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void an_event_ends_with_an_empty_line_and_keeps_its_id() {
        take("id: 41\nevent: day\ndata: {\"a\":\ndata:1}\n");
        assertThat(heard).isEmpty();
        take("\n");
        assertThat(heard).containsExactly("{\"a\":\n1}");
        assertThat(events.lastId()).isEqualTo("41");
    }

    @Test
    void a_comment_is_no_event() {
        take(": still here\n\n");
        assertThat(heard).containsExactly("comment");
    }

    /** The three examples of the HTML standard, 9.2.6, their stock symbol replaced, with what it says about each. */
    @Test
    void the_examples_of_the_standard_come_out_as_it_says() {
        take("data: ABCD\ndata: +2\ndata: 10\n\n");
        assertThat(heard).containsExactly("ABCD\n+2\n10");
        heard.clear();
        take(": test stream\n\ndata: first event\nid: 1\n\ndata:second event\nid\n\ndata:  third event\n\n");
        assertThat(heard).containsExactly("comment", "first event", "second event", " third event");
        assertThat(events.lastId()).isEmpty();
        heard.clear();
        take("data\n\ndata\ndata\n\ndata:");
        assertThat(heard).containsExactly("", "\n");
    }

    @Test
    void all_three_ends_of_a_line_are_the_same() {
        take("data: a\r\n\r\ndata: b\r\rdata: c\n\n");
        assertThat(heard).containsExactly("a", "b", "c");
    }

    /** Any cut of a stream gives the same events, also one through a character of several bytes. */
    @Test
    void it_does_not_matter_where_the_stream_is_cut() {
        String view = "{\"name\":\"" + "Zoë ".repeat(40_000) + "\"}";
        byte[] stream = ("id: 7\r\ndata: " + view + "\r\n\r\n").getBytes(StandardCharsets.UTF_8);
        var chance = new Random(11);
        for (int from = 0; from < stream.length; ) {
            int to = Math.min(stream.length, from + 1 + chance.nextInt(chance.nextBoolean() ? 3 : 9000));
            events.take(ByteBuffer.wrap(stream, from, to - from));
            from = to;
        }
        assertThat(heard).containsExactly(view);
        assertThat(events.lastId()).isEqualTo("7");
    }
}
