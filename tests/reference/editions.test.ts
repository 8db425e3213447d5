import { expect, test } from "vitest";
import { composeJson } from "../../src/show/index.ts";
import { Chance } from "./chance.ts";
import { composeReference } from "./compose.ts";
import type { Composed, LengthOut, SidesOut } from "./composed.ts";
import type { Design, Print, Window } from "./document.ts";
import { Fraction } from "./fraction.ts";
import { randomDesign } from "./random-designs.ts";
import { readMillimetres } from "./read-length.ts";

const COUNT = Number(process.env["MARGENT_DESIGNS"] ?? 3000) / 15;
const FIRST = Number(process.env["MARGENT_SEED"] ?? 1);
const LEAST_BORDER = 25;
const SIDES = ["head", "left", "right", "foot"] as const;
const CORNERS = ["topLeft", "topRight", "bottomLeft", "bottomRight"] as const;
// Half a tick where a centre falls between two, and a few where a sheet is turned.
const WITHIN = 4e-5;

type Sheet = Print & { readonly image: NonNullable<Print["image"]> };
interface EditionOut extends Composed {
  readonly edition: readonly {
    readonly name: string;
    readonly print: { readonly left: LengthOut; readonly top: LengthOut };
    readonly cover: SidesOut;
  }[];
}

/** Two to five sheets that differ from the first by a millimetre or two. */
function editionOf(design: Design, chance: Chance): Sheet[] | null {
  const { print } = design;
  if (print?.image === undefined) return null;
  const near = (said: string | number): string => {
    const hundredths = Math.round(readMillimetres(said, design.unit).toNumber() * 100);
    return `${Math.max(0, hundredths + chance.whole(-200, 200)) / 100} mm`;
  };
  const { image } = print;
  const others = Array.from({ length: chance.whole(1, 4) }, () => ({
    ...print,
    width: near(print.width),
    height: near(print.height),
    image: {
      left: near(image.left),
      top: near(image.top),
      width: near(image.width),
      height: near(image.height),
    },
  }));
  return [{ ...print, image }, ...others];
}

/** What one sheet shows through a window of this size, as a design of its own with a typed window. */
function alone(design: Design, sheet: Sheet, width: Fraction, height: Fraction): Design {
  const { unit, window } = design;
  const read = (said: string | number): Fraction => readMillimetres(said, unit);
  const mm = (of: Fraction): string => `${of.toNumber()} mm`;
  const typed: Window = { show: "typed", width: mm(width), height: mm(height) };
  if (window.show === "sheet") {
    const { image: _, angle: __, ...whole } = sheet;
    return { ...design, print: whole, window: typed };
  }
  // Wider below than above, the window's middle lies below the image's by half of what is more.
  const lower =
    window.show === "margins" ? read(window.foot).minus(read(window.top)).halved() : Fraction.zero;
  return {
    ...design,
    print: { ...sheet, ...(window.show === "margins" ? lowered(sheet, lower, read, mm) : {}) },
    window: typed,
  };
}

/** The image moved down in its own direction, so that a window centred on it lies where the margins want it. */
function lowered(
  sheet: Sheet,
  by: Fraction,
  read: (said: string | number) => Fraction,
  mm: (of: Fraction) => string,
): Pick<Sheet, "image"> {
  const angle = ((sheet.angle ?? 0) * Math.PI) / 180;
  const [across, down] = [-Math.sin(angle) * by.toNumber(), Math.cos(angle) * by.toNumber()];
  return {
    image: {
      ...sheet.image,
      left: mm(read(sheet.image.left).plus(Fraction.near(across))),
      top: mm(read(sheet.image.top).plus(Fraction.near(down))),
    },
  };
}

