/** How the contract is written as JSON. Nothing outside this package configures Jackson for events. */
@NullMarked
package stirtide.events.json;

import org.jspecify.annotations.NullMarked;
