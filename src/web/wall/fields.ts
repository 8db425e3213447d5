import {
  absolute,
  add,
  type Length,
  larger,
  negate,
  printExact,
  subtract,
  ZERO,
} from "../../lengths/index.ts";
import type { HangRequest, WallDocument } from "../../show/index.ts";
import {
  CENTRE_OPTIONS,
  countOptions,
  FROM_OPTIONS,
  KIND_OPTIONS,
  LARGEST_OPTIONS,
  LIES_OPTIONS,
  type Options,
  PASS_OPTIONS,
  RULE_OPTIONS,
  SHAKES_OPTIONS,
} from "../../words/page.ts";
import type { DocumentField } from "../blanks/field.ts";
import { inRule, onRuler, ruleUnder, usualFall, usualLevel } from "./edits.ts";

/** What a wall's blank is read from: the wall as it was read, every choice made, and the middle of what hangs on it. */
export interface WallSaid {
  readonly wall: WallDocument;
  readonly request: HangRequest;
  readonly centre: Length;
}

/** What stands behind each blank of the wall's sentences. */
export type WallField = DocumentField<WallSaid, WallDocument>;

const length = (
  read: (said: WallSaid) => Length,
  write: (said: WallSaid, text: string, length: Length) => WallDocument,
): WallField => ({ kind: "length", read, write });

const choice = (
  options: (said: WallSaid) => Options<string>,
  read: (said: WallSaid) => string,
  write: (said: WallSaid, key: string) => WallDocument,
): WallField => ({ kind: "choice", options, read, write });

const own =
  (key: "width" | "height" | "levelLine" | "fall" | "eyeLine" | "hookDrop" | "name") =>
  ({ wall }: WallSaid, text: string): WallDocument => ({ ...wall, [key]: text });

const without = ({ wall }: WallSaid, key: keyof WallDocument): WallDocument => {
  const { [key]: _, ...rest } = wall;
  return rest as WallDocument;
};

/** What stays where it is on the wall when heights are counted from a line `by` higher. */
const counted = (wall: WallDocument, { request: { job, ruler } }: WallSaid, by: Length): WallDocument => ({
  ...wall,
  eyeLine: printExact(subtract(job.eyeLine, by), ruler.unit),
  ...(wall.avoid === undefined
    ? {}
    : {
        avoid: wall.avoid.map((box, index) => ({
          ...box,
          y: printExact(subtract(job.avoid[index]?.y ?? ZERO, by), ruler.unit),
        })),
      }),
});

const unitOf = ({ request }: WallSaid) => request.ruler.unit;
const gapOf = ({ request: { job } }: WallSaid): Length => (job.rule.kind === "spread" ? ZERO : job.rule.gap);

