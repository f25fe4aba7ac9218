/** Commands: arguments into one call, its result into lines. */
@NullMarked
package leafturn.cli;

import org.jspecify.annotations.NullMarked;
