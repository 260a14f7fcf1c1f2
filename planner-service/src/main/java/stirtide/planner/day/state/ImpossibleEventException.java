package stirtide.planner.day.state;

import java.io.Serial;

/** An event that cannot have happened on a day: its log is broken. */
public final class ImpossibleEventException extends IllegalStateException {
    @Serial
    private static final long serialVersionUID = 1L;

    /** Says why it cannot have happened. */
    public ImpossibleEventException(String why) {
        super(why);
    }
}
