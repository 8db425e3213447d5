import type { Box } from "../../geometry/index.ts";
import type { Ground, Report } from "./faults.ts";
import type { CuttingJob } from "./job.ts";
import type { Cut, PlannedSheet } from "./plan.ts";

type Rectangle = readonly [left: number, top: number, right: number, foot: number];

/**
 * Makes the cuts of a sheet one by one, each on a board that lies there by then, and looks at what
 * lies on the bench at the end: every piece by itself, and what is called left over, nothing else
 * but trim.
 */
export function carryOutCuts(
  job: CuttingJob,
  sheet: PlannedSheet,
  index: number,
  ground: Ground,
  report: Report,
): void {
  const boards = new Map<string, Rectangle>();
  const lay = (board: Rectangle): void => {
    if (board[0] < board[2] && board[1] < board[3]) boards.set(keyOf(board), board);
  };
  lay([0, 0, ground.width, ground.height]);
  sheet.cuts.forEach((cut, number) => {
    const part = rectangleOf(cut.part);
    if (!boards.has(keyOf(part)) || !runsThrough(cut, part)) {
      report({ code: "cut-in-the-air", sheet: index, cut: number });
      return;
    }
    boards.delete(keyOf(part));
    checkCut(job, cut, part, (code) => report({ code, sheet: index, cut: number }));
    for (const half of halvesOf(cut, part)) lay(half);
  });
  countSettings(sheet, index, report);
  lookAtBench(job, sheet, index, ground, boards, report);
}

const keyOf = ([left, top, right, foot]: Rectangle): string => `${left},${top},${right},${foot}`;

const rectangleOf = (box: Box): Rectangle => [box.left, box.top, box.left + box.width, box.top + box.height];

/** From edge to edge, straight, and inside the board or at one of its edges. */
function runsThrough({ from, to, across, takes }: Cut, [left, top, right, foot]: Rectangle): boolean {
  if (across === "x") {
    return from.x === to.x && from.y === top && to.y === foot && from.x >= left && from.x + takes <= right;
  }
  return from.y === to.y && from.x === left && to.x === right && from.y >= top && from.y + takes <= foot;
}

type CutFault = "cut-too-long" | "cut-takes" | "cut-setting";

function checkCut(job: CuttingJob, cut: Cut, part: Rectangle, report: (code: CutFault) => void): void {
  const [start, end] = cut.across === "x" ? [part[0], part[2]] : [part[1], part[3]];
  const line = cut.across === "x" ? cut.from.x : cut.from.y;
  const length = cut.across === "x" ? part[3] - part[1] : part[2] - part[0];
  if (job.longestCut !== null && length > job.longestCut) report("cut-too-long");
  // The blade may hang over an edge of the board, and then takes less than its kerf.
  const overhangs = line === start || line + cut.takes === end;
  if (cut.takes > job.kerf || (cut.takes < job.kerf && !overhangs)) report("cut-takes");
  const kept = cut.against === "before" ? line - start : end - line - cut.takes;
  if (kept <= 0 || cut.setting !== kept) report("cut-setting");
}

function halvesOf({ across, from, takes }: Cut, [left, top, right, foot]: Rectangle): [Rectangle, Rectangle] {
  return across === "x"
    ? [
        [left, top, from.x, foot],
        [from.x + takes, top, right, foot],
      ]
    : [
        [left, top, right, from.y],
        [left, from.y + takes, right, foot],
      ];
}

function countSettings({ cuts, settings }: PlannedSheet, sheet: number, report: Report): void {
  const counted = cuts.filter((cut, number) => cuts[number - 1]?.setting !== cut.setting).length;
  if (counted !== settings) report({ code: "settings", sheet, said: settings, counted });
}

function lookAtBench(
  job: CuttingJob,
  sheet: PlannedSheet,
  index: number,
  ground: Ground,
  boards: Map<string, Rectangle>,
  report: Report,
): void {
  sheet.placements.forEach((lies, placement) => {
    if (!boards.delete(keyOf(rectangleOf(lies)))) report({ code: "not-cut-free", sheet: index, placement });
  });
  const { trim } = ground;
  const usable: Rectangle = [trim, trim, ground.width - trim, ground.height - trim];
  const off = [...boards.values()].map((board) => inside(board, usable)).filter((board) => board !== null);
  const named = sheet.left.map((box) => keyOf(rectangleOf(box)));
  if (off.map(keyOf).toSorted().join(" ") !== named.toSorted().join(" ")) {
    report({ code: "left-over", sheet: index });
  }
  sheet.left.forEach((box, left) => {
    const least = job.least;
    const [short, long] = [Math.min(box.width, box.height), Math.max(box.width, box.height)];
    const keep =
      least !== null &&
      short >= Math.min(least.width, least.height) &&
      long >= Math.max(least.width, least.height);
    if (keep !== box.keep) report({ code: "keep", sheet: index, left });
  });
}

function inside(board: Rectangle, usable: Rectangle): Rectangle | null {
  const left = Math.max(board[0], usable[0]);
  const top = Math.max(board[1], usable[1]);
  const right = Math.min(board[2], usable[2]);
  const foot = Math.min(board[3], usable[3]);
  return left < right && top < foot ? [left, top, right, foot] : null;
}
