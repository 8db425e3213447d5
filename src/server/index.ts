export { type AppParts, createApp, type Example, MOST_BYTES } from "./app.ts";
export { type Asset, type Assets, assetOf, readAssets } from "./assets.ts";
export { hasScreen, opener } from "./browser.ts";
export { type Listening, listen } from "./listen.ts";
export type { PaperOrder, Papers } from "./papers.ts";
export { CannotServe, readExample, serve, type ServeOptions, USUAL_PORT } from "./serve.ts";
export { papersOf } from "./paper-maker.ts";
