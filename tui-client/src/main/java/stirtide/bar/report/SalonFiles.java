package stirtide.bar.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stirtide.events.view.SetupView;

/**
 * Writes what is in force as the files of a salon, for a folder that a day can be planned from. Files that are there are
 * never written over: a folder of its own is made beside them.
 */
public record SalonFiles(Path folder) {
    private static final int MOST_FOLDERS = 99;

    /** Writes the files; the answer says where, or why not. */
    public String write(SetupView setup) {
        String name = setup.setup().salon().salonId().replaceAll("[^A-Za-z0-9-]", "_") + "-"
                + setup.setup().date() + "-files";
        try {
            Path place = free(name);
            for (Map.Entry<String, String> file : setup.files().entrySet()) {
                Path target = place.resolve(file.getKey()).normalize();
                if (!target.startsWith(place)) return "not written: the service named a file outside the folder";
                Files.createDirectories(target.getParent() == null ? place : target.getParent());
                Files.writeString(target, file.getValue());
            }
            return "written: " + setup.files().size() + " files in " + place;
        } catch (IOException noPlace) {
            return "not written: " + folder + " takes no files (" + noPlace.getMessage() + ")";
        }
    }

    private Path free(String name) throws IOException {
        if (Files.isDirectory(folder) && isEmpty(folder)) return folder;
        for (int i = 1; i <= MOST_FOLDERS; i++) {
            Path place = folder.resolve(i == 1 ? name : name + "-" + i);
            if (!Files.exists(place)) return place;
        }
        throw new IOException(MOST_FOLDERS + " folders of that name are there already");
    }

    // The log of a salon that is kept beside its files, and hidden files, do not count.
    private static boolean isEmpty(Path place) throws IOException {
        try (Stream<Path> inside = Files.list(place)) {
            return inside.map(file -> file.getFileName().toString())
                    .allMatch(file -> List.of("log", "terminal").contains(file) || file.startsWith("."));
        }
    }
}
