import type { PracticeDocument, ShowDocument } from "../../src/show/schema.ts";

/** How the print room hangs: its hooks as they were measured, what lies in the drawer at invented ratings. */
export const HANGING: NonNullable<PracticeDocument["hanging"]> = {
  safety: 4,
  hookDrop: "5/16 in",
  fittings: { kind: "rings", down: 0.3, inset: "3/8 in" },
  hardware: [
    { name: "brass hook, one nail", use: "hook", rated: "10 lb" },
    { name: "steel hook, two nails", use: "hook", rated: "30 lb" },
    { name: "steel hook, screwed", use: "hook", rated: "75 lb" },
    { name: "ring, one screw", use: "ring", rated: "20 lb" },
    { name: "ring, two screws", use: "ring", rated: "60 lb" },
    { name: "braided steel, no. 3", use: "wire", rated: "45 lb" },
  ],
};

/** The two walls of the room: the first twelve works in a row, the rest in a group beside the door. */
export const wallsOf = (titles: readonly string[]): NonNullable<ShowDocument["walls"]> => [
  {
    name: "North wall",
    width: "27'",
    height: "10'",
    kind: "plasterboard",
    rule: { row: "gap", gap: "4 in" },
    levelLine: "48 in",
    eyeLine: "9 in",
    works: titles.slice(0, 12),
  },
  {
    name: "East wall",
    width: "19'",
    height: "10'",
    kind: "masonry",
    fall: "3/8 in",
    avoid: [
      { name: "door", x: "186 in", y: "0 in", width: "36 in", height: "82 in" },
      { name: "light switch", x: "178 in", y: "44 in", width: "4 in", height: "6 in" },
    ],
    seats: [{ name: "the bench", x: "12 in", width: "40 in" }],
    eyeLine: "58 in",
    rule: { cluster: { gap: "2 1/2 in", centre: "112 in", largest: "middle" } },
    works: "rest",
  },
];
