import { Chance } from "./chance.ts";
import type { Design, Lift, Mat, Outer, Print, Size, SizeList, Window, Written } from "./document.ts";
import { drawLength, type Drawn } from "./random-lengths.ts";

/**
 * A design as somebody might write it, the same for the same seed: both units, every kind of window,
 * outer size and lift, one to three mats, some prints skew on their sheets, some that cannot be made.
 */
export function randomDesign(seed: number): Design {
  const chance = new Chance(seed);
  const unit = chance.pick(["in", "mm"]);
  const draw = (least: number, most: number): Drawn => drawLength(chance, unit, least, most);
  const sheet = { width: draw(90, 500), height: draw(90, 600) };
  const margin = { left: draw(5, 40), right: draw(5, 40), top: draw(5, 40), foot: draw(5, 50) };
  const image = {
    left: margin.left,
    top: margin.top,
    width: draw(40, Math.max(40, sheet.width.mm - margin.left.mm - margin.right.mm)),
    height: draw(40, Math.max(40, sheet.height.mm - margin.top.mm - margin.foot.mm)),
  };
  const hasImage = chance.happens(0.92);
  const seen = hasImage ? image : { left: { mm: 0 }, top: { mm: 0 }, ...sheet };
  const { window, size, slack } = randomWindow(chance, draw, sheet, seen, margin);
  const withPrint = window.show !== "typed" || chance.happens(0.85);
  const { outer, lift } = randomOuter(chance, draw, size);
  return {
    unit,
    graduation: graduation(chance, unit),
    ...(withPrint ? { print: randomPrint(chance, draw, sheet, hasImage ? image : null) } : {}),
    window,
    hold: randomHold(chance, draw, slack),
    play: draw(0, 3).said,
    outer,
    ...(lift === null ? {} : { lift }),
    mats: randomMats(chance, draw),
  };
}

/** Now and then just what the asked margins leave of the paper, so that the hold decides how the window is rounded. */
function randomHold(chance: Chance, draw: Draw, slack: number): Written {
  if (slack > 1 && chance.happens(0.3)) return draw(slack - 0.6, slack).said;
  return chance.happens(0.15) ? draw(8, 20).said : draw(0.5, 8).said;
}

type Draw = (least: number, most: number) => Drawn;
interface DrawnSize {
  readonly width: Drawn;
  readonly height: Drawn;
}
interface DrawnImage extends DrawnSize {
  readonly left: Drawn;
  readonly top: Drawn;
}

function graduation(chance: Chance, unit: "in" | "mm"): string {
  const inches = [
    "1/8 in",
    "1/16 in",
    "1/16 in",
    "1/32 in",
    "1/64 in",
    "1/128 in",
    "1/16\u00a0in",
    "0.01 in",
  ] as const;
  const metric = ["1 mm", "1 mm", "0.5 mm", "2 mm", "0,5 mm", "0.1 cm"] as const;
  return (unit === "in") === chance.happens(0.96) ? chance.pick(inches) : chance.pick(metric);
}

function randomPrint(chance: Chance, draw: Draw, sheet: DrawnSize, image: DrawnImage | null): Print {
  const skew = image !== null && chance.happens(0.25);
  return {
    width: sheet.width.said,
    height: sheet.height.said,
    ...(image === null
      ? {}
      : {
          image: {
            left: image.left.said,
            top: image.top.said,
            width: image.width.said,
            height: image.height.said,
          },
        }),
    ...(skew ? { angle: chance.whole(-300, 300) / 100 } : {}),
    ...(chance.happens(0.25) ? { sure: draw(0, 1.5).said } : {}),
  };
}

interface Shown {
  readonly width: { readonly mm: number };
  readonly height: { readonly mm: number };
}
type Margin = Readonly<Record<"left" | "right" | "top" | "foot", Drawn>>;

