/** The front door: builds the objects and hands over to a command. */
@NullMarked
package leafturn;

import org.jspecify.annotations.NullMarked;
