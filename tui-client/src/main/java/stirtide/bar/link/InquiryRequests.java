package stirtide.bar.link;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
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

    /** How a question is asked, and what its answer is read as. */
    private record Request<T>(String path, Class<T> type, Function<T, Inquiry.Answer> answer) {
        Inquiry.Answer read(String json) {
            return answer.apply(ContractJson.read(json, type));
        }
    }

    private static Request<?> request(Inquiry.Ask ask) {
        if (ask instanceof Inquiry.Ask.WalkIn walkIn) {
            String path = "/walk-in?menuId=" + coded(walkIn.menuId()) + "&length=" + coded(walkIn.length())
                    + "&density=" + coded(walkIn.density()) + "&chair=" + walkIn.chair();
            return new Request<>(path, WalkInAdvice.class, Inquiry.Answer.WalkIn::new);
        }
        if (ask instanceof Inquiry.Ask.Help help) {
            String path = "/extra-assistant?from=" + coded(help.from().toString()) + "&to="
                    + coded(help.to().toString());
            return new Request<>(path, AssistantAdvice.class, Inquiry.Answer.Help::new);
        }
        if (ask instanceof Inquiry.Ask.Grams)
            return new Request<>("/grams", GramsView.class, Inquiry.Answer.Grams::new);
        if (ask instanceof Inquiry.Ask.Tests)
            return new Request<>("/swatches", SwatchView.class, Inquiry.Answer.Tests::new);
        if (ask instanceof Inquiry.Ask.Visits visits)
            return new Request<>(visits(visits), VisitsView.class, Inquiry.Answer.Visits::new);
        String path = ask instanceof Inquiry.Ask.Move move
                ? "/move?service=" + move.service() + "&start="
                        + coded(move.start().toString())
                : "/moves";
        return new Request<>(path, MoveAdvice.class, Inquiry.Answer.Moves::new);
    }

    /** Path and query of a question, below the path of the day. */
    static String path(Inquiry.Ask ask) {
        return request(ask).path();
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
            return request(ask).read(json);
        } catch (IllegalArgumentException otherContract) {
            return new Inquiry.Answer.Failed("the service speaks another version: " + otherContract.getMessage());
        }
    }
}
