package stirtide.planner.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** Requests as bytes. */
final class RequestText {
    private RequestText() {}

    static byte[] of(String method, String target, String token, byte[] body, String... headers) {
        StringBuilder head = new StringBuilder(method + " " + target + " HTTP/1.1\r\nHost: 127.0.0.1\r\n");
        if (!token.isEmpty())
            head.append("Authorization: Bearer ").append(token).append("\r\n");
        if (body.length > 0) head.append("Content-Length: ").append(body.length).append("\r\n");
        boolean typed = false;
        for (int at = 0; at < headers.length; at += 2) {
            head.append(headers[at]).append(": ").append(headers[at + 1]).append("\r\n");
            typed |= headers[at].equals("Content-Type");
        }
        if (body.length > 0 && !typed) head.append("Content-Type: application/json\r\n");
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(head.append("\r\n").toString().getBytes(StandardCharsets.UTF_8));
        whole.writeBytes(body);
        return whole.toByteArray();
    }
}
