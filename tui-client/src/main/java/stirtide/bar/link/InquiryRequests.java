package stirtide.bar.link;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stirtide.bar.client.DayClient;
import stirtide.bar.client.ResponseText;
import stirtide.bar.model.Inquiry;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.AssistantAdvice;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.WalkInAdvice;
import stirtide.events.view.GramsView;
import stirtide.events.view.SwatchView;
import stirtide.events.view.VisitsView;

/** Sends questions to the planner. */
final class InquiryRequests {
    private InquiryRequests() {}

    /** Asks and waits for the answer; a failure is an answer too. */
    static Inquiry.Answer send(DayClient day, Inquiry.Ask ask) throws InterruptedException {
        try {
            return answer(ask, day.whatIf(path(ask)));
        } catch (IOException failed) {
            return new Inquiry.Answer.Failed(ResponseText.reason(failed));
        }
    }

    /** Path and query of a question, below the path of the day. */
    static String path(Inquiry.Ask ask) {
        if (ask instanceof Inquiry.Ask.WalkIn walkIn) {
            return "/walk-in?menuId=" + coded(walkIn.menuId()) + "&length=" + coded(walkIn.length()) + "&density="
                    + coded(walkIn.density()) + "&chair=" + walkIn.chair();
        }
        if (ask instanceof Inquiry.Ask.Help help) {
            return "/extra-assistant?from=" + coded(help.from().toString()) + "&to="
                    + coded(help.to().toString());
        }
        if (ask instanceof Inquiry.Ask.Move move) {
            return "/move?service=" + move.service() + "&start="
                    + coded(move.start().toString());
        }
        if (ask instanceof Inquiry.Ask.Grams) return "/grams";
        if (ask instanceof Inquiry.Ask.Tests) return "/swatches";
        if (ask instanceof Inquiry.Ask.Visits visits) return visits(visits);
        return "/moves";
    }

    private static String visits(Inquiry.Ask.Visits visits) {
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

    static Inquiry.Answer answer(Inquiry.Ask ask, String json) {
        try {
            if (ask instanceof Inquiry.Ask.WalkIn) {
                return new Inquiry.Answer.WalkIn(ContractJson.read(json, WalkInAdvice.class));
            }
            if (ask instanceof Inquiry.Ask.Help) {
                return new Inquiry.Answer.Help(ContractJson.read(json, AssistantAdvice.class));
            }
            if (ask instanceof Inquiry.Ask.Grams) {
                return new Inquiry.Answer.Grams(ContractJson.read(json, GramsView.class));
            }
            if (ask instanceof Inquiry.Ask.Tests) {
                return new Inquiry.Answer.Tests(ContractJson.read(json, SwatchView.class));
            }
            if (ask instanceof Inquiry.Ask.Visits) {
                return new Inquiry.Answer.Visits(ContractJson.read(json, VisitsView.class));
            }
            return new Inquiry.Answer.Moves(ContractJson.read(json, MoveAdvice.class));
        } catch (IllegalArgumentException otherContract) {
            return new Inquiry.Answer.Failed("the service speaks another version: " + otherContract.getMessage());
        }
    }
}
