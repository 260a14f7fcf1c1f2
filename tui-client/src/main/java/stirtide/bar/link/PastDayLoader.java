package stirtide.bar.link;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import stirtide.bar.client.DayClient;
import stirtide.bar.client.ServiceClient;
import stirtide.bar.model.DayOverMix;
import stirtide.events.view.DayView;

/** Loads the earlier days of a salon: those the service lists, and of the others those whose view this machine has kept. */
final class PastDayLoader {
    private static final int MOST = 60;

    private PastDayLoader() {}

    static List<DayOverMix> load(ServiceClient service, StateFolder folder) throws IOException, InterruptedException {
        var byDay = new TreeMap<String, DayOverMix>();
        String day = folder.day();
        folder.kept().forEach(view -> add(byDay, view, day));
        var wanted = new ArrayList<>(new TreeSet<>(service.days()));
        wanted.removeIf(name -> !isEarlier(name, day));
        for (String name : wanted.subList(Math.max(0, wanted.size() - MOST), wanted.size()))
            add(byDay, new DayClient(service, name).view(), day);
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
}
