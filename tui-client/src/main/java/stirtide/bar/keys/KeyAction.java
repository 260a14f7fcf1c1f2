package stirtide.bar.keys;

/** What a key does. */
public enum KeyAction {
    /** Begins to mix a bowl. */
    MIX,
    /** Opens the weigh-in. */
    WEIGH,
    /** Hands a bowl over to its chair. */
    HAND_OVER,
    /** Says that a bowl is used up. */
    FINISH,
    /** Throws away what is left. */
    BIN,
    /** Opens the list of services. */
    SERVICES,
    /** Books a client who walks in. */
    WALK_IN,
    /** Acknowledges the top alarm. */
    ACKNOWLEDGE,
    /** Takes back the last own action. */
    TAKE_BACK,
    /** Shows why clients wait and what could not be planned. */
    REASONS,
    /** Opens the picked row. */
    OPEN,
    /** Row up. */
    UP,
    /** Row down. */
    DOWN,
    /** The other list. */
    OTHER_LIST,
    /** Finds a row. */
    FIND,
    /** Shows the keys. */
    KEYS,
    /** Clears messages; leaves a panel. */
    BACK,
    /** Draws everything anew. */
    REDRAW,
    /** Signs on or off. */
    SIGN_ON,
    /** Leaves the program. */
    LEAVE,
    /** Stops the clock or lets it run again. */
    PAUSE,
    /** Slows the clock. */
    SLOWER,
    /** Quickens the clock. */
    FASTER,
    /** Says that the client is in the chair. */
    SEATED,
    /** Says that a zone is applied. */
    ZONE_DONE,
    /** Says that a section was rinsed. */
    RINSED,
    /** Gives a service another start. */
    OTHER_START,
    /** Records when a strand or patch test was done. */
    TEST_DONE,
    /** Asks for the formula of the client's last visit. */
    AS_LAST_TIME,
    /** Records the level of the hair in a zone. */
    LEVELS,
    /** Compares the plan with the one that was marked. */
    COMPARE,
    /** Marks the plan on show, to compare with. */
    MARK,
    /** Shows what is remembered of a client. */
    VISITS,
    /** Shows what grams come from and what they cost. */
    COSTS,
    /** Shows test swatches and pH strips. */
    TESTS,
    /** Records a test swatch. */
    SWATCH,
    /** Records a pH strip. */
    STRIP,
    /** Takes a service off the day. */
    CANCEL_SERVICE,
    /** Next field. */
    NEXT_FIELD,
    /** Field before. */
    FIELD_BEFORE,
    /** Erases a character. */
    ERASE,
    /** The choice before. */
    CHOICE_BEFORE,
    /** The next choice. */
    NEXT_CHOICE,
    /** Keeps what was entered, or moves on. */
    KEEP,
    /** Shows the bar. */
    TO_BAR,
    /** Shows the floor. */
    TO_FLOOR,
    /** Shows the day in grams. */
    TO_DAY,
    /** Shows what is in force. */
    TO_SETUP,
    /** The next part of what is in force. */
    NEXT_PART,
    /** Changes what stands in the picked row. */
    CHANGE,
    /** Adds a piece. */
    ADD,
    /** Takes a piece out. */
    TAKE_OUT,
    /** Counts a product or takes in packs. */
    COUNT,
    /** Sets how often planned grams are to be enough. */
    FRACTION,
    /** Pins the grams of a zone, or lets them be learned again. */
    PIN,
    /** Writes what is in force as files of a salon. */
    WRITE_FILES,
    /** Puts an alarm away for some minutes. */
    SHELVE,
    /** Copies the picked row. */
    COPY,
    /** Lifts a service, or sets it down. */
    LIFT,
    /** Earlier by a step. */
    EARLIER,
    /** Later by a step. */
    LATER,
    /** A minute earlier. */
    MINUTE_EARLIER,
    /** A minute later. */
    MINUTE_LATER,
    /** Another scale of time. */
    SCALE,
    /** Back to the clock. */
    NOW,
    /** Asks the planner which services to move. */
    MOVES,
    /** Asks the planner for the earliest start of a walk-in. */
    EARLIEST,
    /** Asks the planner what one more assistant would do. */
    ONE_MORE,
    /** Takes what is picked. */
    TAKE,
    /** The next way to sort. */
    SORT_NEXT,
    /** The way to sort before. */
    SORT_BEFORE,
    /** Other days to sum. */
    PERIOD,
    /** The bowls behind a bar. */
    BEHIND,
    /** Asks for earlier days. */
    EARLIER_DAYS,
    /** Writes the day to files. */
    EXPORT,
    /** Yes. */
    YES,
    /** No. */
    NO
}
