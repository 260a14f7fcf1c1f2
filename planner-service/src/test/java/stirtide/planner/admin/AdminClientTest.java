package stirtide.planner.admin;

import static org.assertj.core.api.Assertions.assertThat;

import io.vertx.core.Vertx;
import io.vertx.core.http.HttpServer;
import io.vertx.core.net.SocketAddress;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.planner.http.AdminServer;

class AdminClientTest {
    private static final int POSTS = 3;

    @TempDir
    Path folder;

    private final Vertx vertx = Vertx.vertx();

    @AfterEach
    void stop() throws Exception {
        vertx.close().await(20, TimeUnit.SECONDS);
    }

    @Test
    void the_garbage_collector_never_closes_a_connection_in_use() throws Exception {
        HttpServer server = vertx.createHttpServer()
                .requestHandler(request -> request.response().end(request.path()));
        server.listen(SocketAddress.domainSocketAddress(
                        AdminServer.socket(folder).toString()))
                .await(20, TimeUnit.SECONDS);
        AtomicBoolean done = new AtomicBoolean();
        Thread collecting = new Thread(() -> {
            while (!done.get()) {
                System.gc();
                LockSupport.parkNanos(2_000_000);
            }
        });
        collecting.start();
        try {
            for (int post = 0; post < POSTS; post++)
                assertThat(AdminClient.post(folder, "/asked", Map.of())).contains("/asked");
        } finally {
            done.set(true);
            collecting.join();
        }
    }

    @Test
    void a_folder_without_a_socket_has_no_service() throws Exception {
        assertThat(AdminClient.post(folder, "/asked", Map.of())).isEmpty();
    }
}
