package stirtide.bench;

import java.util.List;

/** A plot of milliseconds over runs, both axes from 0, as SVG. */
final class GrowthPlot {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 360;
    private static final int EDGE = 60;
    private static final String[] STROKES = {"", " stroke-dasharray='7 4'"};

    /** One day: its runs and the time it took. */
    record Point(int runs, long millis) {}

    /** Days of one load. */
    record Line(String name, List<Point> points) {}

    private GrowthPlot() {}

    static String svg(List<Line> lines) {
        int mostRuns = 1;
        long mostMillis = 1;
        for (Line line : lines) {
            for (Point point : line.points) {
                mostRuns = Math.max(mostRuns, point.runs);
                mostMillis = Math.max(mostMillis, point.millis);
            }
        }
        StringBuilder out = new StringBuilder();
        out.append(
                "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %d %d' font-family='sans-serif' font-size='12'>\n"
                        .formatted(WIDTH, HEIGHT));
        out.append("<title>Milliseconds until within 0.1 % of the bound, over runs of the day</title>\n");
        out.append("<rect width='100%' height='100%' fill='white'/>\n");
        out.append("<path d='M%d %dV%dH%d' fill='none' stroke='black'/>\n"
                .formatted(EDGE, EDGE / 2, HEIGHT - EDGE, WIDTH - EDGE / 2));
        text(out, EDGE - 6, EDGE / 2 + 4, "end", mostMillis + " ms");
        text(out, EDGE - 6, HEIGHT - EDGE + 4, "end", "0");
        text(out, WIDTH - EDGE / 2, HEIGHT - EDGE + 18, "end", mostRuns + " runs");
        for (int i = 0; i < lines.size(); i++) {
            line(out, lines.get(i), STROKES[i % STROKES.length], mostRuns, mostMillis);
            text(out, EDGE + 60, HEIGHT - 12 - 16 * i, "start", lines.get(i).name);
            int y = HEIGHT - 16 - 16 * i;
            out.append("<path d='M%d %dH%d' stroke='black'%s/>\n"
                    .formatted(EDGE, y, EDGE + 50, STROKES[i % STROKES.length]));
        }
        return out.append("</svg>\n").toString();
    }

    private static void line(StringBuilder out, Line line, String stroke, int mostRuns, long mostMillis) {
        StringBuilder path = new StringBuilder();
        for (Point point : line.points) {
            long x = EDGE + (long) point.runs * (WIDTH - EDGE - EDGE / 2) / mostRuns;
            long y = HEIGHT - EDGE - point.millis * (HEIGHT - EDGE - EDGE / 2) / mostMillis;
            path.append(path.isEmpty() ? "M" : "L").append(x).append(' ').append(y);
            out.append("<circle cx='%d' cy='%d' r='3'><title>%d runs, %d ms</title></circle>\n"
                    .formatted(x, y, point.runs, point.millis));
        }
        out.append("<path d='%s' fill='none' stroke='black'%s/>\n".formatted(path, stroke));
    }

    private static void text(StringBuilder out, int x, int y, String anchor, String words) {
        out.append("<text x='%d' y='%d' text-anchor='%s'>%s</text>\n".formatted(x, y, anchor, words));
    }
}
