import { expect, test } from "vitest";
import { wallsJson } from "../../src/packet/hang.ts";
import { prepare } from "../../src/packet/index.ts";
import { packetJson } from "../../src/packet/packet-json.ts";
import type { ShowDocument } from "../../src/show/index.ts";
import { orderOf, shown } from "./shown.ts";

interface InMillimetres {
  readonly mm: number;
}
interface Chained {
  readonly outer: { readonly height: InMillimetres };
  readonly mats: readonly { readonly back: { readonly height: InMillimetres } }[];
  readonly print: { readonly left: InMillimetres; readonly top: InMillimetres };
  readonly cover: Readonly<Record<string, InMillimetres>>;
  readonly pockets: object;
  readonly framed: {
    readonly outer: { readonly height: InMillimetres };
    readonly mass: { readonly kg: number };
    readonly glazing: { readonly height: InMillimetres };
    readonly backing: { readonly height: InMillimetres };
  };
}
interface Hung {
  readonly frame: { readonly y: InMillimetres; readonly height: InMillimetres };
  readonly hooks: readonly {
    readonly x: InMillimetres;
    readonly nail: InMillimetres;
    readonly bear: InMillimetres;
  }[];
  readonly loads: { readonly hook: { readonly N: number } };
}

function chainOf(document: ShowDocument): {
  readonly work: Chained;
  readonly hung: Hung;
  readonly text: string;
} {
  const order = orderOf(document);
  const read = prepare(order);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const text = packetJson(order, read.value, [], [], null);
  const { works } = JSON.parse(text) as { works: readonly [Chained] };
  const { walls, works: composed } = read.value;
  const { hang } = wallsJson(walls, composed) as { hang: { "North wall": { works: readonly [Hung] } } };
  return { work: works[0], hung: hang["North wall"].works[0], text };
}

const INCH = 25.4;

test("[WH1] a window one inch higher moves print, cover, pockets, mats, frame, glazing, backing, weight, rings, hook and load", () => {
  const [low, high] = [chainOf(shown("12")), chainOf(shown("13"))];
  const moved = (of: (chain: typeof low) => number): number => of(high) - of(low);

  expect(moved(({ work }) => work.mats[0]?.back.height.mm ?? 0)).toBeCloseTo(INCH, 6);
  expect(moved(({ work }) => work.outer.height.mm)).toBeCloseTo(INCH, 6);
  expect(moved(({ work }) => work.framed.outer.height.mm)).toBeCloseTo(INCH, 6);
  expect(moved(({ work }) => work.framed.glazing.height.mm)).toBeCloseTo(INCH, 6);
  expect(moved(({ work }) => work.framed.backing.height.mm)).toBeCloseTo(INCH, 6);
  // The image stays in the window's middle: half an inch more of the paper is seen above it, and covered less.
  expect(moved(({ work }) => work.cover["head"]?.mm ?? 0)).toBeCloseTo(-INCH / 2, 6);
  expect(moved(({ work }) => work.cover["foot"]?.mm ?? 0)).toBeCloseTo(-INCH / 2, 6);
  expect(moved(({ work }) => work.print.top.mm)).toBeCloseTo(INCH / 2, 6);
  expect(JSON.stringify(high.work.pockets)).not.toBe(JSON.stringify(low.work.pockets));

  // The middle hangs on the eye line: half an inch lower foot, and rings a third down the higher frame.
  expect(moved(({ hung }) => hung.frame.height.mm)).toBeCloseTo(INCH, 6);
  expect(moved(({ hung }) => hung.frame.y.mm)).toBeCloseTo(-INCH / 2, 6);
  const ring = ({ hung }: typeof low): number =>
    hung.frame.y.mm + hung.frame.height.mm - (hung.hooks[0]?.bear.mm ?? 0);
  expect(Math.abs(moved(ring) - INCH / 3)).toBeLessThanOrEqual(INCH / 16);
  expect(moved(({ hung }) => hung.hooks[0]?.nail.mm ?? 0)).toBeCloseTo(INCH / 2 - moved(ring), 6);

  // The hook carries half of what the frame weighs, and that has grown.
  expect(moved(({ work }) => work.framed.mass.kg)).toBeGreaterThan(0.02);
  for (const { work, hung } of [low, high])
    expect(hung.loads.hook.N).toBeCloseTo((work.framed.mass.kg * 9.80665) / 2, 1);
});

test("[WH2] nothing is stale: an edited show gives byte for byte what the same show gives that was always so", () => {
  const edited = shown("12");
  const before = chainOf(edited).text;
  const [work] = edited.works;
  if (work === undefined) throw new Error("there is a work");
  const window = { show: "typed" as const, width: "8 1/2", height: "13" };
  const after = chainOf({ ...edited, works: [{ ...work, design: { ...work.design, window } }] }).text;
  expect(after).toBe(chainOf(shown("13")).text);
  expect(after).not.toBe(before);
  expect(chainOf(edited).text).toBe(before);
});
