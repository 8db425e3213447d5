/**
 * Spoiled input: 50,000 mutated design documents and 50,000 spoiled, random and half-whole list files.
 * Each must come to a result or to a sentence; wanted: no exception, nothing that hangs. Prints how many
 * came to which, and the slowest.
 */
import * as fc from "fast-check";
import { readShow, composeResult, composeFrom } from "../src/show/index.ts";
import { sayListProblem } from "../src/words/lists.ts";
import { anyFile, wholeWorkbooks } from "../tests/lists/generators.ts";
import { hostileDocument } from "../tests/robustness/hostile.ts";

const EACH = 50_000;

interface Tally {
  results: number;
  sentences: number;
  slowest: number;
}

async function count(runs: AsyncIterable<boolean>): Promise<Tally> {
  const tally: Tally = { results: 0, sentences: 0, slowest: 0 };
  let before = performance.now();
  for await (const result of runs) {
    const now = performance.now();
    tally.slowest = Math.max(tally.slowest, now - before);
    if (result) tally.results += 1;
    else tally.sentences += 1;
    before = performance.now();
  }
  return tally;
}

async function* documents(): AsyncGenerator<boolean> {
  for (let seed = 1; seed <= EACH; seed++) {
    const document = hostileDocument(seed + 1_000_000);
    JSON.parse(composeResult(document).text);
    yield composeFrom(document).ok;
  }
}

async function* lists(): AsyncGenerator<boolean> {
  const files = fc.sample(anyFile(await wholeWorkbooks()), { numRuns: EACH, seed: 20261125 });
  for (const bytes of files) {
    const read = await readShow(bytes, "list.csv", "in");
    if (read.ok) for (const problem of read.show.listProblems) sayListProblem(problem);
    yield read.ok && read.show.works.length > 0;
  }
}

for (const [name, runs] of [
  ["design documents", documents()],
  ["list files", lists()],
] as const) {
  const { results, sentences, slowest } = await count(runs);
  console.log(
    `  ${name.padEnd(17)} ${results} gave a result, ${sentences} a sentence, none an exception; slowest ${slowest.toFixed(0)} ms; wanted: no exception in ${EACH}`,
  );
}
