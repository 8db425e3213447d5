import { inch, type Length, printExact, printLength, type Ruler } from "../lengths/index.ts";
import type { ChoppingPlan, PlacedRail, RailSide, SawStop, Stick } from "../plans/index.ts";
import { type ChoppingSpeech, sayChoppingBound, sayChoppingCheck } from "./chopping.ts";

/** What the text needs besides the plan. */
export interface ChopTextSpeech extends ChoppingSpeech {
  /** From the longest to the shortest. */
  readonly stops: readonly SawStop[];
  /** Along which side of its frame a rail lies; null: not known. */
  readonly sideOf: (rail: PlacedRail) => RailSide | null;
}

/** A chop plan as lines for a terminal: the claim, the saw's stops, then each stick with its rails in order. */
export function sayChoppingPlan(plan: ChoppingPlan, speech: ChopTextSpeech): string[] {
  const claim = plan.proven
    ? "no plan costs less"
    : `no plan costs less than ${cost(plan.bound.cost)} (${sayChoppingBound(plan.bound.how)})`;
  const { onOneStick, of } = plan.frames;
  return [
    `cost ${cost(plan.cost)}, ${plan.sticks.length} ${plan.sticks.length === 1 ? "length" : "lengths"}; ${claim}`,
    ...(of === 0 ? [] : [`${onOneStick} of ${of} ${of === 1 ? "frame" : "frames"} on one stick`]),
    "",
    "saw stops, long point to long point",
    ...speech.stops.map((stop) => stopLine(stop, speech)),
    ...plan.sticks.flatMap((stick, index) => ["", ...stickLines(stick, index, speech)]),
    ...(plan.checks.length === 0 ? [] : [""]),
    ...plan.checks.map((check) => `STOP  ${sayChoppingCheck(check, speech)}`),
  ];
}

const cost = (amount: number): string => String(Number(amount.toFixed(4)));

/** The finest mark of a tape in inches; a place between its marks is said as the nearest, with `≈`. */
const TAPE: Ruler = { unit: "in", graduation: inch(1, 64) };

const sayIn =
  ({ unit }: ChoppingSpeech) =>
  (length: Length): string => {
    if (unit === "tick") return String(length);
    const exact = printExact(length, unit);
    return exact.endsWith(unit) ? exact : printLength(length, TAPE);
  };

function stopLine({ longPoint, shortPoint, count }: SawStop, speech: ChoppingSpeech): string {
  const say = sayIn(speech);
  const short = shortPoint === null ? "" : ` (short point ${say(shortPoint)})`;
  return `  ${say(longPoint)}${short}: ${count} ${count === 1 ? "rail" : "rails"}`;
}

function stickLines(stick: Stick, index: number, speech: ChopTextSpeech): string[] {
  const { job, sideOf } = speech;
  const say = sayIn(speech);
  const stock = job.lengths[stick.length];
  const name = stock === undefined || stock.name === "" ? "" : ` ${stock.name},`;
  return [
    `stick ${index + 1}:${name} ${say(stock?.length ?? stick.used)}; used ${say(stick.used)}, left ${say(stick.left)}`,
    ...stick.rails.map((placed) => {
      const rail = job.rails[placed.rail];
      const side = sideOf(placed);
      const called = rail === undefined || rail.name === "" ? `rail ${placed.rail + 1}` : rail.name;
      return `  ${called}${side === null ? "" : ` ${side}`}, ${say(rail?.length ?? stick.used)}: from ${say(placed.at)}`;
    }),
  ];
}
