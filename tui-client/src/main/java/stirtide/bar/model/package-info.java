/** Everything a picture is drawn from, and the contract of panels. Start with Scene. */
@NullMarked
package stirtide.bar.model;

import org.jspecify.annotations.NullMarked;
