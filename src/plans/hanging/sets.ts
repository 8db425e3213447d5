import type { FrameWanted } from "./job.ts";

/** The frames in their order, those of one set together where its first one stands. */
export function setOrder(frames: readonly FrameWanted[]): readonly number[] {
  return groups(frames).flat();
}

/** Whether a frame is of one set with the one before it in a row, and not to be parted from it. */
export function isJoined(frames: readonly FrameWanted[], row: readonly number[], place: number): boolean {
  const set = frames[row[place] ?? -1]?.set ?? null;
  return set !== null && set === (frames[row[place - 1] ?? -1]?.set ?? null);
}

/** Each set as one group, each other frame as one of its own; groups in the order of their first frame. */
export function groups(frames: readonly FrameWanted[]): readonly (readonly number[])[] {
  const found: number[][] = [];
  const known = new Map<number, number[]>();
  frames.forEach(({ set }, index) => {
    const group = set === null ? undefined : known.get(set);
    if (group !== undefined) {
      group.push(index);
      return;
    }
    const begun = [index];
    found.push(begun);
    if (set !== null) known.set(set, begun);
  });
  return found;
}
