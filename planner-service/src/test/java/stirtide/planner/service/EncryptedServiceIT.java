package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.command.DayCommand;
import stirtide.events.json.ContractJson;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Role;
import stirtide.planner.cli.CommandException;
import stirtide.planner.http.HttpSecurity;

/** A service on all addresses of the machine: encrypted, for people with tokens, who did what is in the events. */
class EncryptedServiceIT {
    private static final char[] PASSWORD = "changeit".toCharArray();

    @TempDir
    Path folder;

    @TempDir
    Path files;

    private HttpSecurity.Encryption pem = new HttpSecurity.Encryption(Path.of("none"), Path.of("none"));
    private KeyStore store;

    @BeforeEach
    void make_a_certificate() throws Exception {
        Path keys = files.resolve("keys.p12");
        Process keytool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-alias",
                        "service",
                        "-keyalg",
                        "EC",
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "SAN=dns:localhost,ip:127.0.0.1",
                        "-validity",
                        "30",
                        "-storetype",
                        "PKCS12",
                        "-storepass",
                        new String(PASSWORD),
                        "-keystore",
                        keys.toString())
                .redirectErrorStream(true)
                .start();
        assertThat(keytool.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(keytool.exitValue()).isZero();
        store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(keys)) {
            store.load(in, PASSWORD);
        }
        pem = new HttpSecurity.Encryption(
                pem("CERTIFICATE", store.getCertificate("service").getEncoded()),
                pem("PRIVATE KEY", store.getKey("service", PASSWORD).getEncoded()));
    }

    private Path pem(String kind, byte[] der) throws Exception {
        String body = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(der);
        return Files.writeString(
                files.resolve(kind.toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + ".pem"),
                "-----BEGIN " + kind + "-----\n" + body + "\n-----END " + kind + "-----\n");
    }

    private HttpClient trusting() throws Exception {
        KeyStore known = KeyStore.getInstance(KeyStore.getDefaultType());
        known.load(null, null);
        known.setCertificateEntry("service", store.getCertificate("service"));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(known);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    private static HttpRequest.Builder request(int port, String path, String token) {
        return HttpRequest.newBuilder(URI.create("https://localhost:" + port + path))
                .header("content-type", "application/json")
                .header("authorization", "Bearer " + token);
    }

    record Code(String personId, String code) {}

    @Test
    void without_encryption_or_tokens_another_address_is_refused_with_the_two_lines_that_mend_it() {
        Settings bare = Settings.inProcess(folder).withHost("0.0.0.0").withEncryption(Optional.of(pem));
        assertThatThrownBy(() -> PlannerService.start(bare))
                .isInstanceOf(CommandException.class)
                .hasMessageContaining("care token " + folder + " add --role manager --name PERSON")
                .hasMessageContaining("--host 0.0.0.0 --tls-certificate FILE --tls-key FILE");
    }

    @Test
    void a_person_signs_on_over_an_encrypted_line_and_the_event_says_who_it_was() throws Exception {
        AccessFile access = new AccessFile(folder);
        Instant now = Instant.now();
        String manager = access.make("mika", Role.MANAGER, Optional.empty(), now, Duration.ofDays(1))
                .token();
        String bar = access.make("bar-screen", Role.TERMINAL, Optional.empty(), now, Duration.ofDays(1))
                .token();
        String code = access.giveCode("ada", Role.COLORIST, Optional.empty(), now, Duration.ofDays(1));
        try (PlannerService service = PlannerService.start(Settings.inProcess(folder)
                .withDrivenClock(SmallSalon.MORNING, 0)
                .withHost("0.0.0.0")
                .withEncryption(Optional.of(pem)))) {
            HttpClient client = trusting();
            int port = service.port();
            assertThatThrownBy(() -> HttpClient.newHttpClient()
                            .send(request(port, "/days", manager).build(), BodyHandlers.ofString()))
                    .isInstanceOf(SSLHandshakeException.class);
            var opened = client.send(
                    request(port, "/days", manager)
                            .POST(BodyPublishers.ofString(ContractJson.write(SmallSalon.opening())))
                            .build(),
                    BodyHandlers.ofString());
            assertThat(opened.statusCode()).as(opened.body()).isEqualTo(201);
            assertThat(ask(client, port, "/sign-on", bar).body()).contains("\"needed\":true", "bar-screen");
            var signedOn = client.send(
                    request(port, "/sign-on", bar)
                            .POST(BodyPublishers.ofString(ContractJson.write(new Code("ada", code))))
                            .build(),
                    BodyHandlers.ofString());
            assertThat(signedOn.statusCode()).as(signedOn.body()).isEqualTo(201);
            String token =
                    ContractJson.mapper().readTree(signedOn.body()).get("token").asText();
            String started = ContractJson.write(new stirtide.events.command.CommandRequest(
                    "start-number-1", "ada", new DayCommand.StartService(1)));
            var answer = client.send(
                    request(port, "/days/" + SmallSalon.DAY + "/commands", token)
                            .POST(BodyPublishers.ofString(started))
                            .build(),
                    BodyHandlers.ofString());
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
            assertThat(ask(client, port, "/days/" + SmallSalon.DAY + "/events?limit=500", manager)
                            .body())
                    .contains("\"actor\":\"ada\",\"actorrole\":\"colorist\"")
                    .contains("\"actor\":\"mika\",\"actorrole\":\"manager\"");
            assertThat(ask(client, port, "/days", bar.substring(0, 20)).statusCode())
                    .isEqualTo(401);
        }
    }

    private static HttpResponse<String> ask(HttpClient client, int port, String path, String token) throws Exception {
        return client.send(request(port, path, token).build(), BodyHandlers.ofString());
    }
}
