package stirtide.planner.cli;

import picocli.CommandLine.IVersionProvider;

/** The version of this program, as {@code --version} prints it. */
public final class ProgramVersion implements IVersionProvider {
    /** Version of the release; the same as in the build file. */
    static final String VERSION = "0.1.0";

    @Override
    public String[] getVersion() {
        return new String[] {"stirtide " + VERSION};
    }
}
