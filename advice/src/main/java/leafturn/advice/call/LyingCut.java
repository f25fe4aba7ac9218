package leafturn.advice.call;

import java.time.LocalDate;
import leafturn.advice.call.CutKind.NitrogenAtFirst;

/**
 * A cut of the past whose returned clippings have not all broken down.
 *
 * @param day when it was made
 * @param logged true when the log tells it; else it is reckoned from the programme
 * @param dryGPerM2 clippings returned, g dry matter/m2
 * @param carbonPerNitrogen their C:N when they fell
 * @param nitrogenAtFirst what that did to the turf's nitrogen in their first weeks
 * @param leftFraction share that has not broken down, 1 falling to 0
 * @param stillSeen true when they should still be seen, by what is reckoned for this lawn
 */
public record LyingCut(
    LocalDate day,
    boolean logged,
    double dryGPerM2,
    double carbonPerNitrogen,
    NitrogenAtFirst nitrogenAtFirst,
    double leftFraction,
    boolean stillSeen) {}
