package stirtide.bar.link;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/** The folder where a terminal keeps entries on their way and the last picture of the day. */
public record StateFolder(Path folder, String day) {
    /** The usual folder: {@code $XDG_STATE_HOME/stirtide} or {@code ~/.local/state/stirtide}. */
    public static Path usual(Map<String, String> environment, String userHome) {
        String state = environment.getOrDefault("XDG_STATE_HOME", "");
        Path root = state.isEmpty() ? Path.of(userHome, ".local", "state") : Path.of(state);
        return root.resolve("stirtide");
    }

    Outbox outbox(String personId) throws IOException {
        return Outbox.open(folder, plain(day) + "-" + plain(personId));
    }

    /** Entries of this day that wait on disk, whoever made them. */
    int waitingEntries() throws IOException {
        if (!Files.isDirectory(folder)) return 0;
        int entries = 0;
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "outbox-" + plain(day) + "-*.jsonl")) {
            for (Path file : files)
                entries += (int) Files.readString(file)
                        .chars()
                        .filter(letter -> letter == '\n')
                        .count();
        }
        return entries;
    }

    /** The last picture kept, empty when there is none or it cannot be read. */
    public Optional<DayView> remembered() {
        return read(picture());
    }

    private static Optional<DayView> read(Path picture) {
        try {
            return Optional.of(ContractJson.read(Files.readString(picture), DayView.class));
        } catch (IOException | IllegalArgumentException noneOrOfAnotherVersion) {
            return Optional.empty();
        }
    }

    /** Pictures of all days this folder keeps, those that cannot be read left out. */
    List<DayView> kept() throws IOException {
        if (!Files.isDirectory(folder)) return List.of();
        var views = new ArrayList<DayView>();
        try (DirectoryStream<Path> pictures = Files.newDirectoryStream(folder, "view-*.json")) {
            for (Path picture : pictures) read(picture).ifPresent(views::add);
        }
        return views;
    }

    /** Keeps a picture for the next start. */
    public void remember(DayView view) throws IOException {
        Files.createDirectories(folder);
        Path next = folder.resolve("view-" + plain(day) + ".new");
        Files.writeString(next, ContractJson.write(view));
        Files.move(next, picture(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    private Path picture() {
        return folder.resolve("view-" + plain(day) + ".json");
    }

    private static String plain(String name) {
        return name.replaceAll("[^A-Za-z0-9-]", "_");
    }
}
