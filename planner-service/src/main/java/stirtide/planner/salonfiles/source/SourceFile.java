package stirtide.planner.salonfiles.source;

/** One file of the folder while it is read: its name, and where its problems go. */
public final class SourceFile {
    private final String name;
    private final int rank;
    private final ProblemCollector problems;

    /**
     * @param name file name relative to the folder
     * @param rank place of the file in the order of reading
     */
    public SourceFile(String name, int rank, ProblemCollector problems) {
        this.name = name;
        this.rank = rank;
        this.problems = problems;
    }

    /** File name relative to the folder. */
    public String name() {
        return name;
    }

    /** Refuses the whole file. */
    public void refuse(String value, String accepted) {
        refuse(0, 0, "", value, accepted);
    }

    /** Refuses a place in the file; line and column only order the problems. */
    public void refuse(int line, int column, String place, String value, String accepted) {
        problems.add(rank, line, column, new FileProblem(name, place, value, accepted));
    }
}
