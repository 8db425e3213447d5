// A server of its own for the tests of signals: `tsx serving.ts FOLDER`, on any free port.
import { CannotServe, serve } from "../../src/server/index.ts";

const [folder = ""] = process.argv.slice(2);
const none = async () => ({ ok: true, value: new Uint8Array() }) as const;
const slow = async () => {
  process.stderr.write("under way\n");
  await new Promise((done) => setTimeout(done, 300));
  return { ok: true, value: new Map([["late.txt", new Uint8Array([1])]]) } as const;
};
try {
  const looked = async () => ({ ok: true, value: { papers: [], leftOut: [], plan: 1 } }) as const;
  const papers = { benchSheet: none, paper: none, previews: looked, packet: slow };
  await serve({ page: folder, clock: () => new Date(), papers });
} catch (error) {
  if (!(error instanceof CannotServe)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
