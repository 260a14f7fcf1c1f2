package stirtide.planner.http;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.http.HttpServer;
import io.vertx.core.http.HttpServerOptions;
import io.vertx.core.net.SocketAddress;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.handler.BodyHandler;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.planner.access.Caller;

/**
 * HTTP on a Unix domain socket in the data folder, for the commands of the operator. Only the owner of the folder can open
 * the socket, so no token is needed; the caller may do what the operator could do with the files themselves.
 */
public final class AdminServer {
    /** Path of {@code exportClient}, as on the public server. */
    public static final String EXPORT = "/clients/export";

    /** Path of {@code eraseClient}, as on the public server. */
    public static final String ERASURE = "/clients/erasure";

    /** Path that copies the log into a new file: {@code {"file": "..."}}. It exists on this server only. */
    public static final String BACKUP = "/backup";

    private static final Logger LOG = LoggerFactory.getLogger("stirtide.admin");
    private static final String OWNER_ONLY = "rw-------";
    private static final long BODY_LIMIT = 8 * 1024;

    private final Vertx vertx;
    private final Path socket;
    private final HttpServer server;

    record Backup(String file) {}

    private AdminServer(Vertx vertx, Path socket, HttpServer server) {
        this.vertx = vertx;
        this.socket = socket;
        this.server = server;
    }

    /** The socket in a data folder. */
    public static Path socket(Path folder) {
        return folder.toAbsolutePath().resolve("admin");
    }

    /**
     * Starts the server of a data folder that this process holds.
     *
     * <p>Fails with {@link IOException} when the folder takes no socket, or its path is too long for one.
     */
    public static Future<AdminServer> start(Vertx vertx, Path folder, DayOperations days) {
        Path socket = socket(folder);
        HttpServer server = vertx.createHttpServer(new HttpServerOptions().setHttp2ClearTextEnabled(false))
                .requestHandler(router(vertx, days));
        AdminServer started = new AdminServer(vertx, socket, server);
        return vertx.executeBlocking(() -> Files.deleteIfExists(socket))
                .compose(fresh -> server.listen(SocketAddress.domainSocketAddress(socket.toString())))
                .compose(listening -> vertx.executeBlocking(
                        () -> Files.setPosixFilePermissions(socket, PosixFilePermissions.fromString(OWNER_ONLY))))
                .map(started)
                .recover(failed -> started.stop().transform(closed -> Future.failedFuture(failed)));
    }

    private static Router router(Vertx vertx, DayOperations days) {
        Router router = Router.router(vertx);
        router.route().handler(BodyHandler.create(false).setBodyLimit(BODY_LIMIT));
        router.route().handler(ctx -> {
            CallerContext.set(ctx, Caller.LOCAL, days::shown);
            ctx.put(Responses.RAW_BODY, ctx.body().buffer());
            ctx.next();
        });
        ClientHandlers clients = new ClientHandlers(days);
        router.post(EXPORT).handler(clients::export);
        router.post(ERASURE).handler(clients::erase);
        router.post(BACKUP).handler(ctx -> backup(ctx, days));
        for (int status = 400; status < 600; status++) router.errorHandler(status, ProblemResponses::failed);
        return router;
    }

    private static void backup(RoutingContext ctx, DayOperations days) {
        days.backup(Path.of(Responses.body(ctx, Backup.class).file()))
                .onSuccess(written -> Responses.noContent(ctx))
                .onFailure(ctx::fail);
    }

    /** Stops the server and removes its socket. */
    public Future<Void> stop() {
        return server.close()
                .eventually(() -> vertx.executeBlocking(() -> Files.deleteIfExists(socket)))
                .onFailure(stays -> LOG.debug("the next start removes the socket: {}", stays.toString()))
                .otherwiseEmpty();
    }
}
