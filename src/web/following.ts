/** What comes while one reads, in one file: no place needs it before one can work there. */
export { Grips } from "./work/grips.tsx";
export { Reckoning } from "./work/reckoning.tsx";
export { Ways } from "./work/ways-out.tsx";
