/** Everything a picture is drawn from, and the contract of panels. Start with Scene. */
@NullMarked
package stirtide.bar.scene;

import org.jspecify.annotations.NullMarked;
