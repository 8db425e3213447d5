#!/usr/bin/env node
import { Command, CommanderError } from "commander";
import {
  composeDocument,
  jsonSchemaOf,
  practiceDocument,
  showDocument,
  stockDocument,
} from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { type ComposeOptions, runCompose } from "./compose.ts";
import { Unreadable } from "./input.ts";

const SCHEMAS = {
  compose: composeDocument,
  show: showDocument,
  practice: practiceDocument,
  stock: stockDocument,
} as const;

/** The program: arguments in, one call, an exit status out. Standard output holds results only. */
export async function main(argv: readonly string[]): Promise<number> {
  let status = 0;
  const program = new Command("margent").description(CLI.about).exitOverride().showHelpAfterError();

  program
    .command("compose")
    .description(CLI.compose.about)
    .argument("[file]", CLI.compose.file)
    .option("--json", CLI.compose.json)
    .option("--lines", CLI.compose.lines)
    .option("--practice <file>", CLI.compose.practice)
    .addHelpText("after", CLI.compose.help)
    .action(async (file: string | undefined, options: ComposeOptions) => {
      status = await runCompose(file, options);
    });

  program
    .command("schema")
    .description(CLI.schema)
    .argument("<document>", Object.keys(SCHEMAS).join(", "))
    .action((name: string) => {
      if (!isSchema(name))
        throw new Unreadable(CLI.problem("document", name, Object.keys(SCHEMAS).join(", ")));
      process.stdout.write(`${JSON.stringify(jsonSchemaOf(SCHEMAS[name]), null, 2)}\n`);
    });

  try {
    await program.parseAsync(argv, { from: "user" });
    return status;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (!(error instanceof Unreadable)) throw error;
    process.stderr.write(`margent: ${error.message}\n`);
    return 2;
  }
}

const isSchema = (name: string): name is keyof typeof SCHEMAS => Object.hasOwn(SCHEMAS, name);

// A reader that closes its end early (`| head`) is no fault of the run.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

process.exitCode = await main(process.argv.slice(2));
