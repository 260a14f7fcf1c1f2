package stirtide.bar.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.bar.FakeService;
import stirtide.bar.Samples;
import stirtide.bar.client.DayClient;
import stirtide.bar.client.ServiceClient;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.command.DayCommand.HandOverBowl;

/** The link against a stand-in service on a free port; a second of waiting lasts twenty milliseconds. */
class ServiceLinkIT {
    private static final long SECOND_MILLIS = 20;

    @TempDir
    Path folder;

    private final List<LinkEvent> news = new CopyOnWriteArrayList<>();
    private FakeService service;

    @BeforeEach
    void start() throws IOException {
        service = new FakeService(Samples.busy(), true, 0);
    }

    @AfterEach
    void stop() {
        service.close();
    }

    private ServiceLink link() throws IOException {
        var api = new DayClient(new ServiceClient(service.address()), Samples.DAY);
        return ServiceLink.start(api, new StateFolder(folder, Samples.DAY), "tamsin", news::add, SECOND_MILLIS);
    }

    private long count(Class<? extends LinkEvent> kind) {
        return news.stream().filter(kind::isInstance).count();
    }

    private List<DayCommand> taken() {
        return service.taken().stream().map(CommandRequest::command).toList();
    }

    @Test
    void the_day_comes_live_and_the_clock_is_known() throws Exception {
        try (ServiceLink link = link()) {
            await().until(() -> count(LinkEvent.Seen.class) > 0);
            assertThat(news).contains(new LinkEvent.Seen(Samples.busy()), new LinkEvent.Clock(Samples.NOW, 1000, true));
            link.setClockRate(60_000);
            await().until(() -> news.contains(new LinkEvent.Clock(Samples.NOW, 60_000, true)));
        }
    }

    @Test
    void of_many_views_in_a_row_the_newest_is_always_told_and_none_goes_back() throws Exception {
        try (ServiceLink link = link()) {
            await().until(() -> service.listeners() > 0);
            for (int second = 1; second <= 40; second++) service.show(Samples.at(Samples.NOW.plusSeconds(second)));
            await().until(() -> news.contains(new LinkEvent.Seen(Samples.at(Samples.NOW.plusSeconds(40)))));
            assertThat(news.stream()
                            .filter(LinkEvent.Seen.class::isInstance)
                            .map(seen -> ((LinkEvent.Seen) seen).view().time())
                            .toList())
                    .isSorted();
        }
    }

    @Test
    void entries_made_while_the_link_is_cut_are_sent_once_and_in_order() throws Exception {
        try (ServiceLink link = link()) {
            await().until(() -> service.listeners() > 0);
            service.breakDown();
            await().until(() -> count(LinkEvent.Cut.class) > 0);
            for (int i = 1; i <= 3; i++) link.send("tamsin", new HandOverBowl(i + "a"), "entry " + i);
            await().until(() -> news.contains(new LinkEvent.Waiting(3)));
            assertThat(taken()).isEmpty();
            service.recover();
            await().until(() -> count(LinkEvent.Taken.class) == 3);
            assertThat(taken()).containsExactly(new HandOverBowl("1a"), new HandOverBowl("2a"), new HandOverBowl("3a"));
            assertThat(news)
                    .contains(new LinkEvent.Taken(new HandOverBowl("1a"), "entry 1", true), new LinkEvent.Waiting(0));
        }
    }

    @Test
    void entries_survive_a_restart_of_the_terminal() throws Exception {
        service.breakDown();
        try (ServiceLink link = link()) {
            link.send("tamsin", new HandOverBowl("1a"), "before");
            await().until(() -> news.contains(new LinkEvent.Waiting(1)));
        }
        service.recover();
        try (ServiceLink again = link()) {
            again.send("tamsin", new HandOverBowl("2a"), "after");
            await().until(() -> taken().size() == 2);
            assertThat(taken()).containsExactly(new HandOverBowl("1a"), new HandOverBowl("2a"));
        }
    }

    @Test
    void a_refusal_is_told_in_the_services_words_and_the_next_entry_goes_on() throws Exception {
        service.refuse("FinishBowl", "Bowl 1a was binned by Bohdan; nothing is left to finish.");
        try (ServiceLink link = link()) {
            var finish = new DayCommand.FinishBowl("1a");
            link.send("tamsin", finish, "bowl 1a finished");
            link.send("tamsin", new HandOverBowl("2a"), "entry 2");
            await().until(() -> count(LinkEvent.Taken.class) == 1);
            assertThat(news)
                    .contains(new LinkEvent.Refused(
                            finish, "bowl 1a finished", "Bowl 1a was binned by Bohdan; nothing is left to finish."));
            assertThat(taken()).containsExactly(new HandOverBowl("2a"));
        }
    }

    @Test
    void the_last_picture_is_kept_for_the_next_start() throws IOException {
        var home = new StateFolder(folder, Samples.DAY);
        assertThat(home.remembered()).isEmpty();
        home.remember(Samples.busy());
        assertThat(home.remembered()).contains(Samples.busy());
    }
}
