/** Soil and thatch: fertiliser, decay and microbes, ammonium and nitrate, soil-test read-outs. */
@NullMarked
package leafturn.model.soil;

import org.jspecify.annotations.NullMarked;
