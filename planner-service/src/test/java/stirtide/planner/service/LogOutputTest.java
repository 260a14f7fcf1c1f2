package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import stirtide.events.json.ContractJson;

class LogOutputTest {
    private final PrintStream usual = System.err;
    private final ByteArrayOutputStream written = new ByteArrayOutputStream();

    private String log(LogOutput.Form form) {
        System.setErr(new PrintStream(written, true, StandardCharsets.UTF_8));
        LogOutput.start(form, Level.INFO);
        LoggerFactory.getLogger("stirtide.test").info("before\nthe rest");
        LoggerFactory.getLogger("stirtide.test").debug("not told");
        LoggerFactory.getLogger("stirtide.test").error("no {}", "luck", new IllegalStateException("reason"));
        return written.toString(StandardCharsets.UTF_8);
    }

    @AfterEach
    void back() {
        System.setErr(usual);
        LogOutput.start(LogOutput.Form.TEXT, Level.INFO);
    }

    @Test
    void text_has_one_entry_a_line_and_the_reason_below() {
        assertThat(log(LogOutput.Form.TEXT).lines().toList()).satisfies(lines -> {
            assertThat(lines.get(0)).matches("\\S+Z INFO stirtide.test - before\\\\nthe rest");
            assertThat(lines.get(1)).endsWith("ERROR stirtide.test - no luck");
            assertThat(lines.get(2)).contains("IllegalStateException: reason");
        });
    }

    @Test
    void json_has_one_object_a_line_also_of_a_failure() throws Exception {
        var lines = log(LogOutput.Form.JSON).lines().toList();
        assertThat(lines).hasSize(2);
        JsonNode first = ContractJson.mapper().readTree(lines.get(0));
        assertThat(first.get("level").asText()).isEqualTo("INFO");
        assertThat(first.get("part").asText()).isEqualTo("stirtide.test");
        assertThat(first.get("message").asText()).isEqualTo("before\\nthe rest");
        assertThat(first.has("failure")).isFalse();
        JsonNode second = ContractJson.mapper().readTree(lines.get(1));
        assertThat(second.get("message").asText()).isEqualTo("no luck");
        assertThat(second.get("failure").asText()).contains("IllegalStateException: reason");
    }
}
