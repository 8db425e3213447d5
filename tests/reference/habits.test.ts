import { expect, test } from "vitest";
import { composeJson } from "../../src/show/index.ts";
import { Chance } from "./chance.ts";
import type { Design, Window, Written } from "./document.ts";
import { Fraction } from "./fraction.ts";
import { randomDesign } from "./random-designs.ts";
import { readMillimetres } from "./read-length.ts";

const COUNT = Number(process.env["MARGENT_DESIGNS"] ?? 3000) / 15;
const FIRST = Number(process.env["MARGENT_SEED"] ?? 1);

const TICK = Fraction.of(1, 80_000);

type Left = "hold" | "play" | "lift" | "mats" | "window";
type Habits = Readonly<Record<string, unknown>>;

/** A design that leaves some of what it says to the practice, which says it in the design's own words. */
function leftToPractice(design: Design, chance: Chance): { told: object; habits: Habits } {
  const told: Record<string, unknown> = { ...design };
  const habits: Record<string, unknown> = { unit: design.unit, graduation: design.graduation };
  const leave = (field: Left | "unit" | "graduation"): boolean => {
    if (!chance.happens(0.6)) return false;
    delete told[field];
    return true;
  };
  leave("unit");
  leave("graduation");
  for (const field of ["hold", "play", "mats", "lift"] as const) {
    if (design[field] !== undefined && leave(field)) habits[field] = design[field];
  }
  const { window } = design;
  if (window.show !== "typed" && leave("window")) {
    Object.assign(habits, habitsOf(window));
    if (window.show !== "overlap") told["window"] = { show: window.show };
  }
  return { told, habits };
}

const habitsOf = (window: Exclude<Window, { show: "typed" }>): Habits => {
  switch (window.show) {
    case "overlap":
      return { overlap: window.overlap };
    case "margins":
      return { margins: { top: window.top, side: window.side, foot: window.foot } };
    case "sheet":
      return { gap: window.gap };
  }
};

test(`[U10] what a design leaves to a practice of its own unit is as if it had said it, on ${COUNT} designs`, () => {
  for (let seed = FIRST; seed < FIRST + COUNT; seed++) {
    const design = withoutGrowth(randomDesign(seed));
    const { told, habits } = leftToPractice(design, new Chance(seed ^ 0x4ab1));
    const common = { unit: design.unit, leastBorder: "25 mm" };
    expect(composeJson(told, { ...habits, leastBorder: "25 mm" }), JSON.stringify({ told, habits })).toEqual(
      composeJson(design, common),
    );
  }
});

test(`[U10] a practice of the other unit is taken to the design's own marks, on ${COUNT} designs`, () => {
  for (let seed = FIRST; seed < FIRST + COUNT; seed++) {
    const design = withoutGrowth(randomDesign(seed));
    const other: "in" | "mm" = design.unit === "in" ? "mm" : "in";
    const mark = readMillimetres(design.graduation, design.unit);
    const { hold, play, lift, window, ...rest } = design;
    // Said with their unit, so that the practice may be of another.
    const said = (written: Written): string =>
      typeof written === "number" || /^[\d\s.,/⁄½¼¾⅛⅜⅝⅞-]+$/u.test(written)
        ? `${written} ${design.unit}`
        : written;
    const up = (written: Written): string =>
      `${readMillimetres(said(written), other).ceilTo(mark).toNumber()} mm`;
    const near = (written: Written): string =>
      `${readMillimetres(said(written), other).nearTo(mark).toNumber()} mm`;
    const shown: { habits: Habits; told: object; explicit: Window } =
      window.show === "margins"
        ? {
            habits: { margins: { top: said(window.top), side: said(window.side), foot: said(window.foot) } },
            told: { window: { show: "margins" } },
            explicit: {
              show: "margins",
              top: near(window.top),
              side: near(window.side),
              foot: near(window.foot),
            },
          }
        : window.show === "sheet"
          ? {
              habits: { gap: said(window.gap) },
              told: { window: { show: "sheet" } },
              explicit: { show: "sheet", gap: up(window.gap) },
            }
          : { habits: {}, told: { window }, explicit: window };
    const fixed = lift?.rule === "fixed" ? lift : null;
    const habits = {
      unit: other,
      leastBorder: "25 mm",
      hold: said(hold),
      play: said(play),
      ...(fixed === null ? {} : { lift: { rule: "fixed", by: said(fixed.by) } as const }),
      ...shown.habits,
    };
    const told = { ...rest, ...shown.told, ...(fixed === null && lift !== undefined ? { lift } : {}) };
    const explicit = {
      ...rest,
      hold: up(hold),
      play: up(play),
      window: shown.explicit,
      ...(lift === undefined ? {} : { lift: fixed === null ? lift : { rule: "fixed", by: near(fixed.by) } }),
    };
    expect(composeJson(told, habits), JSON.stringify({ told, habits })).toEqual(
      composeJson(explicit, { unit: other, leastBorder: "25 mm" }),
    );
  }
});

test(`[U7] without a habit of its own the hold is as large as the paper needs, on ${COUNT} designs`, () => {
  let bound = 0;
  for (let seed = FIRST; seed < FIRST + COUNT; seed++) {
    const design = randomDesign(seed);
    if (design.print === undefined) continue;
    const read = (written: Written): Fraction => readMillimetres(written, design.unit);
    const [wide, high] = [read(design.print.width), read(design.print.height)];
    const longer = wide.below(high) ? high : wide;
    // The paper's movement, 0.4 % of the longer side up to a whole tick, and half the least hold beside it.
    const usual = read(design.unit === "in" ? "1/8 in" : "3 mm");
    const needed = longer.times(Fraction.of(4, 1000)).ceilTo(TICK).plus(usual.halved());
    const least = usual.below(needed) ? needed : usual;
    if (usual.below(needed)) bound += 1;
    const { hold: _, ...told } = design;
    const explicit = { ...design, hold: `${least.toNumber()} mm` };
    const practice = { unit: design.unit, leastBorder: "25 mm" } as const;
    expect(composeJson(told, practice), JSON.stringify(told)).toEqual(composeJson(explicit, practice));
  }
  expect(bound).toBeGreaterThan(COUNT / 50);
});

/** Without a window of its own, an overlap grows where the sheet ends at its image; a habit is compared where it does not. */
function withoutGrowth(design: Design): Design {
  return design.window.show === "overlap"
    ? ({ ...design, hold: "0 mm", print: surely(design) } as Design)
    : design;
}
const surely = ({ print }: Design): Design["print"] => {
  if (print === undefined) return print;
  const { sure: _, ...rest } = print;
  return rest;
};
