import {
  compose,
  type Composition,
  type Design,
  type HoldFacts,
  type HoldPlan,
  NOTHING_KNOWN,
  planHold,
  USUAL_HOLD,
} from "../../src/assembly/index.ts";
import { readDesign } from "../../src/show/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";

/** A design document read with the usual habits. */
export function designOf(document: ComposeDocument): Design {
  const design = readDesign(document);
  if (!design.ok) throw new Error(JSON.stringify(design.problems));
  return design.value;
}

export const composedOf = (document: ComposeDocument): Composition => compose(designOf(document));

/** How a document's work is held, with what is known of it. */
export function heldOf(document: ComposeDocument, facts: Partial<HoldFacts> = {}): HoldPlan {
  const design = designOf(document);
  const plan = planHold(compose(design), { ...NOTHING_KNOWN, ...facts }, USUAL_HOLD[design.ruler.unit]);
  if (plan === null) throw new Error("it has a print");
  return plan;
}

/** A print with so much paper round its image, on a board with 2 in borders. */
export const printed = (
  width: number,
  height: number,
  margin = 1,
  more: ComposeDocument = {},
): ComposeDocument => ({
  unit: "in",
  print: {
    width,
    height,
    image: { left: margin, top: margin, width: width - 2 * margin, height: height - 2 * margin },
  },
  outer: { borders: { head: 2 + margin, side: 2 + margin, foot: 3 + margin } },
  ...more,
});

export const codesOf = ({ checks }: HoldPlan): readonly string[] => checks.map(({ code }) => code);
