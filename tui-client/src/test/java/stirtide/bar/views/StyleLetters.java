package stirtide.bar.views;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stirtide.bar.canvas.Canvas;
import stirtide.bar.canvas.Style;

/** One letter for each style, as golden frames write them. */
final class StyleLetters {
    private static final Map<Style, Character> LETTERS = Map.of(
            Style.TEXT, '.',
            Style.DIM, 'd',
            Style.RULE, 'r',
            Style.STRONG, 's',
            Style.HIGH, 'H',
            Style.MEDIUM, 'M',
            Style.LOW, 'L',
            Style.PICKED, 'p');

    private StyleLetters() {}

    static char of(Style style) {
        return LETTERS.getOrDefault(style, '?');
    }

    /** The rows of a picture, a letter a cell. */
    static List<String> rows(Canvas canvas) {
        return IntStream.range(0, canvas.height())
                .mapToObj(row -> IntStream.range(0, canvas.width())
                        .mapToObj(column -> String.valueOf(of(canvas.style(column, row))))
                        .collect(Collectors.joining()))
                .toList();
    }
}
