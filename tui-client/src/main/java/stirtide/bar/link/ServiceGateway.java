package stirtide.bar.link;

import stirtide.bar.model.Inquiry;
import stirtide.events.command.DayCommand;

/**
 * Where the controller sends what people ask for. Never blocks on the network. What a gateway does not implement is not
 * sent.
 */
public interface ServiceGateway {
    /** Sends nothing: before the terminal is connected. */
    ServiceGateway NONE = new ServiceGateway() {};

    /**
     * Sends a command, now or as soon as the service can be reached; it is refused when that person is not signed on here
     * any more.
     *
     * @param personId who makes it, as the screen showed when the key was pressed
     * @param words what it is
     */
    default void send(String personId, DayCommand command, String words) {}

    /**
     * Asks what to pour next into a bowl; the answer comes as {@link LinkEvent.Advised}, or not at all while the service
     * cannot be reached.
     *
     * @param poured what was poured so far, as the contract writes it
     */
    default void askNextPour(String bowl, String poured) {}

    /** Asks the service to run its clock at another speed, in thousandths of real time. */
    default void setClockRate(int ratePermille) {}

    /** Asks the planner to try something; the answer comes as {@link LinkEvent.Tried}. */
    default void ask(Inquiry advice) {}

    /** Asks what is in force on the day; it comes as {@link LinkEvent.InForce}. */
    default void askSetup() {}

    /** Asks for the earlier days the service knows; they come as {@link LinkEvent.Past}. */
    default void askPast() {}

    /** Signs a person on with a code; the answer comes as {@link LinkEvent.SignOn}. */
    default void signOn(String personId, String code) {}

    /** Signs off whoever is signed on; {@code why} comes back in {@link LinkEvent.SignOn.Ended}. */
    default void signOff(String why) {}
}
