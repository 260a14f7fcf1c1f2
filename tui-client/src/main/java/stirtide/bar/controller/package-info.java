/** What the terminal knows and what a key or a message does to it. No I/O, no clock, one thread. Start with Desk. */
@NullMarked
package stirtide.bar.controller;

import org.jspecify.annotations.NullMarked;
