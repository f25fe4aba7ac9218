/**
 * Hours of a day from its daily weather: temperature, humidity, wind, radiation, water on the
 * leaves, and when the grass is dry enough to mow.
 */
@NullMarked
package leafturn.model.weather.hourly;

import org.jspecify.annotations.NullMarked;
