// Writes one change after another into the studio of a folder and says each number once it is acknowledged:
// `tsx writer.ts HOME [DATABASE]`. It goes on until it is killed.
import { makeChanges } from "../../src/storage/index.ts";
import { open } from "./databases.ts";

const [home = "", database = ""] = process.argv.slice(2);
const store = await open({ home, database });
for (let number = 1; ; number++) {
  const outcome = await makeChanges(store, "killed", number - 1, [
    {
      stamp: `n${number}`,
      window: "writer",
      act: "do",
      of: null,
      change: {
        kind: "facts",
        work: "a",
        said: "counted",
        before: { notes: String(number - 1) },
        after: { notes: String(number) },
      },
    },
  ]);
  if (outcome.kind !== "kept") throw new Error(JSON.stringify(outcome));
  process.stdout.write(`${number}\n`);
}
