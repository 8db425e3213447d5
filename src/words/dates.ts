const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})/;

/** `2026-11-25` as `25 Nov 2026`, the month in letters since the two sides of the ocean order its figures differently. Anything that is no ISO date stays as it came. */
export function dateWords(iso: string): string {
  const match = ISO_DATE.exec(iso);
  const month = MONTHS[Number(match?.[2]) - 1];
  return match && month !== undefined ? `${Number(match[3])} ${month} ${match[1]}` : iso;
}

/** The same without its year: `25 Nov`. */
export function shortDate(iso: string): string {
  const match = ISO_DATE.exec(iso);
  const month = MONTHS[Number(match?.[2]) - 1];
  return match && month !== undefined ? `${Number(match[3])} ${month}` : iso;
}
