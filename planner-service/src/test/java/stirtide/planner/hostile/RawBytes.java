package stirtide.planner.hostile;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/** What is no request, or nearly one: bytes against the socket. */
final class RawBytes {
    private static final String TARGET = "/days/quay-house/2027-03-09";

    /** Each line break is CR LF; {@code ~} stands for a lone LF. */
    private static final List<String> TEXTS = List.of(
            "GET " + TARGET
                    + " HTTP/1.1\nHost: 127.0.0.1\nContent-Length: 5\nTransfer-Encoding: chunked\n\n0\n\nGET /days HTTP/1.1\n\n",
            "POST /days HTTP/1.0\nHost: 127.0.0.1\nTransfer-Encoding: chunked\nContent-Length: 5\n\n0\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\nContent-Length: 5\nContent-Length: 6\n\nabcdef",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\nContent-Length: -5\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\nContent-Length: 99999999999999999999\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\nContent-Length: +5\n\nabcde",
            "POST /days HTTP/1.1\nHost: 127.0.0.1\nContent-Type: application/json\nTransfer-Encoding: chunked\n\nzz\nabc\n0\n\n",
            "POST /days HTTP/1.1\nHost: 127.0.0.1\nContent-Type: application/json\nTransfer-Encoding: chunked\n\nffffffffffffffff\nabc\n",
            "POST /days HTTP/1.1\nHost: 127.0.0.1\nContent-Type: application/json\nTransfer-Encoding: chunked\n\n-1\nabc\n",
            "POST /days HTTP/1.1\nHost: 127.0.0.1\nTransfer-Encoding: gzip, chunked\n\n0\n\n",
            "POST /days HTTP/1.1\nHost: 127.0.0.1\nTransfer-Encoding : chunked\n\n0\n\n",
            "GET /days HTTP/1.1~Host: 127.0.0.1~~",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\nHost: evil.example\n\n",
            "GET /days HTTP/1.1\nHost: evil.example\n\n",
            "GET /days HTTP/1.1\n\n",
            "GET http://evil.example/days HTTP/1.1\nHost: 127.0.0.1\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\n folded: yes\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\nno colon here\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\n: no name\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\nX-Null: a\u0000b\n\n",
            "GET /days HTTP/9.9\nHost: 127.0.0.1\n\n",
            "GET /days\n",
            "GET\n\n",
            " GET /days HTTP/1.1\n\n",
            "\n\n\n\nGET /days HTTP/1.1\nHost: 127.0.0.1\n\n",
            "get /days HTTP/1.1\nHost: 127.0.0.1\n\n",
            "CONNECT 127.0.0.1:22 HTTP/1.1\nHost: 127.0.0.1\n\n",
            "OPTIONS * HTTP/1.1\nHost: 127.0.0.1\n\n",
            "PRI * HTTP/2.0\n\nSM\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\nConnection: Upgrade, HTTP2-Settings\nUpgrade: h2c\nHTTP2-Settings: AAMAAABk\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\nConnection: Upgrade\nUpgrade: websocket\nSec-WebSocket-Version: 13\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\n\n",
            "GET /days HTTP/1.1\nHost: 127.0.0.1\n\nGET /clock HTTP/1.1\nHost: 127.0.0.1\n\nGET /sign-on HTTP/1.1\nHost: 127.0.0.1\n\n",
            "GET /days/../days/./quay-house//2027-03-09 HTTP/1.1\nHost: 127.0.0.1\n\n",
            "GET /%2e%2e/%2e%2e/etc/passwd HTTP/1.1\nHost: 127.0.0.1\n\n",
            "GET /days?a=%zz&b=%&%=c HTTP/1.1\nHost: 127.0.0.1\n\n",
            "\u0016\u0003\u0001\u0002\u0000\u0001\u0000\u0001\u00fc\u0003\u0003");

    private final Random random;

    RawBytes(long seed) {
        this.random = new Random(seed);
    }

    byte[] next() {
        byte[] text = TEXTS.get(random.nextInt(TEXTS.size()))
                .replace("\n", "\r\n")
                .replace('~', '\n')
                .getBytes(StandardCharsets.ISO_8859_1);
        return switch (random.nextInt(7)) {
            case 0 -> new Spoiler(random).noise(1 + random.nextInt(500));
            case 1 -> cut(text);
            case 2 -> changed(text);
            case 3 -> manyHeaders();
            default -> text;
        };
    }

    private byte[] cut(byte[] text) {
        return java.util.Arrays.copyOf(text, random.nextInt(text.length));
    }

    private byte[] changed(byte[] text) {
        byte[] changed = text.clone();
        for (int times = 0; times < 3; times++) changed[random.nextInt(text.length)] = (byte) random.nextInt(256);
        return changed;
    }

    private byte[] manyHeaders() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes("GET /days HTTP/1.1\r\nHost: 127.0.0.1\r\n".getBytes(StandardCharsets.US_ASCII));
        for (int count = random.nextInt(2_000); count > 0; count--)
            bytes.writeBytes(("X-" + count + ": " + count + "\r\n").getBytes(StandardCharsets.US_ASCII));
        bytes.writeBytes("\r\n".getBytes(StandardCharsets.US_ASCII));
        return bytes.toByteArray();
    }
}
