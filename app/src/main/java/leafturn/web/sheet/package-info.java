/** How sheets of each kind are entered, told in words, and compared with what they said before. */
@NullMarked
package leafturn.web.sheet;

import org.jspecify.annotations.NullMarked;
