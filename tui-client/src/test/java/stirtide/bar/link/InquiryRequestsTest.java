package stirtide.bar.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.model.Inquiry;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.MoveAdvice;

class InquiryRequestsTest {
    @Test
    void questions_have_the_paths_of_the_contract() {
        assertThat(InquiryRequests.path(new Inquiry.Ask.Moves())).isEqualTo("/moves");
        assertThat(InquiryRequests.path(new Inquiry.Ask.WalkIn("half foils", "long", "thick", 3)))
                .isEqualTo("/walk-in?menuId=half+foils&length=long&density=thick&chair=3");
        assertThat(InquiryRequests.path(new Inquiry.Ask.Move(4, Instant.parse("2027-05-14T10:40:00Z"))))
                .isEqualTo("/move?service=4&start=2027-05-14T10%3A40%3A00Z");
        assertThat(InquiryRequests.path(new Inquiry.Ask.Grams())).isEqualTo("/grams");
        assertThat(InquiryRequests.path(new Inquiry.Ask.Tests())).isEqualTo("/swatches");
        assertThat(InquiryRequests.path(new Inquiry.Ask.Visits(4, Optional.empty(), Optional.empty())))
                .isEqualTo("/services/4/visits");
        assertThat(InquiryRequests.path(
                        new Inquiry.Ask.Visits(4, Optional.of("2027-01-05"), Optional.of("2027-03-09"))))
                .isEqualTo("/services/4/visits?first=2027-01-05&second=2027-03-09");
        var help = new Inquiry.Ask.Help(Instant.parse("2027-05-14T10:40:00Z"), Instant.parse("2027-05-14T12:40:00Z"));
        assertThat(InquiryRequests.path(help))
                .isEqualTo("/extra-assistant?from=2027-05-14T10%3A40%3A00Z&to=2027-05-14T12%3A40%3A00Z");
    }

    @Test
    void an_answer_is_read_and_one_of_another_version_is_told() {
        Optional<Inquiry.Answer> moves = Samples.moves().answer();
        MoveAdvice advice = ((Inquiry.Answer.Moves) moves.orElseThrow()).advice();
        var ask = new Inquiry.Ask.Moves();
        assertThat(InquiryRequests.answer(ask, ContractJson.write(advice))).isEqualTo(moves.get());
        assertThat(InquiryRequests.answer(ask, "{\"other\":1}")).isInstanceOf(Inquiry.Answer.Failed.class);
    }
}
