package stirtide.planner.planning.floor;

/** Minutes of application of a service, on the clock when nobody waits. */
final class ZoneTimes {
    /** Number of minutes of application. */
    final int minutes;
    /** First minute of each zone; one more entry, the number of minutes, at the end. */
    final int[] first;
    /** Zone of each minute. */
    final int[] zone;
    /** When each minute begins. */
    final int[] clock;
    /** Grams used before each minute, in decigrams; one more entry at the end. */
    final int[] used;

    ZoneTimes(FloorService service) {
        int zones = service.zones().size();
        this.first = new int[zones + 1];
        for (int z = 0; z < zones; z++) {
            first[z + 1] = first[z] + service.zones().get(z).applyMinutes();
        }
        this.minutes = first[zones];
        this.zone = new int[minutes];
        this.clock = new int[minutes];
        this.used = new int[minutes + 1];
        int now = service.bookedMinute();
        int before = 0;
        for (int z = 0; z < zones; z++) {
            FloorZone one = service.zones().get(z);
            now += z == 0 ? 0 : one.gapMinutes();
            for (int i = 0; i < one.applyMinutes(); i++) {
                zone[first[z] + i] = z;
                clock[first[z] + i] = now++;
                used[first[z] + i + 1] = before + one.decigrams() * (i + 1) / one.applyMinutes();
            }
            before += one.decigrams();
        }
    }

    /** The minute after the last of a zone. */
    int end(int zone) {
        return clock[first[zone + 1] - 1] + 1;
    }

    /** When the last zone of the service wishes for the rinse. */
    int lastWish(FloorService service) {
        int last = service.zones().size() - 1;
        return end(last) + service.zones().get(last).processMinutes();
    }
}
