import type { Size } from "../geometry/index.ts";
import { printExact, type Ruler } from "../lengths/index.ts";
import type { BenchOrderJob, CutOfDay, MarkedAlike, RunOfDay, SizeOfDay } from "../papers/index.ts";
import { BENCH_ORDER } from "../words/packet.ts";
import type { BenchDay, MatOfDay } from "./bench-day.ts";
import type { Packeted } from "./bench-sheets.ts";
import type { Blank, Blanks } from "./blanks.ts";
import type { TableOut } from "./file.ts";

/** The batch in the order of a day at the cutter: one row for each mat at each setting of the stop, its copies together. */
export function benchOrder(day: BenchDay): TableOut {
  const runs = runsOfDay(day);
  let order = 0;
  return {
    header: BENCH_ORDER.header,
    rows: runs.flatMap(({ ruler: { unit }, set, scale, cuts }, run) =>
      cuts.map((cut, place) => {
        order += 1;
        return [
          String(order),
          String(run + 1),
          printExact(set, unit),
          printExact(scale, unit),
          place === 0 ? BENCH_ORDER.moves : BENCH_ORDER.stays,
          cut.title,
          BENCH_ORDER.part(cut.mat, cut.mats),
          cut.blanks.join(" "),
          cut.sides.map((side) => BENCH_ORDER.edge(side)).join(", "),
          cut.hands.map((hand) => BENCH_ORDER.hand(hand)).join(", "),
          cut.outs.map(({ host, blank }) => BENCH_ORDER.out(host, blank)).join("; "),
        ];
      }),
    ),
  };
}

/** The job of the day's paper. */
export function benchOrderJob(day: BenchDay, blanks: Blanks, shared: Packeted): BenchOrderJob {
  const { practice } = shared;
  const { mats, plan } = day;
  return {
    works: new Set(mats.map(({ blank }) => blank.use.work)).size,
    sizes: sizesOf(blanks),
    marked: markedAlike(
      mats,
      plan.runs.flatMap(({ mats: cut }) => cut),
    ),
    runs: runsOfDay(day),
    bound: plan.bound.runs,
    oneByOne: day.oneByOne,
    bench: {
      hand: practice.hand,
      scaleTested: practice.scaleTested,
      overrun: practice.overrun,
      squaringTrim: practice.squaringTrim,
    },
    house: shared.house,
    plan: shared.plan,
    ruler: practice.ruler,
    language: practice.language,
  };
}

/** The runs with their cuts; copies of one mat that are cut at one setting stand together. */
function runsOfDay(day: BenchDay): readonly RunOfDay[] {
  const { mats, plan } = day;
  const left = mats.map(({ stops }) => stops.length);
  return plan.runs.map(({ setting, mats: cut }) => {
    const rows = new Map<string, CutOfDay>();
    for (const place of cut) {
      const own = mats[place];
      const stop = own?.stops.find(({ scale }) => scale === setting);
      if (own === undefined || stop === undefined)
        throw new RangeError(`no stop at ${setting} for mat ${place}`);
      left[place] = (left[place] ?? 0) - 1;
      const falls = left[place] === 0;
      const whole = falls && own.copy.every((other) => left[other] === 0);
      const { work, composition } = own.blank.work;
      const key = `${own.blank.use.work} ${own.mat} ${falls}`;
      const row = rows.get(key);
      rows.set(key, {
        title: work.title,
        mat: own.mat,
        mats: composition.mats.length,
        blanks: [...(row?.blanks ?? []), own.blank.number],
        sides: stop.edges,
        hands: stop.hand,
        falls,
        outs: [...(row?.outs ?? []), ...(whole ? outsOf(own, day) : [])],
      });
    }
    const [first] = cut;
    const own = mats[first ?? -1];
    const set = own?.stops.find(({ scale }) => scale === setting)?.set;
    if (own === undefined || set === undefined) throw new RangeError("a run without a cut");
    return { ruler: rulerOf(own.blank), set, scale: setting, cuts: [...rows.values()] };
  });
}

/** The blanks that come out of the windows of a work's copy that is cut now. */
const outsOf = (own: MatOfDay, { mats, hosted }: BenchDay): CutOfDay["outs"] =>
  own.copy.flatMap((place) => {
    const host = mats[place]?.blank.number ?? 0;
    return (hosted.get(host) ?? []).map((blank) => ({
      host,
      blank: blank.number,
      size: { width: blank.lies.width, height: blank.lies.height },
      ruler: rulerOf(blank),
    }));
  });

const rulerOf = ({ work }: Blank): Ruler => work.composition.design.ruler;

/** A size as it is asked for: the short side first. */
const short = ({ width, height }: Size): Size =>
  width <= height ? { width, height } : { width: height, height: width };

function sizesOf(blanks: Blanks): readonly SizeOfDay[] {
  const sizes = new Map<
    string,
    SizeOfDay & { readonly blanks: number[]; readonly later: SizeOfDay["later"][number][] }
  >();
  for (const blank of blanks.all) {
    const { number, lies, board, host } = blank;
    if (board.material !== "board") continue;
    const size = short(lies);
    const key = `${size.width} ${size.height} ${board.board}`;
    const group = sizes.get(key) ?? {
      size,
      ruler: rulerOf(blank),
      board: board.board,
      blanks: [],
      later: [],
    };
    group.blanks.push(number);
    if (host !== null) group.later.push({ blank: number, host });
    sizes.set(key, group);
  }
  return [...sizes.values()].toSorted((a, b) => b.size.width * b.size.height - a.size.width * a.size.height);
}

function markedAlike(mats: readonly MatOfDay[], order: readonly number[]): readonly MarkedAlike[] {
  const groups = new Map<string, { size: Size; ruler: Ruler; blanks: number[]; titles: Set<string> }>();
  for (const place of new Set(order)) {
    const own = mats[place];
    if (own === undefined) continue;
    const { outer, mats: composed } = own.blank.work.composition;
    const borders = composed[own.mat]?.borders;
    const key = JSON.stringify([outer, borders]);
    const group = groups.get(key) ?? {
      size: outer,
      ruler: rulerOf(own.blank),
      blanks: [],
      titles: new Set<string>(),
    };
    group.blanks.push(own.blank.number);
    group.titles.add(own.blank.work.work.title);
    groups.set(key, group);
  }
  return [...groups.values()].map((group) => ({ ...group, titles: [...group.titles] }));
}
