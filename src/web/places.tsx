import type { ComponentType } from "preact";
import { file } from "./later.tsx";
import type { KeptShow } from "./state/change.ts";
import type { PlaceName } from "./state/route.ts";

interface ShowPlace {
  readonly at: PlaceName;
  readonly Shown: ComponentType<{ readonly show: KeptShow }>;
}

/** The places of a show, in the order of the head line. A new one is a folder of its own, a line here and a name in `route.ts`. */
export const PLACES: readonly ShowPlace[] = [
  { at: "works", Shown: file(() => import("./works/works.tsx"))(({ Works }) => Works) },
  { at: "boards", Shown: file(() => import("./boards/boards.tsx"))(({ Boards }) => Boards) },
  { at: "wall", Shown: file(() => import("./wall/wall.tsx"))(({ Wall }) => Wall) },
  { at: "papers", Shown: file(() => import("./papers-place/papers.tsx"))(({ Papers }) => Papers) },
  { at: "practice", Shown: file(() => import("./practice/practice.tsx"))(({ Practice }) => Practice) },
];

/** Two that the head line does not name: where a show begins, and one of its works. */
export const First = file(() => import("./first/first.tsx"))(({ First: it }) => it);
export const Work = file(() => import("./work/work.tsx"))(({ Work: it }) => it);
