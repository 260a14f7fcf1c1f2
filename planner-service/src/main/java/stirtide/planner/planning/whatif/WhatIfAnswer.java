package stirtide.planner.planning.whatif;

import stirtide.events.plan.AssistantAdvice;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.WalkInAdvice;
import stirtide.planner.day.state.Refusal;

/** Answer to a {@link WhatIfQuestion}. */
public sealed interface WhatIfAnswer {
    /** Effects of moves. */
    record Moves(MoveAdvice advice) implements WhatIfAnswer {}

    /** A start for a client without a booking. */
    record WalkIn(WalkInAdvice advice) implements WhatIfAnswer {}

    /** Effect of one more assistant. */
    record ExtraAssistant(AssistantAdvice advice) implements WhatIfAnswer {}

    /** The answer was not wanted any more before it was found. */
    record BrokenOff() implements WhatIfAnswer {}

    /** The question cannot be answered, and why. */
    record Refused(Refusal refusal) implements WhatIfAnswer {}
}
