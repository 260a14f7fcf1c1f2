package stirtide.bar.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.awaitility.core.ConditionFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.bar.FakeService;
import stirtide.bar.Samples;
import stirtide.bar.client.Credentials;
import stirtide.bar.client.DayClient;
import stirtide.bar.client.ServiceClient;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand.HandOverBowl;

/** Signing on against a stand-in service that asks for tokens; a second of waiting lasts twenty milliseconds. */
class SignOnSessionIT {
    private static final long SECOND_MILLIS = 20;

    @TempDir
    Path folder;

    private final List<LinkEvent> news = new CopyOnWriteArrayList<>();
    private FakeService service;

    @BeforeEach
    void start() throws IOException {
        service = new FakeService(Samples.busy(), false, 0);
        service.asksWhoItIs();
        Files.writeString(folder.resolve("token"), FakeService.TERMINAL_TOKEN + "\n");
    }

    @AfterEach
    void stop() {
        service.close();
    }

    /** A busy machine may take seconds to load the classes of a first request. */
    private static ConditionFactory patiently() {
        return await().atMost(Duration.ofSeconds(60));
    }

    private ServiceLink link() throws IOException {
        var credentials = new Credentials(Optional.of(folder.resolve("token")), Optional.empty());
        var api = new DayClient(new ServiceClient(service.address(), credentials), Samples.DAY);
        return ServiceLink.start(
                api, new StateFolder(folder.resolve("state"), Samples.DAY), "", news::add, SECOND_MILLIS);
    }

    private <T extends LinkEvent> List<T> told(Class<T> kind) {
        return news.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private void signOn(ServiceLink link, String personId) {
        int before = told(LinkEvent.SignOn.Begun.class).size();
        link.signOn(personId, FakeService.CODE);
        patiently().until(() -> told(LinkEvent.SignOn.Begun.class).size() > before);
    }

    @Test
    void a_terminal_is_told_that_a_person_is_needed_and_sends_under_the_persons_name_afterwards() throws Exception {
        try (ServiceLink link = link()) {
            patiently().until(() -> news.contains(new LinkEvent.SignOn.Needed()));
            signOn(link, "tamsin");
            assertThat(told(LinkEvent.SignOn.Begun.class))
                    .containsExactly(new LinkEvent.SignOn.Begun("tamsin", "assistant", 0));
            link.send("tamsin", new HandOverBowl("1a"), "entry");
            patiently().until(() -> service.taken().size() == 1);
            assertThat(service.taken()).extracting(CommandRequest::actor).containsExactly("tamsin");
        }
    }

    @Test
    void a_terminal_without_a_token_says_what_is_missing_and_one_with_a_wrong_token_what_the_service_says()
            throws Exception {
        var bare = new DayClient(new ServiceClient(service.address()), Samples.DAY);
        try (var ignored = ServiceLink.start(
                bare, new StateFolder(folder.resolve("bare"), Samples.DAY), "", news::add, SECOND_MILLIS)) {
            patiently()
                    .until(() -> news.contains(
                            new LinkEvent.Cut("the service asks who this terminal is: start it with --token-file")));
        }
        Files.writeString(folder.resolve("token"), "another\n");
        try (ServiceLink link = link()) {
            patiently()
                    .until(() -> told(LinkEvent.Cut.class).stream()
                            .anyMatch(cut -> cut.why().equals("this sign-on has ended; sign on again")));
        }
    }

    @Test
    void a_wrong_code_and_a_wait_are_told() throws Exception {
        try (ServiceLink link = link()) {
            link.signOn("tamsin", "000000");
            patiently().until(() -> news.contains(new LinkEvent.SignOn.Refused("person or code is wrong", 0)));
            service.lockFor(120);
            link.signOn("tamsin", "000000");
            patiently().until(() -> news.contains(new LinkEvent.SignOn.Refused("too many wrong codes", 120)));
        }
    }

    @Test
    void signing_off_ends_it_and_an_entry_after_it_is_refused() throws Exception {
        try (ServiceLink link = link()) {
            signOn(link, "tamsin");
            link.signOff("by key");
            patiently().until(() -> news.contains(new LinkEvent.SignOn.Ended("by key", 0)));
            assertThat(service.signedOn()).isEmpty();
            link.send("tamsin", new HandOverBowl("1a"), "late");
            assertThat(news)
                    .contains(new LinkEvent.Refused(new HandOverBowl("1a"), "late", "no person is signed on here"));
        }
    }

    @Test
    void an_entry_of_somebody_who_is_not_signed_on_any_more_never_goes_under_another_name() throws Exception {
        try (ServiceLink link = link()) {
            signOn(link, "tamsin");
            signOn(link, "bohdan");
            link.send("tamsin", new HandOverBowl("1a"), "a moment late");
            assertThat(news)
                    .contains(new LinkEvent.Refused(
                            new HandOverBowl("1a"),
                            "a moment late",
                            "it was entered by tamsin, and bohdan has signed on since"));
            assertThat(service.taken()).isEmpty();
        }
    }

    @Test
    void entries_of_a_sign_on_the_service_forgot_wait_for_that_person_and_are_sent_once() throws Exception {
        try (ServiceLink link = link()) {
            signOn(link, "tamsin");
            service.forgetSignOns();
            link.send("tamsin", new HandOverBowl("1a"), "kept");
            patiently().until(() -> !told(LinkEvent.SignOn.Ended.class).isEmpty());
            assertThat(told(LinkEvent.SignOn.Ended.class))
                    .containsExactly(new LinkEvent.SignOn.Ended("this sign-on has ended; sign on again", 1));
            assertThat(service.taken()).isEmpty();
            signOn(link, "bohdan");
            assertThat(told(LinkEvent.SignOn.Begun.class))
                    .endsWith(new LinkEvent.SignOn.Begun("bohdan", "assistant", 1));
            link.send("bohdan", new HandOverBowl("2a"), "another's");
            patiently().until(() -> service.taken().size() == 1);
            assertThat(service.taken()).extracting(CommandRequest::actor).containsExactly("bohdan");
            signOn(link, "tamsin");
            patiently().until(() -> service.taken().size() == 2);
            assertThat(service.taken().get(1).actor()).isEqualTo("tamsin");
        }
    }

    @Test
    void entries_that_wait_at_the_start_are_counted_whoever_made_them() throws Exception {
        try (ServiceLink link = link()) {
            signOn(link, "tamsin");
            service.breakDown();
            link.send("tamsin", new HandOverBowl("1a"), "kept");
            patiently().until(() -> news.contains(new LinkEvent.Waiting(1)));
        }
        service.recover();
        news.clear();
        try (ServiceLink again = link()) {
            patiently().until(() -> news.contains(new LinkEvent.Waiting(1)));
            assertThat(service.taken()).isEmpty();
            signOn(again, "tamsin");
            patiently().until(() -> service.taken().size() == 1);
        }
    }
}
