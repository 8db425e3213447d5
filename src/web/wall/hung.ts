import { hangPlanned, type HangRequest, type HungWall, practiceFor } from "../../show/index.ts";
import {
  type ComposedWork,
  practiceOfShow,
  type ReadWall,
  type ReadWalls,
  readWalls,
} from "../../packet/reckoned/index.ts";
import { planWall, type WallPlan } from "../../plans/index.ts";
import type { WallDocument } from "../../show/index.ts";
import type { KeptShow } from "../state/change.ts";
import { framedOf, readOf } from "../state/framed.ts";
import { signal } from "../state/signal.ts";

/** A show's walls as they are read, with the works that hang on them. */
export interface ShowWalls extends ReadWalls {
  readonly composed: readonly ComposedWork[];
}

/** Reads a show's walls, or others in their place; null where its practice cannot be read. */
export function wallsOf(show: KeptShow, walls: readonly WallDocument[] = show.walls ?? []): ShowWalls | null {
  const read = { ...readOf(show), walls };
  const document = practiceOfShow(read);
  const practice = practiceFor(document, document.unit ?? read.unit);
  if (!practice.ok) return null;
  const { works, framed } = framedOf(show);
  return { composed: works, ...readWalls(read, works, framed, practice.value, document) };
}

const MOST_KNOWN = 60;
const plans = new Map<string, WallPlan>();
/** Changes when a plan that was made apart has arrived. */
const arrived = signal(0);

const keyOf = ({ job, seed }: HangRequest): string => JSON.stringify([job, seed]);

function remember(key: string, plan: WallPlan): WallPlan {
  plans.delete(key);
  plans.set(key, plan);
  const [oldest] = plans.keys();
  if (plans.size > MOST_KNOWN && oldest !== undefined) plans.delete(oldest);
  return plan;
}

/** A wall laid out: at once where that takes no time, else by a worker; null while it does so. */
export function planOf(request: HangRequest): WallPlan | null {
  const key = keyOf(request);
  const found = plans.get(key);
  if (found !== undefined) return found;
  if (request.job.rule.kind !== "cluster" || request.job.frames.length < FEW)
    return remember(key, planWall(request.job, request.seed));
  // Read, so that whoever asked is drawn again when the plan is here.
  if (arrived.value < 0) return null;
  planApart(key, request);
  return null;
}

/** A group of fewer is solved before anyone has noticed. */
const FEW = 4;

let working: { readonly key: string; readonly worker: Worker } | null = null;

/** Only the last wall that was asked for is worked on. */
function planApart(key: string, request: HangRequest): void {
  if (working?.key === key) return;
  working?.worker.terminate();
  const worker = new Worker(new URL("./laying-worker.ts", import.meta.url), { type: "module" });
  working = { key, worker };
  worker.addEventListener("message", ({ data }: MessageEvent<WallPlan>) => {
    remember(key, data);
    worker.terminate();
    if (working?.key === key) working = null;
    arrived.value++;
  });
  worker.postMessage({ job: request.job, seed: request.seed }, []);
}

/** What the last plan of each wall was, to stand there until the next is here. */
const stood = new Map<number, { readonly frames: number; readonly plan: WallPlan }>();

export interface WallOnPage {
  readonly read: ReadWall;
  readonly hung: HungWall;
  /** The works in the order in which the wall lays them out. */
  readonly works: readonly ComposedWork[];
  /** Whether a newer plan is still being made. */
  readonly waiting: boolean;
}

/** A wall as it is drawn: by its own plan, or until that is here by the last one, or in one row. */
export function onPage(read: ReadWall, composed: readonly ComposedWork[]): WallOnPage {
  const { request } = read;
  const plan = planOf(request);
  const last = stood.get(read.index);
  if (plan !== null) stood.set(read.index, { frames: request.works.length, plan });
  const stands =
    plan ??
    (last?.frames === request.works.length
      ? last.plan
      : planWall({ ...request.job, rule: { kind: "spread" } }, request.seed));
  return {
    read,
    hung: hangPlanned(request, stands),
    works: read.works.flatMap((work) => composed[work] ?? []),
    waiting: plan === null,
  };
}
