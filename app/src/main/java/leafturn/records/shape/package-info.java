/**
 * The outline of a lawn, a bed or a border: pieces with holes on a plain metric grid, from a list
 * of corners, from JSON and from GeoJSON.
 */
@NullMarked
package leafturn.records.shape;

import org.jspecify.annotations.NullMarked;
