/** The bar view drawn from a scene. Start with BarView. */
@NullMarked
package stirtide.bar.view;

import org.jspecify.annotations.NullMarked;
