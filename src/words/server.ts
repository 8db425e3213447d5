/** What the server says: where it is, and why it will not answer. */
export const SERVER = {
  at: (address: string): string => `Margent is at ${address}`,
  notBuilt: (folder: string): string =>
    `the page is not built (nothing in ${folder}): run npm start, or npm run build:web`,
  portTaken: (port: number): string =>
    `port ${port} is taken: give another with --port, or --port 0 for any free one`,
  badPort: (found: string): string => `port: found ${found}; wanted: a whole number from 0 to 65535`,
  homeIsNoFolder: (home: string): string =>
    `${home} is not a folder: --home wants the folder of the studio's own file`,
  noBrowser: (why: string): string => `no browser could be opened (${why}); the address above works in any`,
  host: "the address this server printed",
  origin: "a page that this server gave out",
  json: "a body of type application/json",
  bytes: (most: number): string => `at most ${most / 1_000_000} MB`,
  path: "one of the addresses that this server has",
  fault: "a result; the fault is Margent's own, and what it was stands where the server was started",
  work: (count: number): string =>
    count === 1 ? "0, the show's only work" : `a whole number from 0 to ${count - 1}`,
  keepsNothing: (why: string): string =>
    `nothing is kept at this server: ${why}. The page keeps its shows in the browser; for a studio's file run npm ci again, with a C++ compiler and Python where no binary can be had`,
  show: "the id of a show that the studio keeps",
  number: "the number of a change, from 0",
  noPicture: "no picture, or one that cannot be decoded",
  picture: "a JPEG, PNG, WebP, AVIF, GIF or TIFF",
  export: "a zip that Margent has exported, or one with a show.json",
  oneOf: (names: readonly string[]): string => `one of ${names.join(", ")}`,
  paperOfShow: "a paper that this show has a part for",
  date: "a date such as 2026-12-14",
} as const;
