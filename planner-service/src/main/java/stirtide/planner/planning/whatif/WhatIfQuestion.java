package stirtide.planner.planning.whatif;

import java.time.Instant;

/** What the lead colorist may ask about a day. */
public sealed interface WhatIfQuestion {
    /** What moving each service that may move would do. */
    record Moves() implements WhatIfQuestion {}

    /**
     * What moving one service would do, whatever its tolerance.
     *
     * @param service service number
     * @param start start to try
     */
    record OneMove(int service, Instant start) implements WhatIfQuestion {}

    /**
     * When a client without a booking could start.
     *
     * @param menuId menu entry
     * @param length hair length, a key of the menu's length factors
     * @param density hair density, a key of the menu's density factors
     * @param chair chair number
     */
    record WalkIn(String menuId, String length, String density, int chair) implements WhatIfQuestion {}

    /**
     * What one more assistant would do.
     *
     * @param from start of the help
     * @param to end of the help, after the start
     */
    record ExtraAssistant(Instant from, Instant to) implements WhatIfQuestion {}
}
