package stirtide.planner.salonfiles.json;

import java.util.List;
import stirtide.events.setup.Developer;

/** {@code developers.json}: the developers on the shelf. */
public record DevelopersFile(List<Developer> developers) {}
