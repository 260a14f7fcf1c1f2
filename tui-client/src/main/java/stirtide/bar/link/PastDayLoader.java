package stirtide.bar.link;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import stirtide.bar.model.DayOverMix;
import stirtide.events.view.DayView;

/** Earlier days of a salon: those the service tells, and of the others those whose picture this machine has kept. */
final class PastDayLoader {
    private static final int MOST = 60;

    private PastDayLoader() {}

    static List<DayOverMix> of(DayClient api, StateFolder home, String day) throws IOException, InterruptedException {
        var byDay = new TreeMap<String, DayOverMix>();
        home.kept().forEach(view -> add(byDay, view, day));
        var wanted = new ArrayList<>(new TreeSet<>(names(api.days())));
        wanted.removeIf(name -> !isEarlier(name, day));
        for (String name : wanted.subList(Math.max(0, wanted.size() - MOST), wanted.size()))
            add(byDay, api.day(name), day);
        return List.copyOf(byDay.values());
    }

    private static void add(TreeMap<String, DayOverMix> byDay, DayView view, String day) {
        String name = view.salonId() + "/" + view.date();
        if (!isEarlier(name, day)) return;
        byDay.put(name, DayOverMix.of(view));
    }

    private static boolean isEarlier(String name, String day) {
        String salon = day.substring(0, day.indexOf('/') + 1);
        return name.startsWith(salon) && name.compareTo(day) < 0;
    }

    /** Names of days, salon id and date, in the service's answer. */
    static List<String> names(JsonNode answer) {
        var names = new ArrayList<String>();
        answer.path("days").forEach(day -> names.add(day.path("day").asText("")));
        return names;
    }
}
