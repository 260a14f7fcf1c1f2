package stirtide.planner.admin;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.VertxException;
import io.vertx.core.http.HttpClient;
import io.vertx.core.http.HttpClientRequest;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.RequestOptions;
import io.vertx.core.net.SocketAddress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import stirtide.events.json.ContractJson;
import stirtide.planner.cli.CommandException;
import stirtide.planner.http.AdminServer;

/** HTTP client of the {@link AdminServer} of a running service. */
final class AdminClient {
    /** A backup of a log of years takes minutes. */
    private static final int LONGEST_MINUTES = 30;

    private record Response(int status, String body) {}

    private AdminClient() {}

    /**
     * Sends a request to the service that runs on a data folder.
     *
     * @return body of the response; empty when no service runs on the folder
     * @throws CommandException when the service refuses
     * @throws IOException when the service does not answer
     */
    static Optional<String> post(Path folder, String path, Object body) throws IOException {
        Path socket = AdminServer.socket(folder);
        if (!Files.exists(socket)) return Optional.empty();
        Vertx vertx = Vertx.vertx();
        // Held until the answer is there: a client that nothing refers to is closed by the garbage collector.
        HttpClient client = vertx.createHttpClient();
        try {
            Future<HttpClientRequest> connected = client.request(new RequestOptions()
                    .setServer(SocketAddress.domainSocketAddress(socket.toString()))
                    .setHost("localhost")
                    .setMethod(HttpMethod.POST)
                    .setURI(path));
            // A service that was killed leaves its socket behind.
            if (connected.otherwiseEmpty().await() == null) return Optional.empty();
            Response response = connected
                    .compose(request -> request.putHeader("content-type", "application/json")
                            .send(ContractJson.write(body)))
                    .compose(head -> head.body().map(text -> new Response(head.statusCode(), text.toString())))
                    .await(LONGEST_MINUTES, TimeUnit.MINUTES);
            return Optional.of(accepted(response));
        } catch (TimeoutException | VertxException closed) {
            throw new IOException("the running service does not answer; try again", closed);
        } finally {
            client.close().eventually(vertx::close).await();
        }
    }

    private static String accepted(Response response) throws IOException {
        if (response.status() < 300) return response.body();
        throw new CommandException(
                response.status() == 404 ? CommandException.BAD_INPUT : CommandException.LOG_BROKEN,
                ContractJson.mapper().readTree(response.body()).path("detail").asText());
    }
}
