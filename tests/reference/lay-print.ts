import type { Design } from "./document.ts";
import { Fraction } from "./fraction.ts";
import type { Pair } from "./size-lists.ts";

export interface Covers {
  readonly head: Fraction;
  readonly left: Fraction;
  readonly right: Fraction;
  readonly foot: Fraction;
}

export interface Laid {
  /** Where the sheet's own top-left corner lies in the package. */
  readonly corner: Pair;
  /** Degrees the sheet is turned, clockwise. */
  readonly turn: number;
  /** Below nought where the opening reaches past the paper, as it does where the whole sheet is shown. */
  readonly cover: Covers;
  /** The sides on whose way out the turned paper ends first at an edge that it meets aslant. */
  readonly aslant: readonly (keyof Covers)[];
  /** Top left, top right, bottom left, bottom right. */
  readonly pockets: readonly Fraction[];
}

export interface Laying {
  readonly window: Pair;
  /** The print in the package, when the opening's top-left corner lies at `corner`. */
  readonly at: (corner: Pair) => Laid | null;
  /** True when the window's rounding hangs on which direction is rounded first. */
  readonly open: boolean;
}

interface Span {
  readonly from: Fraction;
  readonly size: Fraction;
}

type Read = (said: string | number) => Fraction;

const centred = (size: Fraction, of: Fraction): Span => ({ from: of.minus(size).halved(), size });

/** The opening and how the print lies to it, before anything is known of borders. */
export function layPrint(design: Design, read: Read, mark: Fraction): Laying {
  const shown = design.window;
  const print = design.print;
  if (print === undefined) {
    if (shown.show !== "typed") throw new Error("a window without a print must be typed");
    return { window: [read(shown.width), read(shown.height)], at: () => null, open: false };
  }
  const sheet: Pair = [read(print.width), read(print.height)];
  const image =
    print.image === undefined
      ? { left: Fraction.zero, top: Fraction.zero, width: sheet[0], height: sheet[1] }
      : {
          left: read(print.image.left),
          top: read(print.image.top),
          width: read(print.image.width),
          height: read(print.image.height),
        };
  const turn = shown.show === "sheet" || !print.angle ? 0 : -print.angle;
  const hold = read(design.hold).plus(read(print.sure ?? 0));
  const play = read(design.play);
  const from: Pair = print.paper === undefined ? NOUGHT : [read(print.paper.left), read(print.paper.top)];
  const paper: Pair = print.paper === undefined ? sheet : [read(print.paper.width), read(print.paper.height)];
  // Told from the corner of what is certainly paper.
  const middle: Pair = [
    image.left.plus(image.width.halved()).minus(from[0]),
    image.top.plus(image.height.halved()).minus(from[1]),
  ];

  // The opening, told from the levelled image's own top-left corner.
  const lay = (across: Span, down: Span): ((corner: Pair) => Laid) => {
    return (corner) =>
      sheetRound(from, place(paper, middle, [image.width, image.height], across, down, turn, play, corner));
  };
  const whole = (across: Span, down: Span): Laying => ({
    window: [across.size, down.size],
    at: lay(across, down),
    open: false,
  });

  switch (shown.show) {
    case "typed":
      return whole(centred(read(shown.width), image.width), centred(read(shown.height), image.height));
    case "overlap": {
      const twice = read(shown.overlap).twice();
      return whole(
        centred(image.width.minus(twice).floorTo(mark), image.width),
        centred(image.height.minus(twice).floorTo(mark), image.height),
      );
    }
    case "sheet": {
      const twice = read(shown.gap).twice();
      const span = (size: Fraction, before: Fraction): Span => {
        const open = size.plus(twice).ceilTo(mark);
        return { from: size.minus(open).halved().minus(before), size: open };
      };
      return whole(span(sheet[0], image.left), span(sheet[1], image.top));
    }
    case "margins": {
      const [top, side, foot] = [read(shown.top), read(shown.side), read(shown.foot)];
      const across = margins(image.width, side, side, mark);
      const down = margins(image.height, top, foot, mark);
      const shortOf = (a: Span, d: Span, names: readonly (keyof Covers)[]): boolean => {
        const cover = lay(a, d)([Fraction.zero, Fraction.zero]).cover;
        return names.some((name) => cover[name].below(hold));
      };
      // Each way by itself; on a turned sheet the one way's cover hangs a little on the other's size.
      const pickAcross = (d: Span): Span => choose(across, (a) => shortOf(a, d, ["left", "right"]));
      const pickDown = (a: Span): Span => choose(down, (d) => shortOf(a, d, ["head", "foot"]));
      const picked: Laying = whole(pickAcross(down.near), pickDown(across.near));
      const otherwise = [pickAcross(down.floor).size, pickDown(across.floor).size] as const;
      const open = !picked.window[0].same(otherwise[0]) || !picked.window[1].same(otherwise[1]);
      return { ...picked, open };
    }
  }
}

interface Choice {
  readonly near: Span;
  readonly floor: Span;
}

function margins(size: Fraction, before: Fraction, after: Fraction, mark: Fraction): Choice {
  const asked = size.plus(before).plus(after);
  const take = (open: Fraction): Span => ({
    from: Fraction.zero.minus(before).minus(open.minus(asked).halved()),
    size: open,
  });
  return { near: take(asked.nearTo(mark)), floor: take(asked.floorTo(mark)) };
}

