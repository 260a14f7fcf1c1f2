package stirtide.planner.files;

/** One file of the folder while it is read: its name, and where its problems go. */
final class Source {
    private final String name;
    private final int rank;
    private final Problems problems;

    /**
     * @param name file name relative to the folder
     * @param rank place of the file in the order of reading
     */
    Source(String name, int rank, Problems problems) {
        this.name = name;
        this.rank = rank;
        this.problems = problems;
    }

    String name() {
        return name;
    }

    /** Refuses the whole file. */
    void refuse(String value, String accepted) {
        refuse(0, 0, "", value, accepted);
    }

    /** Refuses a place in the file; line and column only order the problems. */
    void refuse(int line, int column, String place, String value, String accepted) {
        problems.add(rank, line, column, new Problem(name, place, value, accepted));
    }
}
