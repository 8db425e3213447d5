import type { CuttingJob, CuttingPlan, CuttingProgress } from "../../plans/index.ts";
import type { PlanningOrder, PlanningWord } from "../../solver/index.ts";
import { signal } from "../state/signal.ts";

/** How far the planning of one material has come. */
export interface Planning {
  /** The best plan that is whole so far; null before the first. */
  readonly plan: CuttingPlan | null;
  /** What the work that goes on has found; null: nothing yet that is better. */
  readonly progress: CuttingProgress | null;
  readonly state: "waiting" | "planning" | "done" | "stopped" | "failed";
  /** Seconds that it has taken so far. */
  readonly seconds: number;
}

const BEGUN: Planning = { plan: null, progress: null, state: "waiting", seconds: 0 };

/** A first plan is quick, so that there is something to look at; the second comes as near to the bound as its time allows. */
const SECONDS = { first: 1, second: 20 };
const MOST_KNOWN = 40;

const known = signal<ReadonlyMap<string, Planning>>(new Map());

export const keyOf = (job: CuttingJob): string => JSON.stringify(job);

/** What is known of a job's plan. */
export const planningOf = (job: CuttingJob): Planning => known.value.get(keyOf(job)) ?? BEGUN;

function tell(key: string, change: Partial<Planning>): void {
  const before = known.value.get(key) ?? BEGUN;
  const rest = [...known.value].filter(([other]) => other !== key).slice(-MOST_KNOWN);
  known.value = new Map([...rest, [key, { ...before, ...change }]]);
}

interface Task {
  readonly key: string;
  readonly job: CuttingJob;
  readonly seconds: number;
}

interface Working {
  readonly task: Task;
  readonly worker: Worker;
  /** Shared with the worker where the browser allows it: it then ends with its best plan. */
  readonly stop: Int32Array<SharedArrayBuffer> | null;
  readonly began: number;
}

let working: Working | null = null;
let queue: readonly Task[] = [];
let worker: Worker | null = null;

const stateOf = (key: string): Planning => known.value.get(key) ?? BEGUN;

/** Asks for plans of these jobs, the first of them first and longest; what was asked before and is not among them is left. */
export function askFor(jobs: readonly CuttingJob[]): void {
  const tasks = jobs.map((job) => ({ key: keyOf(job), job }));
  const wanted = new Set(tasks.map(({ key }) => key));
  const [first] = tasks;
  const urgent = first !== undefined && stateOf(first.key).plan === null;
  if (working !== null) {
    const { key, seconds } = working.task;
    // What is looked at does not wait until another board's search has ended.
    const elsewhere = key !== first?.key && (urgent || seconds === SECONDS.second);
    if (!wanted.has(key) || elsewhere) {
      end();
      tell(key, { state: "waiting", progress: null });
    }
  }
  const open = tasks.filter(({ key }) => key !== working?.task.key);
  queue = [
    ...open
      .filter(({ key }) => stateOf(key).plan === null && stateOf(key).state === "waiting")
      .map((task) => ({ ...task, seconds: SECONDS.first })),
    // Only what is looked at is worth a long search.
    ...open
      .filter(({ key }) => key === first?.key && stateOf(key).state === "waiting")
      .map((task) => ({ ...task, seconds: SECONDS.second })),
  ];
  next();
}

/** Ends the work on a job; the best plan so far stands. */
export function stopPlanning(job: CuttingJob): void {
  const key = keyOf(job);
  queue = queue.filter((task) => task.key !== key);
  if (working?.task.key === key && working.stop !== null) {
    tell(key, { state: "stopped" });
    Atomics.store(working.stop, 0, 1);
    return;
  }
  tell(key, { state: "stopped", progress: null });
  if (working?.task.key === key) {
    end();
    next();
  }
}

/** Goes on from where it was stopped, or looks once more. */
export function lookFurther(job: CuttingJob): void {
  const key = keyOf(job);
  tell(key, { state: "waiting" });
  queue = [{ key, job, seconds: SECONDS.second }, ...queue.filter((task) => task.key !== key)];
  next();
}

function end(): void {
  worker?.terminate();
  worker = null;
  working = null;
}

function next(): void {
  if (working !== null) return;
  const [task, ...rest] = queue;
  queue = rest;
  if (task === undefined) return;
  const before = known.value.get(task.key);
  if (before?.state === "done" || before?.state === "stopped") {
    next();
    return;
  }
  worker ??= newWorker();
  const stop = globalThis.crossOriginIsolated ? new Int32Array(new SharedArrayBuffer(4)) : null;
  working = { task, worker, stop, began: performance.now() };
  tell(task.key, { state: "planning" });
  const order: PlanningOrder = { job: task.job, seconds: task.seconds, seed: 1, stop };
  worker.postMessage(order, []);
}

function newWorker(): Worker {
  const made = new Worker(new URL("../planning-worker.ts", import.meta.url), { type: "module" });
  made.addEventListener("message", ({ data }: MessageEvent<PlanningWord>) => hear(data));
  made.addEventListener("error", (event) => {
    event.preventDefault();
    const at = working?.task.key;
    end();
    if (at !== undefined) tell(at, { state: "failed", progress: null });
    next();
  });
  return made;
}

function hear(word: PlanningWord): void {
  if (working === null) return;
  const { task, began } = working;
  const { key } = task;
  if (word.says === "progress") {
    tell(key, { progress: word.progress });
    return;
  }
  working = null;
  const before = known.value.get(key) ?? BEGUN;
  const { plan } = word;
  const better = before.plan === null || plan.proven || isBetter(plan, before.plan) ? plan : before.plan;
  const again = task.seconds === SECONDS.first && !plan.proven;
  tell(key, {
    plan: better,
    progress: null,
    seconds: before.seconds + (performance.now() - began) / 1000,
    state: before.state === "stopped" ? "stopped" : again ? "waiting" : "done",
  });
  next();
}

const missing = (plan: CuttingPlan): number => plan.missing.reduce((all, count) => all + count, 0);

const isBetter = (plan: CuttingPlan, than: CuttingPlan): boolean =>
  missing(plan) < missing(than) ||
  (missing(plan) === missing(than) && (plan.cost < than.cost || plan.bound.cost > than.bound.cost));
