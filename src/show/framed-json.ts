import type { Fit, FramePlan, Seen } from "../assembly/index.ts";
import { fineRuler, type Length } from "../lengths/index.ts";
import { aboutFrameCheck, frameStepName, layerName, partName, sayFrameCheck } from "../words/frame.ts";
import type { Speech } from "../words/index.ts";
import { saySum } from "../words/reckoning.ts";
import { roundedUp, sayMass } from "../words/weights.ts";
import { sizeJson, sidesJson, checkJson, lengthsJson } from "./json.ts";

const seenJson = ({ hidden, seen, lift }: Seen, at: (length: Length) => object): object => ({
  hidden: sidesJson(hidden, at),
  seen: sidesJson(seen, at),
  lift: at(lift),
});

/** A framed work in the open format: a maximum rounded down, a minimum and a load up, a place to the nearest. */
export function framedJson(plan: FramePlan, speech: Speech): object {
  const { ruler } = speech;
  const { at } = lengthsJson(ruler);
  const { at: thick, least, most } = lengthsJson(fineRuler(ruler));
  const { frame, sizes, stack, glazing, backing, spacers, mass, wood } = plan;
  const mats = stack.layers.filter(({ kind }) => kind === "mat").length;
  return {
    kind: frame.name,
    moulding: frame.profile.name,
    exists: frame.opening !== null,
    opening: sizeJson(sizes.opening, at),
    outer: sizeJson(sizes.outer, at),
    sight: sizeJson(sizes.sight, at),
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
            ...sizeJson(glazing, at),
            thickness: thick(glazing.thickness),
            grows: sizeJson(glazing.grows, least),
            room: sizeJson(glazing.room, most),
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
    backing: backing === null ? null : { board: frame.backing?.board ?? "", ...sizeJson(backing, at) },
    dustCover: sizeJson(plan.dustCover, at),
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
    checks: plan.checks.map((check) =>
      checkJson(check, sayFrameCheck(check, speech), aboutFrameCheck(check)),
    ),
    reckoning: plan.reckoning.map((step) => ({
      name: frameStepName(step.name, speech),
      sum: saySum(step, ruler.unit),
      is: at(step.is),
    })),
  };
}

/** How one work goes into a frame or a mat that exists, in the open format. `shown`: above nought paper is seen round the image, below it the image is covered. */
export function fitJson({ plan, composition, turned, stops, warnings, shown }: Fit, speech: Speech): object {
  const { at } = lengthsJson(speech.ruler);
  return {
    turned,
    outer: sizeJson(composition.outer, at),
    seen: sidesJson(plan.stands.seen, at),
    shown: shown === null ? null : sidesJson(shown, at),
    stops,
    warnings,
  };
}
