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
  date: "a date such as 2026-12-14",
} as const;
