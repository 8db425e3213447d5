export type * from "./marks.ts";
