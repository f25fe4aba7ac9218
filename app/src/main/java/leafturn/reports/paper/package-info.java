/** Documents on paper: well-formed XHTML in, PDF with its type faces embedded out. */
@NullMarked
package leafturn.reports.paper;

import org.jspecify.annotations.NullMarked;
