import { add, fromReal, larger, type Length, mm, smaller, subtract, sum, ZERO } from "../../lengths/index.ts";
import { type Block, block, gap, placed, rule, stack } from "../block.ts";
import { actsOf } from "./acts.ts";
import { type BenchDesk, numberedStops } from "./desk.ts";
import { layingPanel, LEAST_LAYING } from "./laying.ts";
import { benchPanel, leastBand, matBand } from "./mat-band.ts";
import { PICTURES_HEIGHT, threePictures } from "./pictures.ts";
import { STEPS_WIDTH, stepPieces } from "./steps.ts";

const GUTTER = mm(6);
const STEP_GAP = mm(0.9);
const MOST_AIR = mm(18);
/** Steps further apart than this no longer read as one list. */
const MOST_SPREAD = mm(3);
/** Past this a drawing only drives its figures apart. */
const MOST_DRAWING = mm(50);

/**
 * Head, cuts, pictures, steps and laying on one page, for one mat. What gives way is air first, then
 * the drawing; null where even the least drawing and the least rows do not fit.
 */
export function onePage(desk: BenchDesk, head: Block, width: Length, room: Length): Block | null {
  const stops = numberedStops(desk.job.composition.stops);
  const tight = stepsAndLaying(desk, width, STEP_GAP, LEAST_LAYING);
  const fixed = sum([head.height, PICTURES_HEIGHT, mm(2.4)]);
  const least = leastBand(desk, 0, stops);
  const free = subtract(room, sum([fixed, tight.height, least]));
  if (free < 0) return null;
  // What is left over goes to the drawing first, then between the steps.
  const airy = smaller(larger(subtract(free, mm(24)), ZERO), MOST_AIR);
  const between = add(STEP_GAP, fromReal(airy / actsOf(desk).length, "down"));
  const below = stepsAndLaying(desk, width, between, add(LEAST_LAYING, airy));
  const drawing = smaller(subtract(room, sum([fixed, below.height])), add(least, MOST_DRAWING));
  return stack([
    head,
    matBand(desk, 0, stops, width, drawing),
    rule(width, "rule"),
    threePictures(desk, width),
    rule(width, "rule"),
    gap(mm(2.4)),
    below,
  ]);
}

/** The steps, and beside them how the print lies and what must be at hand. Where the steps are the lower, their gaps take up the rest. */
function stepsAndLaying(desk: BenchDesk, width: Length, between: Length, high: Length): Block {
  const { print } = desk.job.composition;
  const acts = actsOf(desk);
  const beside = subtract(width, add(STEPS_WIDTH, GUTTER));
  const stepsWith = (space: Length): Block =>
    stack(stepPieces(desk, acts, STEPS_WIDTH, space).map((piece) => piece.block));
  const side = stack(
    [...(print === null ? [] : [layingPanel(desk, print, beside, high)]), benchPanel(desk, beside)],
    mm(2.2),
  );
  const spare = larger(subtract(side.height, stepsWith(between).height), ZERO);
  const steps = stepsWith(add(between, smaller(fromReal(spare / acts.length, "down"), MOST_SPREAD)));
  return block(width, larger(steps.height, side.height), [
    ...steps.marks,
    ...placed(side, add(STEPS_WIDTH, GUTTER), ZERO),
  ]);
}