function randomWindow(
  chance: Chance,
  draw: Draw,
  sheet: DrawnSize,
  image: Shown,
  margin: Margin,
): { window: Window; size: readonly [number, number]; slack: number } {
  const [width, height] = [image.width.mm, image.height.mm];
  const show = chance.pick(["overlap", "overlap", "margins", "margins", "margins", "sheet", "typed"]);
  switch (show) {
    case "overlap": {
      const overlap = chance.happens(0.03) ? draw(20, 60) : draw(0, 8);
      return {
        window: { show, overlap: overlap.said },
        size: [width - 2 * overlap.mm, height - 2 * overlap.mm],
        slack: 0,
      };
    }
    case "margins": {
      // Near the edge of the paper, so that the hold decides the rounding now and then.
      const reach = chance.happens(0.5) ? 1 : 0.4;
      const side = draw(0, Math.min(margin.left.mm, margin.right.mm) * reach);
      const top = draw(0, margin.top.mm * reach);
      const foot = draw(0, margin.foot.mm * reach);
      return {
        window: { show, top: top.said, side: side.said, foot: foot.said },
        size: [width + 2 * side.mm, height + top.mm + foot.mm],
        slack: chance.pick([margin.left.mm - side.mm, margin.top.mm - top.mm, margin.top.mm - top.mm]),
      };
    }
    case "sheet": {
      const gap = draw(0, 20);
      return {
        window: { show, gap: gap.said },
        size: [sheet.width.mm + 2 * gap.mm, sheet.height.mm + 2 * gap.mm],
        slack: 0,
      };
    }
    case "typed": {
      const typed = { width: draw(width * 0.9, width + 15), height: draw(height * 0.9, height + 15) };
      return {
        window: { show, width: typed.width.said, height: typed.height.said },
        size: [typed.width.mm, typed.height.mm],
        slack: 0,
      };
    }
  }
}

function randomOuter(
  chance: Chance,
  draw: Draw,
  window: readonly [number, number],
): { outer: Outer; lift: Lift | null } {
  const kind = chance.pick([
    "size",
    "size",
    "size",
    "borders",
    "borders",
    "standard",
    "smallest",
    "smallest",
  ]);
  const room = chance.happens(0.04) ? -30 : 40;
  switch (kind) {
    case "size":
      return {
        outer: {
          width: draw(Math.max(20, window[0] + room), Math.max(20, window[0] + room + 120)).said,
          height: draw(Math.max(20, window[1] + room), Math.max(20, window[1] + room + 160)).said,
        },
        lift: randomLift(chance, draw),
      };
    case "smallest":
      return {
        outer: { smallest: randomList(chance, draw, window), border: draw(5, 70).said },
        lift: randomLift(chance, draw),
      };
    case "borders":
    case "standard": {
      const borders = { head: draw(20, 80).said, side: draw(20, 80).said, foot: draw(25, 110).said };
      return {
        outer: kind === "borders" ? { borders } : { borders, standard: randomList(chance, draw, window) },
        lift: null,
      };
    }
  }
}

function randomList(chance: Chance, draw: Draw, window: readonly [number, number]): SizeList {
  const [width, height] = [Math.max(20, window[0]), Math.max(20, window[1])];
  const own = (): Size => {
    const across = draw(width, width + 250).said;
    return { width: across, height: chance.happens(0.2) ? across : draw(height, height + 250).said };
  };
  const list = chance.pick(["inch", "inch", "metric", "metric", "iso", "own"]);
  return list === "own" ? Array.from({ length: chance.whole(1, 6) }, own) : list;
}

function randomLift(chance: Chance, draw: Draw): Lift {
  const rule = chance.pick(["none", "fixed", "fixed", "ratio", "optical"]);
  switch (rule) {
    case "none":
    case "optical":
      return { rule };
    case "fixed":
      return { rule, by: draw(0, 15).said };
    case "ratio":
      return { rule, foot: chance.pick([1, 1.1, 1.2, 1.25, 1.3, 1.5, 1.618, 4 / 3, 2]) };
  }
}

function randomMats(chance: Chance, draw: Draw): Mat[] {
  const count = chance.pick([1, 1, 1, 2, 2, 3]);
  return Array.from({ length: count }, (_, number) => ({
    thickness: chance.happens(0.7)
      ? chance.pick(["1/16 in", "1/8 in", "1.4 mm", "1.5mm", "0.06 in"])
      : draw(0.5, 4).said,
    bevel: chance.happens(0.75) ? 45 : chance.pick([90, 90, 60, 52.5, 30, 75]),
    ...(number === 0 ? {} : { reveal: draw(0, 12).said }),
  }));
}
