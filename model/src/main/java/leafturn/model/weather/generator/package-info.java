/**
 * Weather that may come: a daily weather generator fitted to a site's record.
 *
 * <pre>{@code
 * WeatherGenerator generator = WeatherGenerator.fitted(record);
 * WeatherEve eve = generator.eve(record, record.days() - 1);       // or WeatherEve.unknown()
 * WeatherSeries days = generator.generate(new RandomStream(seed, 17), eve, firstDay, 365);
 * }</pre>
 *
 * <p>Possible season 17 of a seed is the same whoever asks, in any order and on any thread. Rain
 * comes first: whether a day is wet follows from the month and the day before, how much it rains
 * from the month. Temperatures, and wind, radiation and humidity where the record has them, follow
 * the season in wet and dry days apart, with deviations that live on from day to day and go
 * together. What the generator was fitted to, and what it had to borrow or leave out, stands in its
 * notes. Its known limits: months and years differ too little from one another, and long dry runs
 * are too short, above all in dry climates.
 */
@NullMarked
package leafturn.model.weather.generator;

import org.jspecify.annotations.NullMarked;
