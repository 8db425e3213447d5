import type { Fit, FramePlan, Seen } from "../assembly/index.ts";
import type { Sides, Size } from "../geometry/index.ts";
import {
  fineRuler,
  type Length,
  printLength,
  type Rounding,
  type Ruler,
  toMillimetres,
} from "../lengths/index.ts";
import { aboutFrameCheck, frameStepName, layerName, partName, sayFrameCheck } from "../words/frame.ts";
import type { Speech } from "../words/index.ts";
import { saySum } from "../words/reckoning.ts";
import { roundedUp, sayMass } from "../words/weights.ts";

const said =
  (ruler: Ruler, rounding: Rounding = "nearest") =>
  (length: Length): object => ({ mm: toMillimetres(length), text: printLength(length, ruler, rounding) });

const sized = (size: Size, at: (length: Length) => object): object => ({
  width: at(size.width),
  height: at(size.height),
});

const sided = ({ head, left, right, foot }: Sides, at: (length: Length) => object): object => ({
  head: at(head),
  left: at(left),
  right: at(right),
  foot: at(foot),
});

const seenJson = ({ hidden, seen, lift }: Seen, at: (length: Length) => object): object => ({
  hidden: sided(hidden, at),
  seen: sided(seen, at),
  lift: at(lift),
});

/** A framed work in the open format: a maximum rounded down, a minimum and a load up, a place to the nearest. */
export function framedJson(plan: FramePlan, speech: Speech): object {
  const { ruler } = speech;
  const at = said(ruler);
  const fine = fineRuler(ruler);
  const [thick, least, most] = [said(fine), said(fine, "up"), said(fine, "down")];
  const { frame, sizes, stack, glazing, backing, spacers, mass, wood } = plan;
  const mats = stack.layers.filter(({ kind }) => kind === "mat").length;
  return {
    kind: frame.name,
    moulding: frame.profile.name,
    exists: frame.opening !== null,
    opening: sized(sizes.opening, at),
    outer: sized(sizes.outer, at),
    sight: sized(sizes.sight, at),
    stands: frame.seat,
    onFoot: seenJson(plan.onFoot, at),
    shimmed: seenJson(plan.shimmed, at),
    stack: {
      layers: stack.layers.map((layer) => ({
        layer: layerName(layer, mats, speech),
        board: layer.board,
        thickness: thick(layer.thickness),
        within: layer.within,
      })),
      depth: least(stack.depth),
      rabbet: frame.profile.depth === null ? null : most(frame.profile.depth),
      left: plan.left === null ? null : most(plan.left),
      clear: stack.clear === null ? null : most(stack.clear),
    },
    glazing:
      glazing === null
        ? null
        : {
            kind: glazing.kind,
            board: glazing.board,
            ...sized(glazing, at),
            thickness: thick(glazing.thickness),
            grows: sized(glazing.grows, least),
            room: sized(glazing.room, most),
          },
    spacers:
      spacers === null
        ? null
        : {
            high: thick(spacers.high),
            wide: most(spacers.wide),
            long: at(spacers.long),
            between: at(spacers.between),
          },
    backing: backing === null ? null : { board: frame.backing?.board ?? "", ...sized(backing, at) },
    dustCover: sized(plan.dustCover, at),
    mass: {
      kg: roundedUp(mass.total, 3),
      text: sayMass(mass.total),
      parts: mass.parts.map((part) => ({
        part: partName(part, mats, speech),
        kg: roundedUp(part.mass, 3),
        by: part.by,
      })),
    },
    depth: least(plan.depth),
    wood:
      wood === null
        ? null
        : {
            wood: frame.profile.wood?.name ?? "",
            moisture: { from: Math.round(wood.moisture.from), to: Math.round(wood.moisture.to) },
            across: least(wood.across),
            mitre: least(wood.mitre),
            sure: wood.sure,
          },
    checks: plan.checks.map((check) => ({
      code: check.code,
      level: check.level,
      text: sayFrameCheck(check, speech),
      about: aboutFrameCheck(check),
    })),
    reckoning: plan.reckoning.map((step) => ({
      name: frameStepName(step.name, speech),
      sum: saySum(step, ruler.unit),
      is: at(step.is),
    })),
  };
}

/** How one work goes into a frame or a mat that exists, in the open format. `shown`: above nought paper is seen round the image, below it the image is covered. */
export function fitJson({ plan, composition, turned, stops, warnings, shown }: Fit, speech: Speech): object {
  const at = said(speech.ruler);
  return {
    turned,
    outer: sized(composition.outer, at),
    seen: sided(plan.stands.seen, at),
    shown: shown === null ? null : sided(shown, at),
    stops,
    warnings,
  };
}
