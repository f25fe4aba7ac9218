// An entry in words, as they stand beside "Save" and in the list of what is not sent yet.

const DAY = new Intl.DateTimeFormat("en-GB", { weekday: "long", day: "numeric", month: "long", timeZone: "UTC" });
const MOMENT = new Intl.DateTimeFormat("en-GB", { weekday: "short", hour: "2-digit", minute: "2-digit" });

/** A day of the calendar in words, for instance "Friday 29 May". */
export function dayWords(day) {
  const date = new Date(`${day}T00:00:00Z`);
  return Number.isNaN(date.getTime()) ? "no day" : DAY.format(date).replace(",", "");
}

/** When something was kept, for instance "Fri 14:05". */
export function momentWords(iso) {
  return MOMENT.format(new Date(iso)).replace(",", "");
}

/** The day of an entry, with its year where that is another one than the year it was typed in. */
export function dayOfEntry({ day, thisYear }) {
  const words = dayWords(day);
  return day && thisYear && !day.startsWith(thisYear) ? `${words} ${day.slice(0, 4)}` : words;
}

/** What an entry says, for instance "Watered for Friday 29 May · Water given: 12 mm". */
export function entryWords(entry) {
  return [`${entry.heading} for ${dayOfEntry(entry)}`, ...entry.details].join(" · ");
}

/** The day it is in a time zone, by this phone's clock or at a moment: 2015-05-29. */
export function today(timeZone, moment = new Date()) {
  const parts = { year: "numeric", month: "2-digit", day: "2-digit" };
  return new Intl.DateTimeFormat("en-CA", { ...parts, timeZone: timeZone || undefined }).format(moment);
}

/** What saving a form means, for instance "Cut to 76 mm, all clippings returned. Friday 29 May." */
export function meaning(as, values, { units, heightUnit }) {
  const day = `${dayWords(values.get("day") ?? "")}.`;
  const [returned, collected] = units === "us" ? ["left", "bagged"] : ["returned", "collected"];
  const mowing = { returned: `all clippings ${returned}`, collected: `all clippings ${collected}` };
  const share = as === "part-returned" ? shareWords(values.get("returnedShare"), returned) : mowing[as];
  if (!share) {
    return day;
  }
  const height = values.get("heightAfterMm")?.trim();
  return `${height ? `Cut to ${height}\u00a0${heightUnit}` : "Cut as usual"}, ${share}. ${day}`;
}

function shareWords(typed, returned) {
  const share = Number((typed ?? "").replace(",", "."));
  return typed && share >= 0 && share <= 1
    ? `${Math.round(share * 100)}\u00a0% of the clippings ${returned}`
    : `part of the clippings ${returned}`;
}
