import type { Box } from "../../geometry/index.ts";

type Way = 0 | 1;

/**
 * Whether straight cuts from edge to edge, each a kerf wide, can part all boxes. Greedy is exact:
 * wherever a cut hits no box it can be made, since what is cuttable stays so when part of it is taken away.
 */
export function cutsApart(boxes: readonly Box[], kerf: number): boolean {
  if (boxes.length < 2) return true;
  const starts = [boxes.map(({ left }) => left), boxes.map(({ top }) => top)] as const;
  const ends = [
    boxes.map(({ left, width }) => left + width),
    boxes.map(({ top, height }) => top + height),
  ] as const;
  const groupOf = new Int32Array(boxes.length);

  /** The boxes in groups that cuts one way part, from their order that way and the other. */
  const groups = (along: readonly number[], across: readonly number[], way: Way): [number[], number[]][] => {
    const parted: [number[], number[]][] = [];
    let reach = Number.NEGATIVE_INFINITY;
    for (const box of along) {
      if ((starts[way][box] ?? 0) >= reach + kerf) parted.push([[], []]);
      groupOf[box] = parted.length - 1;
      parted.at(-1)?.[0].push(box);
      reach = Math.max(reach, ends[way][box] ?? 0);
    }
    if (parted.length > 1) for (const box of across) parted[groupOf[box] ?? 0]?.[1].push(box);
    return parted;
  };
  /** Whether cuts one way, then the other and so on, part all boxes; null: none can be made this way. */
  const partedBy = (along: readonly number[], across: readonly number[], way: Way): boolean | null => {
    const parted = groups(along, across, way);
    if (parted.length < 2) return null;
    const other = way === 0 ? 1 : 0;
    return parted.every(([own, others]) => own.length < 2 || partedBy(others, own, other) === true);
  };
  const sorted = (way: Way): number[] =>
    [...boxes.keys()].toSorted((a, b) => (starts[way][a] ?? 0) - (starts[way][b] ?? 0));
  const [across, down] = [sorted(0), sorted(1)];
  return partedBy(across, down, 0) ?? partedBy(down, across, 1) ?? false;
}
