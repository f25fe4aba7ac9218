/**
 * Weather of a site by the day: reference evapotranspiration, radiation, growing potential, soil
 * temperature, daylength.
 */
@NullMarked
package leafturn.model.weather;

import org.jspecify.annotations.NullMarked;
