package stirtide.bar.link;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import stirtide.bar.scene.Advice;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.AssistantAdvice;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.WalkInAdvice;

/** Where questions to the planner go, below the path of the day, and how their answers are read. */
final class AdvicePaths {
    private AdvicePaths() {}

    static String of(Advice.Ask ask) {
        if (ask instanceof Advice.Ask.WalkIn walkIn) {
            return "/walk-in?menuId=" + coded(walkIn.menuId()) + "&length=" + coded(walkIn.length()) + "&density="
                    + coded(walkIn.density()) + "&chair=" + walkIn.chair();
        }
        if (ask instanceof Advice.Ask.Help help) {
            return "/extra-assistant?from=" + coded(help.from().toString()) + "&to="
                    + coded(help.to().toString());
        }
        if (ask instanceof Advice.Ask.Move move) {
            return "/move?service=" + move.service() + "&start="
                    + coded(move.start().toString());
        }
        return "/moves";
    }

    private static String coded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }

    static Advice.Answer answer(Advice.Ask ask, String json) {
        try {
            if (ask instanceof Advice.Ask.WalkIn) {
                return new Advice.Answer.WalkIn(ContractJson.read(json, WalkInAdvice.class));
            }
            if (ask instanceof Advice.Ask.Help) {
                return new Advice.Answer.Help(ContractJson.read(json, AssistantAdvice.class));
            }
            return new Advice.Answer.Moves(ContractJson.read(json, MoveAdvice.class));
        } catch (IllegalArgumentException otherContract) {
            return new Advice.Answer.Failed("the service speaks another version: " + otherContract.getMessage());
        }
    }
}
