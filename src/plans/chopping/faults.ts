/** What can be wrong with a chop plan. Indices are those of the plan's sticks, of their rails, and of the job's rails and lengths. */
export type ChoppingFault =
  | { readonly code: "no-such-length"; readonly stick: number }
  | { readonly code: "no-such-rail"; readonly stick: number; readonly place: number }
  /** A stick from which nothing is chopped. */
  | { readonly code: "empty"; readonly stick: number }
  /** A rail does not lie where the waste, the rails before it and their kerfs put it. */
  | { readonly code: "place"; readonly stick: number; readonly place: number }
  | { readonly code: "used"; readonly stick: number }
  | { readonly code: "left"; readonly stick: number }
  /** More is used than the length has. */
  | { readonly code: "too-full"; readonly stick: number }
  | { readonly code: "copy"; readonly rail: number; readonly copy: number }
  | { readonly code: "demand"; readonly rail: number; readonly made: number }
  /** A rail is missing and no check of level "stop" names it, or one does without reason. */
  | { readonly code: "silence"; readonly rail: number }
  | { readonly code: "copies"; readonly length: number; readonly used: number }
  | { readonly code: "cost"; readonly said: number; readonly counted: number }
  | { readonly code: "bound-above-cost" }
  | { readonly code: "not-proven" }
  | { readonly code: "frames"; readonly onOneStick: number; readonly of: number };
