import type { Mark } from "../../drawings/index.ts";
import { add, type Length, larger, mm, smaller, subtract, times, ZERO } from "../../lengths/index.ts";
import { block, cornersOf, placed } from "../block.ts";
import { part, points } from "../paper.ts";
import { drawn } from "../scale.ts";
import { ring } from "../tags.ts";
import { textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { clearField } from "./clear-field.ts";
import type { HangingDesk } from "./desk.ts";
import { type Drawn, seenOf } from "./view.ts";

const LETTER: TextStyle = { size: points(11), weight: "bold", leading: points(12) };
/** How high a letter stands, and how far it keeps from what is round it. */
const CAP = mm(2.7);
const AIR = mm(0.8);
/** The smallest frame, as it is drawn, that holds its number. */
const LEAST = mm(4.4);

/** Whether a wall hangs in one row: letters then stand over the frames, else within them. */
export const inOneRow = ({ job: { job } }: HangingDesk): boolean =>
  job.rule.kind === "gap" || job.rule.kind === "spread";

/** Frames with their numbers, hooks and letters; only `own` ones are numbered, the others stand thin beside them. */
export function frameMarks(at: Drawn, own: ReadonlySet<number>): readonly Mark[] {
  const { desk, x, y } = at;
  const { job, plan } = desk.job;
  const boxes = job.frames.flatMap((frame, index): readonly Mark[] => {
    const place = plan.places[index];
    const seen = place && seenOf(at, { ...place, width: frame.width, height: frame.height });
    if (seen === undefined || seen === null) return [];
    if (!own.has(index)) return [{ kind: "area", points: cornersOf(seen), fill: "paper", line: "thin" }];
    return [
      { kind: "area", points: cornersOf(seen), fill: "paper", line: "outline" },
      ...nameMarks(at, index, seen.left, seen.top),
    ];
  });
  const dots = desk.hooks
    .filter(({ work }) => own.has(work))
    .map(
      ({ x: across, nail }): Mark => ({
        kind: "circle",
        centre: { x: x(across), y: y(nail) },
        radius: mm(0.6),
        fill: "ink",
        line: null,
      }),
    );
  return [...boxes, ...dots, ...(inOneRow(desk) ? lettersOver(at, own).marks : [])];
}

const lettersOf = (desk: HangingDesk, work: number): string =>
  desk.hooks.flatMap((hook) => (hook.work === work ? [hook.letter] : [])).join(" ");

const radiusIn = (width: Length, height: Length): Length =>
  larger(mm(1.8), smaller(mm(2.7), part(smaller(width, height), 0.32)));

/** How letters and number share a frame; null where there is no room for the letters. */
function sharing(
  desk: HangingDesk,
  letters: string,
  width: Length,
  height: Length,
): "beside" | "under" | null {
  const radius = radiusIn(width, height);
  const wide = widthOf(desk, letters, LETTER);
  if (add(add(times(radius, 2), wide), times(AIR, 3)) <= width && times(radius, 2) < height) return "beside";
  const high = add(add(times(radius, 2), CAP), times(AIR, 3));
  return add(wide, times(AIR, 2)) <= width && high <= part(height, 0.75) ? "under" : null;
}

/** A work's number in its frame, its letters beside or under it where they do not stand over the row. */
function nameMarks({ desk, over }: Drawn, work: number, left: Length, top: Length): readonly Mark[] {
  const frame = desk.job.job.frames[work];
  if (frame === undefined) return [];
  const [width, height] = [drawn(frame.width, over), drawn(frame.height, over)];
  if (smaller(width, height) < LEAST) return [];
  const radius = radiusIn(width, height);
  const letters = inOneRow(desk) ? "" : lettersOf(desk, work);
  const shares = letters === "" ? null : sharing(desk, letters, width, height);
  const middle = add(left, part(width, 0.5));
  const numbered = (x: Length, y: Length): readonly Mark[] =>
    placed(block(ZERO, ZERO, ring(desk, String(desk.numbers[work] ?? 0), "white", radius)), x, y);
  if (shares === null) return numbered(middle, add(top, part(height, 0.6)));
  const wide = widthOf(desk, letters, LETTER);
  if (shares === "beside") {
    const from = subtract(middle, part(add(add(times(radius, 2), AIR), wide), 0.5));
    const line = add(top, part(height, 0.62));
    return [
      ...numbered(add(from, radius), line),
      textAt(add(add(from, times(radius, 2)), AIR), add(line, part(CAP, 0.5)), letters, LETTER),
    ];
  }
  const foot = subtract(add(top, height), AIR);
  return [
    ...numbered(middle, subtract(subtract(foot, add(CAP, AIR)), radius)),
    textAt(middle, foot, letters, LETTER, "middle"),
  ];
}

/** Over each frame of a row the letters of its hooks, where they do not meet those before; `all`: none was left out. */
function lettersOver(
  { desk, x, y }: Drawn,
  own: ReadonlySet<number>,
): { readonly marks: readonly Mark[]; readonly all: boolean } {
  const { job, plan } = desk.job;
  let before = Number.NEGATIVE_INFINITY;
  let all = true;
  const marks = plan.order.flatMap((work): readonly Mark[] => {
    const hooks = desk.hooks.filter((hook) => hook.work === work);
    const [place, frame] = [plan.places[work], job.frames[work]];
    if (!own.has(work) || hooks.length === 0 || place === undefined || frame === undefined) return [];
    const said = lettersOf(desk, work);
    const middle = x(add(place.x, part(frame.width, 0.5)));
    const half = widthOf(desk, said, LETTER) / 2;
    if (middle - half < before + mm(0.8)) {
      all = false;
      return [];
    }
    before = middle + half;
    const top = hooks.reduce((highest, { nail }) => smaller(highest, y(nail)), y(add(place.y, frame.height)));
    return [textAt(middle, subtract(top, mm(1.6)), said, LETTER, "middle", { halo: true })];
  });
  return { marks, all };
}

/** Whether every frame holds its number at this scale, and every hook has its letter. */
export function isLegible(at: Drawn): boolean {
  const { desk, over } = at;
  const { frames } = desk.job.job;
  const large = frames.every(({ width, height }) => drawn(smaller(width, height), over) >= LEAST);
  if (!large) return false;
  if (inOneRow(desk)) return lettersOver(at, new Set(frames.keys())).all;
  return frames.every(({ width, height }, work) => {
    const letters = lettersOf(desk, work);
    return letters === "" || sharing(desk, letters, drawn(width, over), drawn(height, over)) !== null;
  });
}

/** What must stay free: hatched, with its name where there is room. */
export function obstacleMarks(at: Drawn): readonly Mark[] {
  const { desk } = at;
  return desk.job.job.avoid.flatMap((box): readonly Mark[] => {
    const seen = seenOf(at, box);
    if (seen === null) return [];
    const room = widthOf(desk, box.name, TYPE.caption);
    const named = box.name !== "" && add(room, mm(3)) <= seen.width && seen.height >= mm(7);
    const middle = add(seen.left, part(seen.width, 0.5));
    const base = add(seen.top, part(seen.height, 0.5));
    return [
      { kind: "area", points: cornersOf(seen), fill: "hatch-waste", line: "thin" },
      ...(named
        ? [clearField(middle, base, room), textAt(middle, add(base, mm(1)), box.name, TYPE.caption, "middle")]
        : []),
    ];
  });
}
