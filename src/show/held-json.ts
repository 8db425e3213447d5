import type { HeldBed, HoldPlan, WallPiece } from "../assembly/index.ts";
import type { Corner } from "../geometry/index.ts";
import { type Ruler } from "../lengths/index.ts";
import { aboutHoldCheck, sayHoldCheck, sayMaterial, sayMovement, sayRefused } from "../words/held.ts";
import type { Speech } from "../words/index.ts";
import { sizeJson, checkJson, lengthsJson } from "./json.ts";

/** How a work is held, in the open format: a maximum rounded down, a minimum up, a place to the nearest. */
export function heldJson(plan: HoldPlan, speech: Speech): object {
  const { ruler } = speech;
  const { at, most, least } = lengthsJson(ruler);
  const { way, asked, refused, pockets, strips, hinges, boards, movement } = plan;
  return {
    way,
    asked,
    refused: refused.map((one) => ({ way: one.way, text: sayRefused(one, speech) })),
    never: plan.never,
    pockets:
      pockets === null
        ? null
        : {
            leg: most(pockets.leg),
            play: least(pockets.play),
            hidden: Object.fromEntries(
              pockets.each.map(({ corner, hidden }): [Corner, object] => [corner, most(hidden)]),
            ),
          },
    strips:
      strips === null
        ? null
        : strips.each.map(({ side, from, length, reach, gap }) => ({
            side,
            from: at(from),
            length: most(length),
            reach: most(reach),
            gap: least(gap),
          })),
    hinges: {
      kind: hinges.kind,
      at: hinges.at.map(at),
      tab: sizeJson(hinges.tab, at),
      pasted: at(hinges.pasted),
      bare: at(hinges.bare),
      cross: sizeJson(hinges.cross, at),
      slit: { down: at(hinges.slit.down), length: least(hinges.slit.length) },
    },
    bed: bedJson(plan.bed, ruler),
    boards: {
      side: boards.side,
      length: at(boards.length),
      tape: at(boards.tape),
      between: at(boards.between),
    },
    movement: { width: least(movement.width), height: least(movement.height), by: sayMovement(plan) },
    grams: plan.grams === null ? null : Math.round(plan.grams * 10) / 10,
    process: plan.process,
    buffer: plan.buffer,
    materials: plan.materials.map(({ topic, source, known }) => ({
      topic,
      text: sayMaterial(topic),
      source,
      known,
    })),
    checks: plan.checks.map((check) => checkJson(check, sayHoldCheck(check, speech), aboutHoldCheck(check))),
  };
}

function bedJson(bed: HeldBed, ruler: Ruler): object {
  const { at, least } = lengthsJson(ruler);
  const pieces = (all: readonly WallPiece[]): object =>
    all.map(({ side, width, length }) => ({ side, width: at(width), length: at(length) }));
  switch (bed.kind) {
    case "flat":
      return { kind: bed.kind };
    case "sink":
      return {
        kind: bed.kind,
        opening: sizeJson(bed.opening, at),
        room: at(bed.room),
        depth: at(bed.depth),
        layers: bed.layers,
        layer: at(bed.layer),
        board: bed.board,
        odd: pieces(bed.odd),
        even: pieces(bed.even),
      };
    case "raised":
      return {
        kind: bed.kind,
        riser: sizeJson(bed.riser, at),
        left: at(bed.left),
        top: at(bed.top),
        height: at(bed.height),
        spacer: least(bed.spacer),
      };
  }
}