const FIELDS: Readonly<Record<string, WallField>> = {
  name: { kind: "text", read: ({ request }) => request.wall, write: own("name") },
  width: length(({ request }) => request.job.wall.width, own("width")),
  height: length(({ request }) => request.job.wall.height, own("height")),
  kind: choice(
    () => KIND_OPTIONS,
    ({ wall }) => wall.kind ?? "none",
    (said, key) => {
      const kind = KIND_OPTIONS.find((one) => one.key === key)?.key ?? "none";
      return kind === "none" ? without(said, "kind") : { ...said.wall, kind };
    },
  ),
  from: choice(
    () => FROM_OPTIONS,
    ({ wall }) => (wall.levelLine === undefined ? "floor" : "level"),
    (said, key) => {
      const { ruler, job } = said.request;
      if (key !== "level") return counted(without(said, "levelLine"), said, job.floor);
      const level = usualLevel(ruler.unit);
      return counted({ ...said.wall, levelLine: printExact(level, ruler.unit) }, said, level);
    },
  ),
  levelLine: length(({ request }) => negate(request.job.floor), own("levelLine")),
  lies: choice(
    () => LIES_OPTIONS,
    ({ request: { measuring } }) => (measuring.fall === 0 ? "level" : measuring.fall > 0 ? "right" : "left"),
    (said, key) => {
      if (key === "level") return without(said, "fall");
      const { fall } = said.request.measuring;
      const by = fall === 0 ? usualFall(unitOf(said)) : printExact(absolute(fall), unitOf(said));
      return { ...said.wall, fall: key === "right" ? by : `-${by}` };
    },
  ),
  fall: length(
    ({ request }) => absolute(request.measuring.fall),
    (said, by) => ({ ...said.wall, fall: said.request.measuring.fall < 0 ? `-${by}` : by }),
  ),
  pass: choice(
    () => PASS_OPTIONS,
    ({ wall }) => (wall.publicWay === true ? "yes" : "no"),
    (said, key) => (key === "yes" ? { ...said.wall, publicWay: true } : without(said, "publicWay")),
  ),
  shakes: choice(
    () => SHAKES_OPTIONS,
    ({ wall }) => (wall.shakes === true ? "yes" : "no"),
    (said, key) => (key === "yes" ? { ...said.wall, shakes: true } : without(said, "shakes")),
  ),
  rule: choice(
    () => RULE_OPTIONS,
    ({ request }) => request.job.rule.kind,
    (said, key) => {
      const kind = RULE_OPTIONS.find((one) => one.key === key)?.key ?? "gap";
      const { rule, frames } = said.request.job;
      const unit = unitOf(said);
      const gap = rule.kind === "spread" ? (unit === "in" ? "2 in" : "50 mm") : printExact(rule.gap, unit);
      const centre =
        rule.kind === "spread" || rule.centre === null ? undefined : printExact(rule.centre, unit);
      return { ...said.wall, rule: ruleUnder(kind, gap, centre, frames.length) };
    },
  ),
  gap: length(gapOf, (said, gap) => ({ ...said.wall, rule: inRule(said.wall.rule, { gap }) })),
  rowGap: length(
    ({ request: { job } }) => ("rowGap" in job.rule ? job.rule.rowGap : ZERO),
    (said, rowGap) => ({ ...said.wall, rule: inRule(said.wall.rule, { rowGap }) }),
  ),
  count: choice(
    (said) => countOptions(countOf(said)),
    (said) => String(countOf(said)),
    ({ wall }, key) => {
      const { rule } = wall;
      if (rule === undefined) return wall;
      if ("rows" in rule) return { ...wall, rule: { rows: { ...rule.rows, count: Number(key) } } };
      if ("grid" in rule) return { ...wall, rule: { grid: { ...rule.grid, columns: Number(key) } } };
      return wall;
    },
  ),
  largest: choice(
    () => LARGEST_OPTIONS,
    ({ request: { job } }) => (job.rule.kind === "cluster" ? job.rule.largest : "middle"),
    ({ wall }, key) => {
      const { rule } = wall;
      const largest = LARGEST_OPTIONS.find((one) => one.key === key)?.key ?? "middle";
      return rule !== undefined && "cluster" in rule
        ? { ...wall, rule: { cluster: { ...rule.cluster, largest } } }
        : wall;
    },
  ),
  centre: choice(
    () => CENTRE_OPTIONS,
    ({ request: { job } }) => ("centre" in job.rule && job.rule.centre !== null ? "place" : "wall"),
    (said, key) => {
      const { ruler } = said.request;
      const centre = key === "place" ? onRuler(said.centre, ruler.graduation, ruler.unit) : undefined;
      return { ...said.wall, rule: inRule(said.wall.rule, { centre }) };
    },
  ),
  centreAt: length(
    ({ request: { job }, centre }) => ("centre" in job.rule ? (job.rule.centre ?? centre) : centre),
    (said, centre) => ({ ...said.wall, rule: inRule(said.wall.rule, { centre }) }),
  ),
  eyeLine: length(({ request }) => larger(ZERO, request.job.eyeLine), own("eyeLine")),
  hookDrop: length(({ request }) => request.habits.hookDrop, own("hookDrop")),
};

const countOf = ({ request: { job } }: WallSaid): number =>
  job.rule.kind === "rows" ? job.rule.count : job.rule.kind === "grid" ? job.rule.columns : 1;

type Box = NonNullable<WallDocument["avoid"]>[number];
type Seat = NonNullable<WallDocument["seats"]>[number];

/** The blank of one thing that must stay free: `avoid.0.width`. */
function boxField(index: number, part: string): WallField | null {
  const change = ({ wall }: WallSaid, patch: Partial<Box>): WallDocument => ({
    ...wall,
    avoid: (wall.avoid ?? []).map((box, other) => (other === index ? { ...box, ...patch } : box)),
  });
  if (part === "name")
    return {
      kind: "text",
      read: ({ wall }) => wall.avoid?.[index]?.name ?? "",
      write: (said, name) => change(said, { name }),
    };
  if (part !== "x" && part !== "y" && part !== "width" && part !== "height") return null;
  if (part === "y")
    return length(
      ({ request: { job } }) => subtract(job.avoid[index]?.y ?? ZERO, job.floor),
      (said, _, up) => change(said, { y: printExact(add(up, said.request.job.floor), unitOf(said)) }),
    );
  return length(
    ({ request }) => request.job.avoid[index]?.[part] ?? ZERO,
    (said, text) => change(said, { [part]: text }),
  );
}

function seatField(index: number, part: string): WallField | null {
  const change = ({ wall }: WallSaid, patch: Partial<Seat>): WallDocument => ({
    ...wall,
    seats: (wall.seats ?? []).map((seat, other) => (other === index ? { ...seat, ...patch } : seat)),
  });
  if (part === "name")
    return {
      kind: "text",
      read: ({ wall }) => wall.seats?.[index]?.name ?? "",
      write: (said, name) => change(said, { name }),
    };
  if (part !== "x" && part !== "width") return null;
  return length(
    ({ request }) => request.habits.seats[index]?.[part] ?? ZERO,
    (said, text) => change(said, { [part]: text }),
  );
}

/** What stands behind a blank by its name, `wall.gap`, `wall.avoid.0.x`; null where there is no such blank. */
export function wallField(blank: string): WallField | null {
  const [, of = "", index = "", part = ""] = blank.split(".");
  if (of === "avoid") return boxField(Number(index), part);
  if (of === "seats") return seatField(Number(index), part);
  return FIELDS[of] ?? null;
}
