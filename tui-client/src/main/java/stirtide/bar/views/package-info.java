/** The bar view drawn from a scene. Start with BarView. */
@NullMarked
package stirtide.bar.views;

import org.jspecify.annotations.NullMarked;
