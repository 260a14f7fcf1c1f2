package stirtide.planner.privacy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import stirtide.planner.access.CheckedFile;

/**
 * The list of the erased, as it was found beside the keys.
 *
 * @param ids of all who were erased
 * @param found whether there is a list
 * @param checked whether it was held against a digest
 */
record ErasedClients(List<String> ids, boolean found, boolean checked) {
    /**
     * Reads the list; there is none as long as nobody was erased.
     *
     * @throws IOException when it is not what was written
     */
    static ErasedClients read(Path file) throws IOException {
        if (!Files.isRegularFile(file)) return new ErasedClients(List.of(), false, false);
        CheckedFile.Content content = CheckedFile.read(file);
        List<String> ids = content.text().lines().toList();
        for (String id : ids)
            if (!ClientKeys.ID.matcher(id).matches())
                throw new IOException(
                        file + " is no list of erased clients: accepted are ids such as c000017, one a line");
        return new ErasedClients(ids, true, content.checked());
    }

    /**
     * Holds the list against the keys, which are written after it.
     *
     * @param keysChecked whether the keys have a digest, so that the list must have one too
     * @param erased how many were erased when the keys were written
     * @throws IOException when the list is missing, empty or shortened
     */
    void requireWhole(Path file, boolean keysChecked, int erased) throws IOException {
        if (ids.size() < erased)
            throw new IOException(file + " is missing, empty or shortened: it names " + ids.size() + " of " + erased
                    + " clients who were erased");
        if (found && keysChecked && !checked) throw new IOException(file + " is shortened: its digest is missing");
    }
}
