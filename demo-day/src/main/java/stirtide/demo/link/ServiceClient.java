package stirtide.demo.link;

import java.io.IOException;
import java.net.URI;
import java.util.List;

/** A running service. */
public final class ServiceClient {
    private final URI address;

    /** @param address address of the service */
    public ServiceClient(URI address) {
        this.address = address.resolve("/");
    }

    /** One day of the service. */
    public DayClient day(String name) {
        return new DayClient(address, name);
    }

    /** Names of all days, oldest first. */
    public List<String> days() throws IOException {
        return day("").days();
    }

    /** A failure as a sentence. */
    public static String reason(IOException failure) {
        return failure.getMessage() == null ? "the service cannot be reached" : failure.getMessage();
    }
}