/** The one window of all sheets: by the smallest image, or the largest sheet, each way by itself. */
function windowOf(design: Design, sheets: readonly Sheet[]): readonly [Fraction, Fraction] {
  const { unit, window } = design;
  const read = (said: string | number): Fraction => readMillimetres(said, unit);
  const mark = read(design.graduation);
  const images = (way: "width" | "height"): Fraction =>
    Fraction.least(sheets.map(({ image }) => read(image[way])));
  const largest = (way: "width" | "height"): Fraction =>
    sheets.map((sheet) => read(sheet[way])).reduce((most, one) => (most.below(one) ? one : most));
  switch (window.show) {
    case "typed":
      return [read(window.width), read(window.height)];
    case "overlap": {
      const twice = read(window.overlap).twice();
      return [images("width").minus(twice).floorTo(mark), images("height").minus(twice).floorTo(mark)];
    }
    case "sheet": {
      const twice = read(window.gap).twice();
      return [largest("width").plus(twice).ceilTo(mark), largest("height").plus(twice).ceilTo(mark)];
    }
    case "margins": {
      const wide = images("width").plus(read(window.side).twice());
      const high = images("height").plus(read(window.top)).plus(read(window.foot));
      const hold = read(design.hold).plus(read(design.print?.sure ?? 0));
      const short = (width: Fraction, height: Fraction, sides: readonly (keyof SidesOut)[]): boolean =>
        sheets.some((sheet) => {
          const laid = composeReference(alone(design, sheet, width, height), LEAST_BORDER).laid;
          return laid !== null && sides.some((side) => laid.cover[side].below(hold));
        });
      const [w, h] = [wide.nearTo(mark), high.nearTo(mark)];
      const [wd, hd] = [wide.floorTo(mark), high.floorTo(mark)];
      const across = short(w, h, ["left", "right"]) && !short(wd, h, ["left", "right"]) ? wd : w;
      const down = short(across, h, ["head", "foot"]) && !short(across, hd, ["head", "foot"]) ? hd : h;
      return [across, down];
    }
  }
}

/** Every place in which an edition as composed differs from its sheets composed one by one. */
function faultsOf(design: Design, sheets: readonly Sheet[], made: EditionOut): string[] {
  const [width, height] = windowOf(design, sheets);
  // A window of nothing cannot be typed for one sheet alone.
  if (width.sign() <= 0 || height.sign() <= 0) return [];
  const each = sheets.map((sheet) => composeReference(alone(design, sheet, width, height), LEAST_BORDER));
  const [first] = each;
  if (first === undefined || first.outer === null) return [];
  const found: string[] = [];
  const hold = (name: string, length: LengthOut | undefined, expected: Fraction, within: number): void => {
    if (length === undefined || !(Math.abs(length.mm - expected.toNumber()) <= within)) {
      found.push(`${name}: ${length?.mm} mm, expected ${expected.toNumber()} mm`);
    }
  };
  hold("outer width", made.outer.width, first.outer[0], 1e-8);
  hold("outer height", made.outer.height, first.outer[1], 1e-8);
  for (const [number, mat] of first.mats.entries()) {
    for (const side of SIDES) {
      hold(`mat ${number} ${side}`, made.mats[number]?.borders[side], mat.borders[side], 1e-8);
    }
  }
  for (const [index, { laid }] of each.entries()) {
    const own = made.edition[index];
    if (laid === null || own === undefined) return [...found, `no sheet ${index}`];
    hold(`sheet ${index} left`, own.print.left, laid.corner[0], WITHIN);
    hold(`sheet ${index} top`, own.print.top, laid.corner[1], WITHIN);
    for (const side of SIDES) {
      const aslant = laid.aslant.includes(side) ? 1 / Math.abs(Math.sin((laid.turn * Math.PI) / 180)) : 1;
      hold(`sheet ${index} cover ${side}`, own.cover[side], laid.cover[side], WITHIN * aslant);
    }
  }
  for (const [index, corner] of CORNERS.entries()) {
    const least = Fraction.least(each.map(({ laid }) => laid?.pockets[index] ?? Fraction.zero));
    hold(`pocket ${corner}`, made.pockets?.[corner], least, 2 * WITHIN);
  }
  return found;
}

test(`[W8][U4] editions agree with their sheets composed one by one by an exact reference, on ${COUNT} designs`, () => {
  const faults: string[] = [];
  let compared = 0;
  for (let seed = FIRST; seed < FIRST + COUNT; seed++) {
    const design = randomDesign(seed);
    const sheets = editionOf(design, new Chance(seed ^ 0xed17));
    if (sheets === null) continue;
    compared += 1;
    const [print, ...others] = sheets;
    const edition = others.map(({ width, height, image }, index) => ({
      name: `${index + 2}`,
      width,
      height,
      image,
    }));
    const told = { ...design, print: { ...print, edition } };
    const made = composeJson(told, { unit: "mm", leastBorder: String(LEAST_BORDER) }) as EditionOut;
    const found = faultsOf(design, sheets, made);
    if (found.length > 0)
      faults.push(`seed ${seed}: ${found.slice(0, 6).join("; ")}\n${JSON.stringify(told)}`);
  }
  expect(faults.length === 0 ? [] : [`${faults.length} of ${compared}`, ...faults.slice(0, 3)]).toEqual([]);
  expect(compared).toBeGreaterThan(COUNT / 2);
});
