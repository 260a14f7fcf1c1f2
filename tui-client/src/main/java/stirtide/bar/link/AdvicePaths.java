package stirtide.bar.link;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stirtide.bar.scene.Advice;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.AssistantAdvice;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.WalkInAdvice;
import stirtide.events.view.GramsView;
import stirtide.events.view.SwatchView;
import stirtide.events.view.VisitsView;

/** Where questions to the service go, below the path of the day, and how their answers are read. */
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
        if (ask instanceof Advice.Ask.Grams) return "/grams";
        if (ask instanceof Advice.Ask.Tests) return "/swatches";
        if (ask instanceof Advice.Ask.Visits visits) return visits(visits);
        return "/moves";
    }

    private static String visits(Advice.Ask.Visits visits) {
        String days = Stream.of(
                        visits.first().map(day -> "first=" + coded(day)),
                        visits.second().map(day -> "second=" + coded(day)))
                .flatMap(one -> one.stream())
                .collect(Collectors.joining("&"));
        return "/services/" + visits.service() + "/visits" + (days.isEmpty() ? "" : "?" + days);
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
            if (ask instanceof Advice.Ask.Grams) {
                return new Advice.Answer.Grams(ContractJson.read(json, GramsView.class));
            }
            if (ask instanceof Advice.Ask.Tests) {
                return new Advice.Answer.Tests(ContractJson.read(json, SwatchView.class));
            }
            if (ask instanceof Advice.Ask.Visits) {
                return new Advice.Answer.Visits(ContractJson.read(json, VisitsView.class));
            }
            return new Advice.Answer.Moves(ContractJson.read(json, MoveAdvice.class));
        } catch (IllegalArgumentException otherContract) {
            return new Advice.Answer.Failed("the service speaks another version: " + otherContract.getMessage());
        }
    }
}
