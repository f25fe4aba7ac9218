/** Pages: a request into one call, its result into a page. */
@NullMarked
package leafturn.web;

import org.jspecify.annotations.NullMarked;
