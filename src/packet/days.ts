/** A day that the calendar has, as ISO 8601 writes it: `2026-11-25`. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const noon = noonOf(text);
  return !Number.isNaN(noon.getTime()) && noon.toISOString().startsWith(text);
}

/** The noon of a day, where no time zone's offset leads into another one: the moment that stands in a file printed on it. */
export const noonOf = (day: string): Date => new Date(`${day}T12:00:00Z`);

/** The day on this machine's own calendar, ISO 8601. */
export const localDay = (now: Date): string =>
  `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;

const two = (value: number): string => String(value).padStart(2, "0");
