import type { Size } from "../geometry/index.ts";
import { type Length, printExact, type Ruler } from "../lengths/index.ts";
import type { Misfit, SeriesJob, SeriesPlan, SeriesStep } from "../plans/index.ts";
import { wholeWords } from "./figures.ts";
import { sentence } from "./plain.ts";

/** What a series is spoken about with: its job, for the names, and the ruler of its figures. */
export interface SeriesSpeech {
  readonly job: SeriesJob;
  readonly ruler: Ruler;
}

/** Why no size serves a work, with a way out: the border that is most in the way where a size comes nearest. */
export function sayMisfit(work: number, why: Misfit | null, { job, ruler }: SeriesSpeech): string {
  const name = job.works[work]?.name ?? "";
  if (why === null) return `${name}: there is no size to choose from. Add one.`;
  const say = (length: Length): string => printExact(length, ruler.unit);
  const at = `${name}: on ${sizeText(why.outer, ruler)}, which comes nearest, the ${why.side} border`;
  if (why.border < 0)
    return `${at} would pass the board by ${say((0 - why.border) as Length)}. Add a larger size.`;
  switch (why.code) {
    case "narrow":
      return `${at} would be ${say(why.border)}, less than ${say(why.limit)}. Add a larger size, or allow narrower borders.`;
    case "wide":
      return `${at} would be ${say(why.border)}, more than ${say(why.limit)}. Add a smaller size, or allow wider borders.`;
    case "paper":
      return `${at} would be ${say(why.border)}, and the paper reaches ${say(why.limit)} past the window. Add a larger size.`;
  }
}

/** A series as lines for a terminal: for every number of sizes what it costs and what the last one saves, then the works of each size. */
export function saySeries(plan: SeriesPlan, speech: SeriesSpeech): string[] {
  const stops = plan.unserved.map(({ work, why }) => `STOP  ${sayMisfit(work, why, speech)}`);
  if (plan.steps.length === 0) return ["no work is served", ...stops];
  return [
    ...(plan.fewest > 1 ? [`${sentence(sizesWord(plan.fewest))} at the least serve all.`] : []),
    ...plan.steps.flatMap((step) => [
      stepLine(step),
      ...step.sizes.map((one) => `  ${sizeLine(one, speech)}`),
    ]),
    "A further size saves nothing.",
    ...(stops.length === 0 ? [] : [""]),
    ...stops,
  ];
}

const sizesWord = (count: number): string => `${wholeWords(count)} size${count === 1 ? "" : "s"}`;

function stepLine({ sizes, cost, bound, proven, saving }: SeriesStep): string {
  const claim = proven ? "none cost less" : `none cost less than ${money(bound)}`;
  const saves = saving === null ? "" : `, ${money(saving)} less than ${wholeWords(sizes.length - 1)}`;
  return `${sizesWord(sizes.length)}: ${money(cost)}${saves}; ${claim}`;
}

function sizeLine({ size, works }: SeriesStep["sizes"][number], { job, ruler }: SeriesSpeech): string {
  const own = job.sizes[size];
  if (own === undefined) return "";
  const count = works.reduce((sum, { work }) => sum + (job.works[work]?.count ?? 0), 0);
  const names = works.map(({ work }) => job.works[work]?.name ?? "").join("; ");
  return `${own.name === "" ? sizeText(own, ruler) : own.name}, ${count} work${count === 1 ? "" : "s"}: ${names}`;
}

const sizeText = ({ width, height }: Size, { unit }: Ruler): string =>
  `${printExact(width, unit)} × ${printExact(height, unit)}`;

/** To the hundredth; finer only where the prices are. */
const money = (amount: number): string => {
  const text = amount.toFixed(4);
  return text.endsWith("00") ? text.slice(0, -2) : text;
};
