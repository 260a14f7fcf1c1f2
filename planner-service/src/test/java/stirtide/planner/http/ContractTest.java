package stirtide.planner.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.vertx.core.Vertx;
import io.vertx.openapi.contract.OpenAPIContract;
import io.vertx.openapi.contract.Operation;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class ContractTest {
    @Test
    void every_operation_of_the_contract_has_a_handler_and_every_handler_an_operation() throws Exception {
        Vertx vertx = Vertx.vertx();
        try {
            OpenAPIContract contract = ContractReader.read();
            IdleDayOperations desk = new IdleDayOperations();
            assertThat(contract.operations())
                    .extracting(Operation::getOperationId)
                    .containsExactlyInAnyOrderElementsOf(ApiRouter.handlers(
                                    vertx,
                                    new AuthenticationHandler(vertx, TestSecurity.open(), desk),
                                    desk,
                                    new StreamRegistry(vertx, desk, HttpLimits.LOOPBACK))
                            .keySet());
        } finally {
            vertx.close().await(20, TimeUnit.SECONDS);
        }
    }

    @Test
    void the_file_the_build_writes_is_the_published_contract() throws Exception {
        assertThat(ContractReader.document()).isEqualTo(ContractFile.document());
        assertThat(ContractReader.document().getJsonObject("paths").size()).isGreaterThan(10);
    }

    @Test
    void the_library_accepts_the_contract_and_understands_the_same() throws Exception {
        Vertx vertx = Vertx.vertx();
        try {
            OpenAPIContract accepted =
                    OpenAPIContract.from(vertx, ContractReader.document()).await(60, TimeUnit.SECONDS);
            OpenAPIContract ours = ContractReader.read();
            assertThat(ours.getRawContract()).isEqualTo(accepted.getRawContract());
            assertThat(ours.getVersion()).isEqualTo(accepted.getVersion());
            assertThat(ours.operations())
                    .extracting(Operation::getAbsoluteOpenAPIPath)
                    .isEqualTo(accepted.operations().stream()
                            .map(Operation::getAbsoluteOpenAPIPath)
                            .toList());
        } finally {
            vertx.close().await(20, TimeUnit.SECONDS);
        }
    }
}
