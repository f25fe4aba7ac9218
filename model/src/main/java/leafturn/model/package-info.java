/** The science of a lawn as pure functions and small records. Parameters stand here. */
@NullMarked
package leafturn.model;

import org.jspecify.annotations.NullMarked;
