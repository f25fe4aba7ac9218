/**
 * Figures as SVG text of our own making, the same for a page and a document. Colours come from the
 * style sheet through class names; nothing is positioned by inline style.
 */
@NullMarked
package leafturn.reports.figure;

import org.jspecify.annotations.NullMarked;
