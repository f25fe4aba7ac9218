/**
 * Tables that people keep in CSV files and spreadsheets, read as cells of text with their places.
 */
@NullMarked
package leafturn.records.table;

import org.jspecify.annotations.NullMarked;
