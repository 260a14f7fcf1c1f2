/** Lists and texts inside panels: the cursor of a list, scrolled text, the answer to an inquiry. */
@NullMarked
package stirtide.bar.panels.list;

import org.jspecify.annotations.NullMarked;
