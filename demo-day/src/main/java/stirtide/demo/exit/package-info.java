@NullMarked
package stirtide.demo.exit;

import org.jspecify.annotations.NullMarked;
