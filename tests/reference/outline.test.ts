import { describe, expect, it } from "vitest";
import { composeJson } from "../../src/show/index.ts";
import type { Composed } from "./composed.ts";
import type { Design } from "./document.ts";
import { randomDesign } from "./random-designs.ts";
import { readMillimetres } from "./read-length.ts";

/** The same design with its level image told by the four corners of its outline, going round either way. */
function outlined(design: Design, reversed: boolean): object | null {
  const { print } = design;
  if (print?.image === undefined || print.angle) return null;
  const { image, ...rest } = print;
  const [left, top, width, height] = [image.left, image.top, image.width, image.height].map((said) =>
    readMillimetres(said, design.unit),
  );
  if (!left || !top || !width || !height || width.sign() === 0 || height.sign() === 0) return null;
  const [right, foot] = [left.plus(width), top.plus(height)];
  const round = [
    [left, top],
    [right, top],
    [right, foot],
    [left, foot],
  ].map((point) => point.map((at) => `${at.toNumber()} mm`));
  return { ...design, print: { ...rest, outline: reversed ? round.toReversed() : round } };
}

/** All but the share that is hidden, which is said of an outline only. */
function apart(composed: object): object {
  const { checks } = composed as Composed;
  return { ...composed, checks: checks.filter(({ code }) => code !== "image-hidden") };
}

describe("an image told by its outline", () => {
  it("[W5] gives every figure, check and sum that the same rectangle gives", () => {
    let compared = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const design = randomDesign(seed);
      const told = outlined(design, seed % 2 === 0);
      if (told === null) continue;
      compared += 1;
      expect(apart(composeJson(told)), JSON.stringify(told)).toEqual(apart(composeJson(design)));
    }
    expect(compared).toBeGreaterThan(200);
  });
});
