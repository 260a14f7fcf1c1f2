package stirtide.bar.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class FrameBufferTest {
    private int writes;
    private final ByteArrayOutputStream raw = new ByteArrayOutputStream() {
        @Override
        public synchronized void write(byte[] bytes, int offset, int count) {
            writes++;
            super.write(bytes, offset, count);
        }
    };

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void a_frame_is_one_write_between_its_marks() throws IOException {
        var frame = new FrameBuffer(raw, true);
        for (int i = 0; i < 70_000; i++) frame.write('x');
        frame.flush();
        assertThat(writes).isEqualTo(1);
        assertThat(raw.toString(StandardCharsets.UTF_8))
                .startsWith("\033[?2026hxxx")
                .endsWith("xxx\033[?2026l");
    }

    @Test
    void nothing_collected_is_nothing_written() throws IOException {
        new FrameBuffer(raw, true).flush();
        assertThat(writes).isZero();
    }

    @Test
    void padding_zeros_are_left_out() throws IOException {
        var frame = new FrameBuffer(raw, false);
        frame.write(new byte[] {'a', 0, 'b'});
        frame.flush();
        assertThat(raw.toByteArray()).isEqualTo(bytes("ab"));
    }

    @Test
    void after_the_latch_nothing_gets_through() throws IOException {
        var frame = new FrameBuffer(raw, false);
        frame.write(bytes("half a frame"));
        frame.shut();
        frame.write(bytes("and more"));
        frame.flush();
        assertThat(raw.size()).isZero();
    }
}
