package stirtide.demo.link;

/** The service cannot be reached, or answers what it must not answer. The message is one sentence for people. */
public final class ServiceSilent extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** @param message one sentence for people */
    public ServiceSilent(String message) {
        super(message);
    }
}