const choose = (choice: Choice, isShort: (span: Span) => boolean): Span =>
  isShort(choice.near) && !isShort(choice.floor) ? choice.floor : choice.near;

function place(
  sheet: Pair,
  middle: Pair,
  image: Pair,
  across: Span,
  down: Span,
  turn: number,
  play: Fraction,
  corner: Pair,
): Laid {
  // The image's middle in the package.
  const at: Pair = [
    corner[0].minus(across.from).plus(image[0].halved()),
    corner[1].minus(down.from).plus(image[1].halved()),
  ];
  if (turn === 0) {
    const left = at[0].minus(middle[0]);
    const top = at[1].minus(middle[1]);
    const cover: Covers = {
      left: corner[0].minus(left),
      head: corner[1].minus(top),
      right: left.plus(sheet[0]).minus(corner[0]).minus(across.size),
      foot: top.plus(sheet[1]).minus(corner[1]).minus(down.size),
    };
    const legs = [
      cover.left.plus(cover.head),
      cover.right.plus(cover.head),
      cover.left.plus(cover.foot),
      cover.right.plus(cover.foot),
    ];
    return {
      corner: [left, top],
      turn: 0,
      cover,
      aslant: [],
      pockets: legs.map((leg) => hidden(leg, play)),
    };
  }
  return placeTurned(sheet, middle, at, across.size, down.size, turn, play, corner);
}

const NOUGHT: Pair = [Fraction.zero, Fraction.zero];

/** The sheet's own corner, of a sheet whose paper begins `from` away from it. */
function sheetRound(from: Pair, laid: Laid): Laid {
  if (laid.turn === 0)
    return { ...laid, corner: [laid.corner[0].minus(from[0]), laid.corner[1].minus(from[1])] };
  const angle = (laid.turn * Math.PI) / 180;
  const [x, y] = [from[0].toNumber(), from[1].toNumber()];
  return {
    ...laid,
    corner: [
      laid.corner[0].minus(Fraction.near(x * Math.cos(angle) - y * Math.sin(angle))),
      laid.corner[1].minus(Fraction.near(x * Math.sin(angle) + y * Math.cos(angle))),
    ],
  };
}

const hidden = (leg: Fraction, play: Fraction): Fraction => {
  const left = leg.minus(play);
  return left.sign() < 0 ? Fraction.zero : left;
};

/** The same on a sheet turned about the image's middle, in doubles. */
function placeTurned(
  sheet: Pair,
  middle: Pair,
  at: Pair,
  width: Fraction,
  height: Fraction,
  turn: number,
  play: Fraction,
  corner: Pair,
): Laid {
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [sw, sh, mx, my] = [sheet[0], sheet[1], middle[0], middle[1]].map((x) => x.toNumber()) as Four;
  const [ax, ay, left, top] = [at[0], at[1], corner[0], corner[1]].map((x) => x.toNumber()) as Four;
  const [right, foot] = [left + width.toNumber(), top + height.toNumber()];
  // From the package into the sheet's own axes.
  const inSheet = (x: number, y: number): [number, number] => [
    mx + (x - ax) * cos + (y - ay) * sin,
    my - (x - ax) * sin + (y - ay) * cos,
  ];
  const [tl, tr, bl, br] = [
    inSheet(left, top),
    inSheet(right, top),
    inSheet(left, foot),
    inSheet(right, foot),
  ];
  // From one corner of the opening out along a level or plumb line, to where the paper ends.
  const out = ([x, y]: [number, number], dx: number, dy: number): number => {
    const [ox, oy] = [dx * cos + dy * sin, dy * cos - dx * sin];
    const sides = [
      { away: x, pace: -ox },
      { away: sw - x, pace: ox },
      { away: y, pace: -oy },
      { away: sh - y, pace: oy },
    ];
    const met = sides.filter(({ pace }) => pace > 0);
    const own = met.reduce((first, side) => (side.pace > first.pace ? side : first));
    // A corner that lies beside the paper meets no edge on its way: only its own side's line says how far off it is.
    const beside = sides.some(({ away }) => away < 0);
    return beside ? own.away / own.pace : Math.min(...met.map(({ away, pace }) => away / pace));
  };
  const cover: Covers = {
    left: Fraction.near(Math.min(out(tl, -1, 0), out(bl, -1, 0))),
    right: Fraction.near(Math.min(out(tr, 1, 0), out(br, 1, 0))),
    head: Fraction.near(Math.min(out(tl, 0, -1), out(tr, 0, -1))),
    foot: Fraction.near(Math.min(out(bl, 0, 1), out(br, 0, 1))),
  };
  const square: Readonly<Record<keyof Covers, number>> = {
    left: Math.min(tl[0], bl[0]) / cos,
    right: Math.min(sw - tr[0], sw - br[0]) / cos,
    head: Math.min(tl[1], tr[1]) / cos,
    foot: Math.min(sh - bl[1], sh - br[1]) / cos,
  };
  const aslant = (["left", "right", "head", "foot"] as const).filter(
    (side) => square[side] - cover[side].toNumber() > 1e-9,
  );
  const legs = [tl[0] + tl[1], sw - tr[0] + tr[1], bl[0] + sh - bl[1], sw - br[0] + sh - br[1]];
  return {
    corner: [Fraction.near(ax - mx * cos + my * sin), Fraction.near(ay - mx * sin - my * cos)],
    turn,
    cover,
    aslant,
    pockets: legs.map((leg) => hidden(Fraction.near(leg), play)),
  };
}

type Four = [number, number, number, number];
