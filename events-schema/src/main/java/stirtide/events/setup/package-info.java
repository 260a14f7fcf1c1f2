/** What a salon brings to a day: its people, scales, bowls, products, directions and menu. Weights are whole milligrams, ratios thousandths of a gram of developer per gram of lightener, strengths hundredths of a per cent by weight. */
@NullMarked
package stirtide.events.setup;

import org.jspecify.annotations.NullMarked;
