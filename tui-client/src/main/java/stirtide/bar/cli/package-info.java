/** The command line: its options, reading them, and the help and completion made from them. Start with OptionsReader. */
@NullMarked
package stirtide.bar.cli;

import org.jspecify.annotations.NullMarked;
